package pdf

import (
	"fmt"

	"boughline/sheet/words"
)

// piece is what is never broken over pages.
type piece struct {
	height float64
	// draw prints it with its top at y.
	draw func(y float64)
	// keep holds it on the page of the piece after it.
	keep bool
	// gap is empty room and falls away at the top of a page.
	gap bool
	// head is printed above it where it comes first on a page: the head row of
	// its table.
	head    *piece
	newPage bool
}

func (p *printer) add(list ...piece) { p.pieces = append(p.pieces, list...) }

// space adds empty room.
func (p *printer) space(height float64) { p.add(piece{height: height, gap: true}) }

// placed is a piece on a page, the first of which is 0, with its top at y.
type placed struct {
	piece *piece
	page  int
	y     float64
}

// place puts pieces on pages between a top and a bottom.
func place(pieces []piece, top, bottom float64) []placed {
	var list []placed
	page, y, fresh := 0, top, true
	turn := func() { page, y, fresh = page+1, top, true }
	for i := range pieces {
		one := &pieces[i]
		switch {
		case one.newPage && !fresh:
			turn()
		case one.gap && !fresh:
			y += one.height
		}
		if one.newPage || one.gap {
			continue
		}
		if !fresh && y+together(pieces, i, bottom-top) > bottom+1e-6 {
			turn()
		}
		if fresh && one.head != nil {
			list = append(list, placed{one.head, page, y})
			y += one.head.height
		}
		list = append(list, placed{one, page, y})
		y, fresh = y+one.height, false
	}
	return list
}

// together is the height of a piece with all that it is kept with; of a chain
// longer than a page only that of the piece itself.
func together(pieces []piece, i int, room float64) float64 {
	sum := pieces[i].height
	for k := i; pieces[k].keep || pieces[k].gap; {
		k++
		if k == len(pieces) || pieces[k].newPage {
			break
		}
		sum += pieces[k].height
	}
	if sum > room {
		return pieces[i].height
	}
	return sum
}

// pages prints the pieces.
func (p *printer) pages() {
	p.doc.AliasNbPages(totalMark)
	begun := -1
	scale := p.scale
	for _, one := range place(p.pieces, Top, p.paper.Height-Bottom) {
		for ; begun < one.page; begun++ {
			p.doc.AddPage()
			p.footer()
		}
		p.scale = scale
		one.piece.draw(one.y)
	}
}

// totalMark stands for the number of pages until it is known.
const totalMark = "{all}"

// footer prints what a page is of, what made it and its number.
func (p *printer) footer() {
	p.scale = 1
	y := p.paper.Height - Bottom + 6
	p.pen(0.2)
	p.doc.Line(Side, y, p.paper.Width-Side, y)
	number := fmt.Sprintf(words.PageOf, p.doc.PageNo(), totalMark)
	p.face(footSize, false)
	wide := p.doc.GetStringWidth(fmt.Sprintf(words.PageOf, p.doc.PageNo(), "000"))
	for i, line := range p.foot {
		p.text(Side, y+4+float64(i)*3.4, p.fit(line, p.width()-wide-6))
	}
	p.text(p.paper.Width-Side-wide, y+4, number)
}
