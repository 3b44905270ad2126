package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/quantity"
)

// Judged is a hang to be drawn, with what follows for it.
type Judged struct {
	Figure   assess.HangFigure
	Assessed assess.Hang
}

// path is the load path of a hang; none without one.
func (j *Judged) path() []assess.Stretch {
	if j == nil {
		return nil
	}
	return j.Figure.LoadPath()
}

// findings marks every finding at its place, once, and lists it below.
func (p *page) findings(v view, t assess.TreeFigure, on *Judged) {
	var labels []label
	for _, f := range t.Findings {
		shape, words := unjudged, ""
		if on != nil {
			if r, ok := judgement(on.Assessed, f.Survey.ID); ok {
				shape, words = mark(r.Outcome), "; "+meaning(r.Outcome)
			}
		}
		at := v.at(f.Position)
		group := draw.Group{Key: "finding " + f.Survey.ID, Title: findingTitle(f)}
		if f.Placed {
			group.Items = []draw.Item{&draw.Circle{Centre: at, Radius: 0.8, Fill: draw.Ink}}
		}
		labels = append(labels, label{at: at, words: draw.Fit(f.Survey.ID, draw.LabelSize, true, 24), strong: true, mark: shape, group: group})
		text := fmt.Sprintf("%s %s, %s%s", f.Survey.ID, f.Sign.Name, FindingPlace(f), words)
		p.rows = append(p.rows, row{mark: shape, words: text})
	}
	p.stacks = stacked(labels)
}

func findingTitle(f assess.FindingFigure) string {
	return fmt.Sprintf("%s: %s, %s", f.Survey.ID, f.Sign.Name, FindingPlace(f))
}

// says is the text equivalent of a tree, and of a hang on it.
func treeSays(t assess.TreeFigure, on *Judged) []string {
	says := []string{treeSentence(t)}
	for _, m := range t.Members {
		says = append(says, memberSentence(m))
	}
	if on != nil {
		says = append(says, pathSentence(on), outcomeSentence(on.Assessed))
	}
	for _, f := range t.Findings {
		text := findingTitle(f) + "."
		if on != nil {
			if r, ok := judgement(on.Assessed, f.Survey.ID); ok {
				text = fmt.Sprintf("%s, %s: %s", f.Survey.ID, FindingPlace(f), wording.Reason(r))
			}
		}
		says = append(says, text)
	}
	return says
}

func pathSentence(on *Judged) string {
	text := fmt.Sprintf("Load path of %s:", on.Assessed.ID)
	for i, s := range on.Figure.LoadPath() {
		if i > 0 {
			text += ", then"
		}
		text += fmt.Sprintf(" %s from %s down to its foot", s.Member, metres(s.To))
	}
	return text + "."
}

// hangOn draws the line, the seat and the path of the seat.
func (p *page) hangOn(v view, on *Judged) {
	if on == nil {
		return
	}
	hang, line := on.Figure.Point(), float64(on.Figure.Survey().Line.Value)
	seat := hang.Add(quantity.Vec3{Z: -line})
	from, to := v.at(hang), v.at(seat)
	p.wall(draw.Accent, from, to)
	p.add(&draw.Circle{Centre: from, Radius: 1.1, Fill: draw.Ink}, &draw.Circle{Centre: to, Radius: 0.9, Pen: draw.Fine, Fill: draw.Paper})
	p.placer.Take(draw.Box{Min: to.Add(-1.1, -1.1), Max: to.Add(1.1, 1.1)})
	p.line(draw.Dashed, v.all(on.swingPath(on.Figure.Survey().Amplitude.Value))...)
	p.rows = append(p.rows, row{mark: patch(draw.Bold, draw.Slant), words: "load path of the hang"})
	p.label(to, fmt.Sprintf("%s, line %s", on.Assessed.ID, metres(on.Figure.Survey().Line.Value)))
}

// swingPath is the path of the seat in space.
func (j *Judged) swingPath(amplitude quantity.Angle) []quantity.Vec3 {
	const steps = 12
	hang, line := j.Figure.Point(), float64(j.Figure.Survey().Line.Value)
	heading := quantity.Heading(j.Figure.SwingAzimuth(), 0)
	var path []quantity.Vec3
	for i := -steps; i <= steps; i++ {
		sin, cos := math.Sincos(float64(amplitude) * float64(i) / steps)
		path = append(path, hang.Add(heading.Scale(line*sin)).Add(quantity.Vec3{Z: -line * cos}))
	}
	return path
}
