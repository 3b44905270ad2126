package figure

import (
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/quantity"
)

// hanging draws the hangs of a tree beside one another: the line of each from
// the limb to the seat, and its name with the shape of its outcome.
func (p *page) hanging(v view, hangs []Judged) {
	for _, j := range hangs {
		from, to := v.at(j.Figure.Point()), v.at(j.seat())
		key, title := "hang "+j.Assessed.ID, outcomeSentence(j.Assessed)
		p.add(&draw.Group{Key: key, Title: title, Items: []draw.Item{
			&draw.Line{Points: []draw.Point{from, to}, Pen: draw.Accent},
			&draw.Circle{Centre: from, Radius: 1.1, Fill: draw.Ink},
			&draw.Circle{Centre: to, Radius: 0.9, Pen: draw.Fine, Fill: draw.Paper},
		}})
		p.placer.Forbid(from, to)
		p.placer.Take(draw.Box{Min: to.Add(-1.1, -1.1), Max: to.Add(1.1, 1.1)})
		p.labels = append(p.labels, label{at: to, words: draw.Fit(j.Assessed.ID, draw.LabelSize, true, 36), strong: true,
			mark: mark(j.Assessed.Outcome), group: draw.Group{Key: nameOfKey + key, Title: title}})
		p.rows = append(p.rows, row{mark: mark(j.Assessed.Outcome), words: j.Assessed.ID + ": " + wording.Brief(j.Assessed.Outcome)})
	}
}

// seat is where the seat hangs at rest, in the frame of the tree.
func (j *Judged) seat() quantity.Vec3 {
	return j.Figure.Point().Add(quantity.Vec3{Z: -float64(j.Figure.Survey().Line.Value)})
}

// linesOf are the ends of the lines of hangs.
func linesOf(hangs []Judged) []quantity.Vec3 {
	var points []quantity.Vec3
	for _, j := range hangs {
		points = append(points, j.Figure.Point(), j.seat())
	}
	return points
}

func hangsSay(hangs []Judged) []string {
	var says []string
	for _, j := range hangs {
		says = append(says, outcomeSentence(j.Assessed))
	}
	return says
}
