package svg

import (
	"cmp"
	"io"
	"strings"

	"boughline/draw"
)

// Options say how a scene is put into a page.
type Options struct {
	// Link returns the address that a group of the scene leads to, by its key;
	// empty for none. With it the drawing is a group of links for a screen
	// reader, without it one image.
	Link func(key string) string
	// Beside is the id of an element of the page that holds the text equivalent;
	// empty puts it into the drawing.
	Beside string
}

// Write draws a scene.
func Write(w io.Writer, s *draw.Scene, o Options) error {
	_, err := io.WriteString(w, Text(s, o))
	return err
}

// Text returns the drawing of a scene.
func Text(s *draw.Scene, o Options) string {
	d := &drawing{link: o.Link, beside: o.Beside, linked: map[string]bool{}}
	d.open(s)
	d.items(s.Items)
	d.b.WriteString("</svg>\n")
	return d.b.String()
}

type drawing struct {
	b      strings.Builder
	link   func(key string) string
	beside string
	linked map[string]bool // the addresses that a link leads to already
}

// The ink that stands for the paper and for the accent where no stylesheet
// says otherwise.
const (
	paperInk  = "#fffdf6"
	accentInk = "#1c4f86"
	typeface  = "ui-sans-serif, system-ui, 'DejaVu Sans', Arial, sans-serif"
)

func (d *drawing) open(s *draw.Scene) {
	id, role := identifier(s.Key), "img"
	if d.link != nil {
		role = "group"
	}
	width, height := number(s.Width), number(s.Height)
	d.b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" class="drawing" viewBox="0 0 ` + width + " " + height +
		`" width="` + width + `mm" height="` + height + `mm" role="` + role + `" aria-labelledby="` + id + `-title"`)
	inside := len(s.Says) > 0 && d.beside == ""
	switch {
	case inside:
		d.b.WriteString(` aria-describedby="` + id + `-says"`)
	case d.beside != "" && d.link == nil: // a group of links would say it all before the first
		d.b.WriteString(` aria-describedby="` + escape(d.beside) + `"`)
	}
	d.b.WriteString(` stroke-linecap="round" stroke-linejoin="round" font-family="` + typeface + "\">\n")
	d.b.WriteString(`<title id="` + id + `-title">` + escape(s.Title) + "</title>\n")
	if inside {
		d.b.WriteString(`<desc id="` + id + `-says">` + escape(strings.Join(s.Says, " ")) + "</desc>\n")
	}
	d.b.WriteString(`<rect class="sheet" width="` + width + `" height="` + height + `" fill="` + paperInk + "\"/>\n")
}

func (d *drawing) items(list []draw.Item) {
	for _, i := range list {
		switch i := i.(type) {
		case *draw.Line:
			d.b.WriteString(`<path d="` + path(i.Points, false) + `"` + pen(i.Pen) + ` fill="none"/>` + "\n")
		case *draw.Polygon:
			d.filled(i.Points, i.Pen, i.Fill, `<path d="`+path(i.Points, true)+`"`)
		case *draw.Circle:
			d.filled(draw.Round(i.Centre, i.Radius), i.Pen, i.Fill,
				`<circle cx="`+number(i.Centre.X)+`" cy="`+number(i.Centre.Y)+`" r="`+number(i.Radius)+`"`)
		case *draw.Arc:
			d.b.WriteString(`<path d="` + arc(i) + `"` + pen(i.Pen) + ` fill="none"/>` + "\n")
		case *draw.Text:
			d.text(i)
		case *draw.Group:
			d.group(i)
		}
	}
}

// filled draws an outline of which the element is begun: hatching lies between
// its fill and its edge.
func (d *drawing) filled(outline []draw.Point, p draw.Pen, f draw.Fill, begun string) {
	if f.IsHatch() {
		d.b.WriteString(`<path class="hatch ` + f.String() + `" d="` + segments(draw.Hatching(outline, f)) + `"` + stroke(draw.Hair) + "/>\n")
		f = draw.NoFill
	}
	if p == draw.NoPen && f == draw.NoFill {
		return
	}
	d.b.WriteString(begun + classes(p, f) + stroke(p) + fill(f) + "/>\n")
}

func (d *drawing) text(t *draw.Text) {
	d.b.WriteString(`<text x="` + number(t.At.X) + `" y="` + number(t.At.Y) + `" font-size="` + number(t.Size) + `"`)
	class := "label"
	if t.Strong {
		class = "label strong"
		d.b.WriteString(` font-weight="bold"`)
	}
	if t.Anchor != draw.Start {
		d.b.WriteString(` text-anchor="` + [...]string{"start", "middle", "end"}[t.Anchor] + `"`)
	}
	d.b.WriteString(` class="` + class + `" fill="currentColor" stroke="` + paperInk + `" stroke-width="0.9" paint-order="stroke">` + escape(t.Words) + "</text>\n")
}

func (d *drawing) group(g *draw.Group) {
	address := ""
	if d.link != nil {
		address = d.link(g.Key)
	}
	if address != "" {
		d.b.WriteString(`<a href="` + escape(address) + `" aria-label="` + escape(cmp.Or(g.Title, g.Key)) + `"`)
		if d.linked[address] { // a limb and its label: one stop for the keyboard
			d.b.WriteString(` tabindex="-1"`)
		}
		d.b.WriteString(">")
		d.linked[address] = true
	}
	d.b.WriteString("<g")
	if g.Key != "" {
		d.b.WriteString(` data-key="` + escape(g.Key) + `"`)
	}
	d.b.WriteString(">\n")
	if g.Title != "" {
		d.b.WriteString("<title>" + escape(g.Title) + "</title>\n")
	}
	if address != "" && g.Touch != (draw.Box{}) {
		d.b.WriteString(`<rect class="touch" x="` + number(g.Touch.Min.X) + `" y="` + number(g.Touch.Min.Y) +
			`" width="` + number(g.Touch.Width()) + `" height="` + number(g.Touch.Height()) + `" rx="0.8" fill="none" pointer-events="all"/>` + "\n")
	}
	d.items(g.Items)
	d.b.WriteString("</g>")
	if address != "" {
		d.b.WriteString("</a>")
	}
	d.b.WriteString("\n")
}

func pen(p draw.Pen) string { return classes(p, draw.NoFill) + stroke(p) }

func classes(p draw.Pen, f draw.Fill) string {
	var names []string
	if p != draw.NoPen {
		names = append(names, p.String())
	}
	if f != draw.NoFill {
		names = append(names, f.String())
	}
	if len(names) == 0 {
		return ""
	}
	return ` class="` + strings.Join(names, " ") + `"`
}

func stroke(p draw.Pen) string {
	switch p {
	case draw.NoPen:
		return ""
	case draw.Accent:
		return ` stroke="` + accentInk + `" stroke-width="` + number(p.Width()) + `"`
	}
	s := ` stroke="currentColor" stroke-width="` + number(p.Width()) + `"`
	if dashes := p.Dashes(); dashes != nil {
		s += ` stroke-dasharray="` + number(dashes[0]) + " " + number(dashes[1]) + `"`
	}
	return s
}

func fill(f draw.Fill) string {
	switch f {
	case draw.Paper:
		return ` fill="` + paperInk + `"`
	case draw.Ink:
		return ` fill="currentColor"`
	}
	return ` fill="none"`
}
