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

// pages puts the pieces on pages and prints them.
func (p *printer) pages() {
	p.doc.AliasNbPages(totalMark)
	y, fresh := 0.0, true
	begin := func() {
		p.doc.AddPage()
		p.footer()
		y, fresh = Top, true
	}
	begin()
	for i, one := range p.pieces {
		if one.newPage {
			if !fresh {
				begin()
			}
			continue
		}
		if one.gap {
			if !fresh {
				y += one.height
			}
			continue
		}
		if !fresh && y+p.together(i) > p.paper.Height-Bottom+1e-6 {
			begin()
		}
		if fresh && one.head != nil {
			one.head.draw(y)
			y += one.head.height
		}
		one.draw(y)
		y += one.height
		fresh = false
	}
}

// together is the height of a piece with all that it is kept with; of a chain
// longer than a page only the piece itself.
func (p *printer) together(i int) float64 {
	sum := p.pieces[i].height
	for k := i; p.pieces[k].keep || p.pieces[k].gap; {
		k++
		if k == len(p.pieces) || p.pieces[k].newPage {
			break
		}
		sum += p.pieces[k].height
	}
	if sum > p.room() {
		return p.pieces[i].height
	}
	return sum
}

// totalMark stands for the number of pages until it is known.
const totalMark = "{all}"

// footer prints what a page is of, what made it and its number.
func (p *printer) footer() {
	y := p.paper.Height - Bottom + 6
	p.pen(0.2)
	p.doc.Line(Side, y, p.paper.Width-Side, y)
	number := fmt.Sprintf(words.PageOf, p.doc.PageNo(), totalMark)
	p.face(footSize, false)
	room := p.width() - p.doc.GetStringWidth(number) - 6
	for i, line := range p.foot {
		p.text(Side, y+4+float64(i)*3.4, p.fit(line, room))
	}
	p.text(p.paper.Width-Side-p.doc.GetStringWidth(fmt.Sprintf(words.PageOf, p.doc.PageNo(), "000")), y+4, number)
}
