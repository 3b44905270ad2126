package pdf

import (
	"fmt"

	"boughline/sheet"
)

// title opens the first page.
func (p *printer) title(s *sheet.Sheet) {
	p.prose(s.Title, prose{size: titleSize, strong: true, keep: true, mark: s.Title})
	p.space(1)
	p.prose(s.Subtitle, prose{size: textSize, keep: true})
	p.add(piece{height: 2, keep: true, draw: func(y float64) {
		p.pen(0.6)
		p.doc.Line(Side, y+1, p.paper.Width-Side, y+1)
	}})
	p.space(2)
}

// heading stays with what follows it and is a bookmark.
func (p *printer) heading(h *sheet.Heading) {
	size := headingSizes[min(h.Level, len(headingSizes))-1]
	p.space(size * 0.32)
	p.prose(h.Words, prose{size: size, strong: true, keep: true, mark: h.Words, level: min(h.Level, 3)})
	p.space(0.8)
}

func (p *printer) paragraph(b *sheet.Paragraph) {
	size := textSize
	if b.Strong && p.one {
		size = headingSizes[0] // what is read from afar
	}
	p.prose(b.Words, prose{size: size, strong: b.Strong, keep: b.Strong})
	p.space(1.4)
}

func (p *printer) list(b *sheet.List) {
	for i, item := range b.Items {
		mark := "-"
		if b.Numbered {
			mark = fmt.Sprintf("%d.", i+1)
		}
		p.prose(item, prose{size: textSize, indent: 6, before: mark})
		p.space(0.7)
	}
	p.space(0.8)
}

// checklist puts an empty box before each item.
func (p *printer) checklist(items []string) {
	for _, item := range items {
		p.prose(item, prose{size: textSize, indent: 7, box: true})
		p.space(1.6)
	}
}

// prose is how running text is set.
type prose struct {
	size   float64
	strong bool
	keep   bool // the last line stays with what follows
	indent float64
	before string // in the indent of the first line
	box    bool   // to tick, in the indent of the first line
	mark   string // a bookmark
	level  int
}

// prose sets running text as one piece for each line; the first two and the
// last two stay together.
func (p *printer) prose(words string, o prose) {
	p.face(o.size, o.strong)
	lines := p.lines(words, p.width()-o.indent)
	for i, line := range lines {
		last := i == len(lines)-1
		keep := o.keep || len(lines) > 1 && !last && (i == 0 || i == len(lines)-2)
		p.add(piece{height: p.leading(o.size), keep: keep, draw: func(y float64) {
			if i == 0 {
				p.before(o, y)
			}
			p.face(o.size, o.strong)
			p.text(Side+o.indent, y+p.rise(o.size), line)
		}})
	}
}

// before prints what stands in the indent of the first line.
func (p *printer) before(o prose, y float64) {
	if o.mark != "" {
		p.doc.SetY(y)
		p.doc.Bookmark(o.mark, o.level, y)
	}
	if o.before != "" {
		p.face(o.size, o.strong)
		p.text(Side+1, y+p.rise(o.size), o.before)
	}
	if o.box {
		p.pen(0.3)
		p.doc.Rect(Side+0.5, y+0.4, 3.4, 3.4, "D")
	}
}
