package pdf

import "boughline/sheet"

const (
	cellPad = 1.4 // beside words
	rowPad  = 0.8 // above and below
)

// table prints a caption, a head row that is repeated on every page, and the
// rows between hairlines.
func (p *printer) table(t *sheet.Table) {
	if len(t.Rows) == 0 {
		return
	}
	widths := p.columns(t)
	titles := make([]string, len(t.Columns))
	for i, c := range t.Columns {
		titles[i] = c.Title
	}
	head := p.row(t, titles, widths, true)[0]
	head.keep = true
	p.prose(t.Caption, prose{size: p.cell(), keep: true})
	p.space(0.5)
	p.add(head)
	for _, cells := range t.Rows {
		for _, part := range p.row(t, cells, widths, false) {
			part.head = &head
			p.add(part)
		}
	}
	p.space(2.5)
}

// cell is the size of type in a table: on a sheet of one page that of the text.
func (p *printer) cell() float64 {
	if p.one {
		return textSize
	}
	return cellSize
}

// columns shares the width out.
func (p *printer) columns(t *sheet.Table) []float64 {
	sum := 0.0
	for _, c := range t.Columns {
		sum += c.Wide
	}
	widths := make([]float64, len(t.Columns))
	for i, c := range t.Columns {
		widths[i] = p.width() * c.Wide / sum
	}
	return widths
}

// row sets a row as one piece, or where it is longer than half a page as
// several.
func (p *printer) row(t *sheet.Table, cells []string, widths []float64, head bool) []piece {
	p.face(p.cell(), head)
	columns, most := make([][]string, len(cells)), 1
	for i, words := range cells {
		columns[i] = p.lines(words, widths[i]-2*cellPad)
		most = max(most, len(columns[i]))
	}
	atOnce := max(1, int(p.room()/2/p.leading(p.cell())))
	var parts []piece
	for from := 0; from < most; from += atOnce {
		to := min(from+atOnce, most)
		height := float64(to-from)*p.leading(p.cell()) + 2*rowPad
		parts = append(parts, piece{height: height, draw: func(y float64) {
			p.cells(t, columns, widths, [2]int{from, to}, y, head)
			p.pen(map[bool]float64{true: 0.5, false: 0.15}[head])
			if to == most {
				p.doc.Line(Side, y+height, p.paper.Width-Side, y+height)
			}
		}})
	}
	return parts
}

// cells prints a range of the lines of a row.
func (p *printer) cells(t *sheet.Table, columns [][]string, widths []float64, span [2]int, y float64, head bool) {
	p.face(p.cell(), head)
	x := Side
	for i, lines := range columns {
		for k := span[0]; k < min(span[1], len(lines)); k++ {
			left := x + cellPad
			if t.Columns[i].Number {
				left = x + widths[i] - cellPad - p.doc.GetStringWidth(lines[k])
			}
			p.text(left, y+rowPad+p.rise(p.cell())+float64(k-span[0])*p.leading(p.cell()), lines[k])
		}
		x += widths[i]
	}
}
