package sketch

import (
	"encoding/xml"
	"fmt"
	"strconv"
	"strings"
)

// widths are the thicknesses of the lines on the square.
var widths = map[Weight]string{Thin: "1.3", Plain: "2.2", Bold: "4"}

// SVG writes the drawing as one SVG element that takes the colour of the text
// around it and says its title to those who cannot see it.
func (s Sketch) SVG(title string) string {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100" role="img" fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round"><title>`)
	xml.EscapeText(&b, []byte(title)) // a strings.Builder takes everything
	b.WriteString(`</title>`)
	for _, w := range []Weight{Thin, Plain, Bold} {
		open, filled := s.paths(w)
		if open != "" {
			fmt.Fprintf(&b, `<path stroke-width="%s" d="%s"/>`, widths[w], open)
		}
		if filled != "" {
			fmt.Fprintf(&b, `<path stroke-width="%s" fill="currentColor" d="%s"/>`, widths[Thin], filled)
		}
	}
	b.WriteString(`</svg>`)
	return b.String()
}

// paths joins the strokes of one weight.
func (s Sketch) paths(w Weight) (open, filled string) {
	for _, stroke := range s {
		switch {
		case stroke.Weight != w:
		case stroke.Filled:
			filled += stroke.path()
		default:
			open += stroke.path()
		}
	}
	return open, filled
}

// path writes a stroke in the form of the attribute d.
func (k Stroke) path() string {
	text := "M" + k.Points[0].text()
	for i := 1; i < len(k.Points); i++ {
		text += k.to(i)
	}
	if !k.Closed {
		return text
	}
	if k.Smooth {
		text += k.to(len(k.Points))
	}
	return text + "Z"
}

// to writes the way to point i, which is the first again behind the last.
func (k Stroke) to(i int) string {
	if !k.Smooth {
		return "L" + k.at(i).text()
	}
	// Catmull and Rom 1974 as a Bezier curve: controls at a sixth of the chord
	// of the neighbours.
	before, from, to, after := k.at(i-2), k.at(i-1), k.at(i), k.at(i+1)
	a := Point{from.X + (to.X-before.X)/6, from.Y + (to.Y-before.Y)/6}
	b := Point{to.X - (after.X-from.X)/6, to.Y - (after.Y-from.Y)/6}
	return "C" + a.text() + " " + b.text() + " " + to.text()
}

// at returns point i; beyond an open end the end itself stands.
func (k Stroke) at(i int) Point {
	n := len(k.Points)
	if k.Closed {
		return k.Points[(i+n)%n]
	}
	return k.Points[min(max(i, 0), n-1)]
}

func (p Point) text() string { return number(p.X) + " " + number(p.Y) }

func number(x float64) string {
	text := strconv.FormatFloat(x, 'f', 1, 64)
	return strings.TrimSuffix(text, ".0")
}
