package figure

import (
	"fmt"
	"slices"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/engine/gear"
)

// Rig draws the gear as a chain from the limb down to the seat: beside each link
// what its mark is, what knots, hitches and bends leave of it, and what it bears as a
// share of what is asked. The weakest link stands in a double frame, with an arrow of solid
// ink and bold lines, so that it reads without any colour. The error says why the chain
// cannot be worked out.
func Rig(j Judged) (*draw.Scene, error) {
	links, err := j.Figure.Rig()
	if err != nil {
		return nil, err
	}
	weakest, height := weakestWords(links), 12.0
	rows := make([]linkRow, len(links))
	for i, l := range links {
		rows[i] = newLinkRow(l, weakest)
		height += rows[i].height
	}
	p := newPage("rig "+j.Assessed.ID, j.Assessed.ID+": the rig, link by link", height)
	limb := draw.Point{X: p.area.Min.X + 12, Y: p.area.Min.Y + 5}
	p.add(&draw.Circle{Centre: limb, Radius: 4, Pen: draw.Bold, Fill: draw.Slant})
	y := limb.Y + 4
	for i, r := range rows {
		p.link(r, draw.Point{X: limb.X, Y: y}, weakest, i == len(rows)-1)
		y += r.height
	}
	p.rows = append(p.rows, row{words: barWords})
	return p.finish(rigSays(j, links)), nil
}

// barWords explains the bars.
const barWords = "The upright line on each bar is what is asked; bars end at three times that."

// weakestWords calls a link the weakest only where the strength of all is known.
func weakestWords(links []assess.LinkFigure) string {
	if slices.ContainsFunc(links, func(l assess.LinkFigure) bool { return !l.Known }) {
		return "the weakest of those known"
	}
	return "the weakest link"
}

// Layout of a link, in mm.
const (
	linkLeft  = 27.0                               // where its words begin
	linkWidth = paperWidth - margin - linkLeft - 2 // of its words and its bar
	barHeight = 2.6
	mostSteps = 3 // lines of what is left of its strength
)

// linkRow is a link with its words broken into lines.
type linkRow struct {
	assess.LinkFigure
	head, words []string
	height      float64
}

func newLinkRow(l assess.LinkFigure, weakest string) linkRow {
	r := linkRow{LinkFigure: l, head: []string{draw.Fit(l.Part.Name, draw.LabelSize, true, linkWidth)}}
	if l.Weakest {
		r.head = append([]string{draw.Fit(capital(weakest), draw.HeadingSize, true, linkWidth)}, r.head...)
	}
	steps := draw.Wrap(stepWords(l), draw.LabelSize, false, linkWidth)
	if len(steps) > mostSteps {
		steps = append(steps[:mostSteps-1], draw.Fit(steps[mostSteps-1]+" ...", draw.LabelSize, false, linkWidth))
	}
	r.words = append(steps, draw.Wrap(linkWords(l), draw.LabelSize, false, linkWidth)...)
	for i, w := range r.words {
		r.words[i] = draw.Fit(w, draw.LabelSize, false, linkWidth)
	}
	r.height = 7 + draw.LineHeight(draw.HeadingSize)*float64(len(r.head)) + draw.LineHeight(draw.LabelSize)*float64(len(r.words)) + barHeight
	return r
}

// link draws one link with its words and its bar.
func (p *page) link(r linkRow, top draw.Point, weakest string, last bool) {
	pen := draw.Fine
	var items []draw.Item
	if r.Weakest {
		pen = draw.Bold
		items = weakestFrame(top.Y, r.height)
	}
	items = append(items, linkShape(r.Part.Kind, top, r.height, pen, last)...)
	items = append(items, knotMarks(r.Part.Ends, top, r.height)...)
	y := top.Y + 2
	write := func(words string, size float64, strong bool) {
		y += draw.LineHeight(size)
		items = append(items, &draw.Text{At: draw.Point{X: linkLeft, Y: y - 1.2}, Words: words, Size: size, Strong: strong})
	}
	for i, w := range r.head {
		if size := draw.LabelSize; i == 0 && r.Weakest {
			write(w, draw.HeadingSize, true)
		} else {
			write(w, size, true)
		}
	}
	for _, w := range r.words {
		write(w, draw.LabelSize, false)
	}
	items = append(items, linkBar(r.LinkFigure, draw.Point{X: linkLeft, Y: y + 1.9}, linkWidth)...)
	p.add(&draw.Group{Key: "link " + r.Part.Name, Title: linkSentence(r.LinkFigure, weakest), Items: items})
}

// weakestFrame is a double frame about the words of a link, with an arrow from
// the frame to the link itself.
func weakestFrame(top, height float64) []draw.Item {
	box := func(grown float64) []draw.Point {
		return draw.Rectangle(draw.BoxAt(draw.Point{X: linkLeft - 2 - grown, Y: top + 0.8 - grown}, linkWidth+3+2*grown, height-1.6+2*grown))
	}
	tip := draw.Point{X: 17.5, Y: top + height/2}
	return []draw.Item{
		&draw.Polygon{Points: box(0.9), Pen: draw.Bold}, &draw.Polygon{Points: box(-0.6), Pen: draw.Fine},
		&draw.Polygon{Points: []draw.Point{tip, {X: linkLeft - 3, Y: tip.Y - 3}, {X: linkLeft - 3, Y: tip.Y + 3}}, Pen: draw.Fine, Fill: draw.Ink},
	}
}

// knotMarks are loops on a line, one for each end that has a knot or an eye.
func knotMarks(ends []string, top draw.Point, height float64) []draw.Item {
	var items []draw.Item
	for i := range min(2, len(ends)) {
		at := top.Add(0, 2.4+float64(i)*(height-4.8))
		items = append(items, &draw.Circle{Centre: at, Radius: 1.8, Pen: draw.Fine, Fill: draw.Paper}, &draw.Circle{Centre: at, Radius: 0.7, Pen: draw.Fine, Fill: draw.Ink})
	}
	return items
}

// stepWords tell what is left of the mark after each cause.
func stepWords(l assess.LinkFigure) string {
	if !l.Known {
		return ""
	}
	text := fmt.Sprintf("%s %s", markWords(l), value(float64(l.Marked.Value), "N"))
	for _, s := range l.Steps {
		text += fmt.Sprintf("; %s keeps %.0f\u00a0%%: %s", s.Cause, float64(s.Share)*100, value(float64(s.Left), "N"))
	}
	return text
}

func markWords(l assess.LinkFigure) string {
	switch {
	case l.MarkRef != nil:
		return "by its standard"
	case l.Marked.Kind == gear.WorkingLimit:
		return "working limit"
	}
	return "marked"
}

// linkShape draws a link by its kind.
func linkShape(kind string, top draw.Point, height float64, pen draw.Pen, last bool) []draw.Item {
	const half = 3.6
	low := top.Add(0, height)
	if last {
		low = top.Add(0, height-8)
	}
	middle := draw.Point{X: top.X, Y: (top.Y + low.Y) / 2}
	line := func(from, to draw.Point) draw.Item { return &draw.Line{Points: []draw.Point{from, to}, Pen: pen} }
	switch kind {
	case "sling":
		return []draw.Item{&draw.Line{Points: []draw.Point{top.Add(-half, -4), top.Add(-half, 4), low, top.Add(half, 4), top.Add(half, -4)}, Pen: pen}}
	case "connector", "ring":
		return []draw.Item{line(top, middle.Add(0, -half)), &draw.Circle{Centre: middle, Radius: half, Pen: pen, Fill: draw.Paper}, line(middle.Add(0, half), low)}
	case "swivel":
		return []draw.Item{line(top, low), &draw.Polygon{Points: []draw.Point{middle.Add(0, -half), middle.Add(half, 0), middle.Add(0, half), middle.Add(-half, 0)}, Pen: pen, Fill: draw.Paper}}
	case "seat":
		return []draw.Item{line(top, middle), line(middle, low.Add(-half*2, 0)), line(middle, low.Add(half*2, 0)), line(low.Add(-half*2, 0), low.Add(half*2, 0))}
	}
	items := []draw.Item{line(top, low)}
	for y := top.Y + 2; y < low.Y-1; y += 2.4 { // the lay of a rope
		items = append(items, &draw.Line{Points: []draw.Point{{X: top.X - 0.9, Y: y + 1}, {X: top.X + 0.9, Y: y}}, Pen: draw.Hair})
	}
	return items
}

// linkBar draws what a link bears over what is asked: the line stands at what
// is asked, and the bar is cut at three times that. A link of unknown strength
// has a dashed bar up to that line and nothing in it.
func linkBar(l assess.LinkFigure, at draw.Point, width float64) []draw.Item {
	const most = 3.0
	share, fill, pen := min(most, l.Margin), draw.Wide, draw.Fine
	switch {
	case !l.Known:
		share, fill, pen = 1, draw.NoFill, draw.Dashed
	case l.Weakest:
		fill, pen = draw.Slant, draw.Bold
	}
	limit := at.Add(width/most, 0)
	return []draw.Item{
		&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(at, width*share/most, barHeight)), Pen: pen, Fill: fill},
		&draw.Line{Points: []draw.Point{limit.Add(0, -1), limit.Add(0, 3.6)}, Pen: draw.Bold},
	}
}

func linkWords(l assess.LinkFigure) string {
	if !l.Known {
		return "strength not known"
	}
	return fmt.Sprintf("bears %s, asked %s: %s times", value(float64(l.Strength), "N"), value(float64(l.Required), "N"), wording.Margin(l.Margin))
}

func linkSentence(l assess.LinkFigure, weakest string) string {
	text := fmt.Sprintf("%s (%s, %s): %s", capital(l.Part.Name), l.Part.Kind, l.Part.Material, linkWords(l))
	if words := stepWords(l); words != "" {
		text += "; " + words
	}
	if l.Weakest {
		text += "; " + weakest
	}
	return text + "."
}

func rigSays(j Judged, links []assess.LinkFigure) []string {
	says := []string{"From the limb down. " + barWords}
	for _, l := range links {
		says = append(says, linkSentence(l, weakestWords(links)))
	}
	return append(says, outcomeSentence(j.Assessed))
}
