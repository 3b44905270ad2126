package figure

import (
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
)

// Rig draws the gear as a chain from the limb down to the seat, beside each
// link what it bears as a share of what is asked of it, and the weakest link
// with bold ink. The error says why the chain cannot be worked out.
func Rig(j Judged) (*draw.Scene, error) {
	links, err := j.Figure.Rig()
	if err != nil {
		return nil, err
	}
	p := newPage("rig "+j.Assessed.ID, j.Assessed.ID+": the rig, link by link", linkHeight*float64(len(links))+12)
	limb := draw.Point{X: p.area.Min.X + 12, Y: p.area.Min.Y + 5}
	p.add(&draw.Circle{Centre: limb, Radius: 4, Pen: draw.Bold, Fill: draw.Slant})
	y := limb.Y + 4
	for i, l := range links {
		p.link(l, draw.Point{X: limb.X, Y: y}, weakestWords(links), i == len(links)-1)
		y += linkHeight
	}
	p.rows = append(p.rows, row{words: barWords})
	return p.finish(rigSays(j, links)), nil
}

const linkHeight = 21.0

// barWords explains the bars.
const barWords = "The upright line on each bar is what is asked; bars end at three times that."

// weakestWords calls a link the weakest only where the strength of all is known.
func weakestWords(links []assess.LinkFigure) string {
	if slices.ContainsFunc(links, func(l assess.LinkFigure) bool { return !l.Known }) {
		return "the weakest of those known"
	}
	return "the weakest link"
}

// link draws one link with its name and its bar.
func (p *page) link(l assess.LinkFigure, top draw.Point, weakest string, last bool) {
	pen := draw.Fine
	if l.Weakest {
		pen = draw.Bold
	}
	items := linkShape(l.Part.Kind, top, pen, last)
	left := top.X + 12
	y := top.Y + 5.5
	name := l.Part.Name
	if l.Weakest {
		name += ", " + weakest
	}
	words := []string{draw.Fit(name, draw.LabelSize, l.Weakest, p.area.Max.X-left)}
	words = append(words, draw.Wrap(linkWords(l), draw.LabelSize, false, p.area.Max.X-left)...)
	for i, w := range words[:min(3, len(words))] {
		items = append(items, &draw.Text{At: draw.Point{X: left, Y: y + float64(i)*draw.LineHeight(draw.LabelSize)}, Words: w, Size: draw.LabelSize, Strong: i == 0 && l.Weakest})
	}
	items = append(items, linkBar(l, draw.Point{X: left, Y: top.Y + linkHeight - 4}, p.area.Max.X-left)...)
	p.add(&draw.Group{Key: "link " + l.Part.Name, Title: linkSentence(l, weakest), Items: items})
}

// linkShape draws a link by its kind.
func linkShape(kind string, top draw.Point, pen draw.Pen, last bool) []draw.Item {
	const half = 3.6
	low := top.Add(0, linkHeight)
	if last {
		low = top.Add(0, linkHeight-8)
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
		&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(at, width*share/most, 2.6)), Pen: pen, Fill: fill},
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
	var causes []string
	for _, r := range l.Reductions {
		causes = append(causes, fmt.Sprintf("%s keeps %.0f %%", r.Cause, float64(r.Share)*100))
	}
	if len(causes) > 0 {
		text += "; " + strings.Join(causes, ", ")
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
