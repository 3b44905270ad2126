package figure

import (
	"fmt"
	"math"

	"boughline/assess/wording"
	"boughline/draw"
)

// MarginsInput is a set of margins to be drawn side by side.
type MarginsInput struct {
	Key, Title string
	Bars       []MarginBar
}

// MarginBar is one margin: what it is of, its value at the unfavourable 5 %
// values and at the favourable ones.
type MarginBar struct {
	Words        string
	Margin, Best float64
}

// mostMargin is where the axis ends: what is farther in hand is so however it
// is drawn.
const mostMargin = 3.0

// Margins draws margins as bars against the limit of 1: solid up to the
// margin, a thin line on to what it is at best. What falls short of the limit
// is hatched across instead.
func Margins(in MarginsInput) *draw.Scene {
	const tall = 11.5
	p := newPage("margins "+in.Key, in.Title, tall*float64(len(in.Bars))+15)
	c := chart{box: draw.BoxAt(draw.Point{X: p.area.Min.X + 1, Y: p.area.Min.Y + 5}, innerWidth-16, tall*float64(len(in.Bars))), right: mostMargin, up: 1}
	for i, b := range in.Bars {
		p.marginBar(c, b, c.box.Min.Y+tall*float64(i))
	}
	limit := c.at(1, 0)
	p.add(&draw.Text{At: draw.Point{X: limit.X + 1, Y: c.box.Min.Y - 1.5}, Words: "at least 1", Size: draw.LabelSize, Strong: true})
	p.axes(c, "margin: borne over asked", "")
	return p.finish(marginsSay(in))
}

// marginBar draws one bar with its words above and its figure behind it.
func (p *page) marginBar(c chart, b MarginBar, y float64) {
	p.add(&draw.Text{At: draw.Point{X: c.box.Min.X + 1.5, Y: y + 4.6}, Words: draw.Fit(b.Words, draw.LabelSize, false, innerWidth-4), Size: draw.LabelSize})
	fill := draw.Ink
	if b.Margin < 1 {
		fill = draw.Slant
	}
	end := c.held(b.Margin, 0).X
	p.add(&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(draw.Point{X: c.box.Min.X, Y: y + 6.2}, end-c.box.Min.X, 3)), Pen: draw.Fine, Fill: fill})
	limit := c.at(1, 0).X
	p.add(&draw.Line{Points: []draw.Point{{X: limit, Y: y + 5.6}, {X: limit, Y: y + 10.2}}, Pen: draw.Bold})
	best := c.held(b.Best, 0).X
	p.add(&draw.Line{Points: []draw.Point{{X: end, Y: y + 7.7}, {X: best, Y: y + 7.7}}, Pen: draw.Fine},
		&draw.Line{Points: []draw.Point{{X: best, Y: y + 6.7}, {X: best, Y: y + 8.7}}, Pen: draw.Fine})
	p.add(&draw.Text{At: draw.Point{X: best + 1.2, Y: y + 9}, Words: wording.Margin(b.Margin), Size: draw.LabelSize, Strong: true})
}

func marginsSay(in MarginsInput) []string {
	says := []string{fmt.Sprintf("%s. Bars end at the margin, the line beyond at what it is at best; at least 1 is asked. The axis ends at %.0f.", in.Title, mostMargin)}
	short := 0
	for _, b := range in.Bars {
		if b.Margin < 1 {
			short++
		}
		says = append(says, fmt.Sprintf("%s: margin %s, at best %s.", b.Words, wording.Margin(b.Margin), wording.Margin(math.Max(b.Margin, b.Best))))
	}
	return append(says, fmt.Sprintf("%d of %d fall short.", short, len(in.Bars)))
}
