package figure

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/engine/space"
	"boughline/quantity"
)

// siteKey explains the hatching and the shapes.
func (p *page) siteKey(hangs bool) {
	if !hangs {
		return
	}
	p.rows = append(p.rows,
		row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while a swing is in use"},
		row{mark: patch(draw.Fine, draw.Upright), words: "where people wait; dashed: the way in"})
	for _, o := range assess.Outcomes() {
		p.rows = append(p.rows, row{mark: mark(o), words: wording.Brief(o)})
	}
}

func clearSentence(j Judged) string {
	azimuth, area := j.Figure.SwingAzimuth(), j.Figure.People().Area
	ahead, behind := reachAlong(area, j.Figure.Point(), azimuth), reachAlong(area, j.Figure.Point(), azimuth+180*quantity.Degree)
	side := reachAlong(area, j.Figure.Point(), azimuth+90*quantity.Degree)
	return fmt.Sprintf("%s swings towards %s and back: kept clear up to %s ahead, %s behind, %s to each side.", j.Assessed.ID, compass(azimuth), metres(ahead), metres(behind), metres(side))
}

// reachAlong is how far an area reaches from a point in a direction.
func reachAlong(area space.Polygon, from quantity.Vec3, azimuth quantity.Angle) quantity.Length {
	heading, far := quantity.Heading(azimuth, 0), quantity.Length(0)
	for _, corner := range area {
		far = max(far, quantity.Length(corner.Sub(from).Dot(heading)))
	}
	return far
}

func siteSays(trees []assess.TreeFigure, hangs []Judged) []string {
	says := []string{"Seen from above, north up."}
	for _, t := range trees {
		text := treeSentence(t)
		if t.Placed {
			text = fmt.Sprintf("%s At %s east and %s north.", text, metres(quantity.Length(t.At.X)), metres(quantity.Length(t.At.Y)))
		}
		says = append(says, t.Survey.ID+": "+text)
	}
	for _, j := range hangs {
		says = append(says, outcomeSentence(j.Assessed), clearSentence(j))
	}
	for _, t := range trees {
		for _, o := range t.Obstacles {
			says = append(says, fmt.Sprintf("By %s: %s.", t.Survey.ID, o.What))
		}
	}
	for _, j := range hangs {
		for _, o := range j.Figure.Obstacles() {
			says = append(says, fmt.Sprintf("By %s: %s.", j.Assessed.ID, o.What))
		}
	}
	return says
}
