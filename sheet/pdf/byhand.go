package pdf

import (
	"boughline/sheet"
	"boughline/sheet/words"
)

// lineHeight is room to write by hand, mm.
const lineHeight = 8.0

// fields prints labels with empty lines below them.
func (p *printer) fields(list []sheet.Field) {
	for _, f := range list {
		p.prose(f.Label, prose{size: textSize, keep: true})
		for i := range f.Lines {
			p.add(piece{height: lineHeight, keep: i == 0 && f.Lines > 1, draw: func(y float64) {
				p.pen(0.2)
				p.doc.Line(Side, y+lineHeight, p.paper.Width-Side, y+lineHeight)
			}})
		}
		p.space(3)
	}
}

// signatures prints for each who is to sign a line for name, day and
// signature; all stay on one page.
func (p *printer) signatures(who []string) {
	for i, one := range who {
		last := i == len(who)-1
		p.prose(one, prose{size: textSize, keep: true})
		p.add(piece{height: 14, keep: !last, draw: func(y float64) {
			p.pen(0.3)
			p.face(footSize, false)
			x := Side
			for _, field := range []struct {
				title string
				share float64
			}{{words.Name, 0.4}, {words.Day, 0.2}, {words.Sign, 0.4}} {
				p.doc.Line(x, y+9, x+field.share*p.width()-gutter, y+9)
				p.text(x, y+12, field.title)
				x += field.share * p.width()
			}
		}})
	}
}

// cautions prints what must be read first within a frame that is not broken.
func (p *printer) cautions(items []string) {
	const pad = 3.0
	p.face(textSize, false)
	const indent = 4.0
	var lines []string
	first := map[int]bool{}
	for _, item := range items {
		first[len(lines)] = true
		lines = append(lines, p.lines(item, p.width()-2*pad-indent)...)
	}
	height := float64(len(lines)+1)*p.leading(textSize) + 2*pad
	p.space(1)
	p.add(piece{height: height, draw: func(y float64) {
		p.pen(0.5)
		p.doc.Rect(Side, y, p.width(), height, "D")
		p.face(textSize, true)
		p.text(Side+pad, y+pad+p.rise(textSize), words.Caution)
		p.face(textSize, false)
		for i, line := range lines {
			base := y + pad + p.rise(textSize) + float64(i+1)*p.leading(textSize)
			if first[i] {
				p.text(Side+pad, base, "-")
			}
			p.text(Side+pad+indent, base, line)
		}
	}})
	p.space(3)
}
