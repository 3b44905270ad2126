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
func (p *page) siteKey(hangs []Spot) {
	if len(hangs) == 0 {
		return
	}
	if p.crowded {
		p.rows = append(p.rows, row{mark: patch(draw.Dotted, draw.NoFill), words: "kept clear while a swing is in use; round: crowns"})
	} else {
		p.rows = append(p.rows,
			row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while a swing is in use"},
			row{mark: patch(draw.Fine, draw.Upright), words: "where people wait; dashed: the way in"})
	}
	for _, o := range assess.Outcomes() {
		p.rows = append(p.rows, row{mark: mark(o), words: wording.Brief(o)})
	}
}

func clearSentence(j Spot) string {
	azimuth, area := j.Azimuth, j.People.Area
	ahead, behind := reachAlong(area, j.Point, azimuth), reachAlong(area, j.Point, azimuth+180*quantity.Degree)
	side := reachAlong(area, j.Point, azimuth+90*quantity.Degree)
	return fmt.Sprintf("%s swings towards %s and back: kept clear up to %s ahead, %s behind, %s to each side.", j.ID, compass(azimuth), metres(ahead), metres(behind), metres(side))
}

// reachAlong is how far an area reaches from a point in a direction.
func reachAlong(area space.Polygon, from quantity.Vec3, azimuth quantity.Angle) quantity.Length {
	heading, far := quantity.Heading(azimuth, 0), quantity.Length(0)
	for _, corner := range area {
		far = max(far, quantity.Length(corner.Sub(from).Dot(heading)))
	}
	return far
}

func siteSays(trees []assess.TreeFigure, hangs []Spot) []string {
	if crowdedSite(trees) {
		return crowdSays(trees, hangs)
	}
	says := []string{"Seen from above, north up."}
	for _, t := range trees {
		text := treeSentence(t)
		if t.Placed {
			text = fmt.Sprintf("%s At %s east and %s north.", text, metres(quantity.Length(t.At.X)), metres(quantity.Length(t.At.Y)))
		}
		says = append(says, t.Survey.ID+": "+text)
	}
	for _, j := range hangs {
		says = append(says, j.sentence(), clearSentence(j))
	}
	for _, t := range trees {
		for _, o := range t.Obstacles {
			says = append(says, fmt.Sprintf("By %s: %s.", t.Survey.ID, o.What))
		}
	}
	for _, j := range hangs {
		for _, o := range j.Obstacles {
			says = append(says, fmt.Sprintf("By %s: %s.", j.ID, o.What))
		}
	}
	return says
}

// crowdSays says of each of many trees where it stands and what follows there;
// the rest stands on the pages of the trees.
func crowdSays(trees []assess.TreeFigure, hangs []Spot) []string {
	swings := swingsOf(hangs)
	says := []string{"Seen from above, north up."}
	for _, t := range trees {
		text := siteTitle(t, swings[t.Survey.ID])
		if t.Placed {
			text += fmt.Sprintf("; %s east, %s north", metres(quantity.Length(t.At.X)), metres(quantity.Length(t.At.Y)))
		}
		says = append(says, text+".")
	}
	return says
}
