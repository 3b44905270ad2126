package figure

import (
	"fmt"

	"boughline/draw"
	"boughline/quantity"
)

// KeptClear draws the ground of one hang from above with north up: what is kept
// clear, the plumb line and the way of the seat, the foot of the stem, where
// people wait, and what stands on the ground.
func KeptClear(j Judged) *draw.Scene {
	s := SpotOf(j)
	s.At, s.Placed = quantity.Vec3{}, true // about the foot of its own tree
	v := fromAbove()
	e := v.extentOf(siteExtent(nil, []Spot{s}))
	perMetre, tall := e.fit(innerWidth-8, 85)
	p := newPage("ground "+s.ID, s.ID+": the ground that is kept clear, from above", tall+24)
	box := p.area
	box.Min.Y += 4
	box.Max.Y -= 10
	v = v.placed(e, perMetre, box)
	p.backed = true
	p.ground(v, s)
	p.stemFoot(v, j.Figure.Tree)
	p.swingLine(v, s)
	p.compassAndScale(perMetre)
	p.rows = append(p.rows,
		row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while the swing is in use"},
		row{mark: patch(draw.Fine, draw.Upright), words: "where people wait; dashed: the way in"})
	return p.finish([]string{"Seen from above, north up.", clearSentence(s)})
}

// swingLine draws how far the kept-clear ground reaches along the swing, from
// the plumb line, and where that is.
func (p *page) swingLine(v view, s Spot) {
	plumb := v.at(s.Point)
	for _, side := range [...]struct {
		name    string
		azimuth quantity.Angle
	}{{"ahead", s.Azimuth}, {"behind", s.Azimuth + 180*quantity.Degree}} {
		reach := reachAlong(s.People.Area, s.Point, side.azimuth)
		end := s.Point.Add(quantity.Heading(side.azimuth, 0).Scale(float64(reach)))
		p.line(draw.Fine, plumb, v.at(end))
		p.add(draw.Arrow(plumb, v.at(end), 2.6))
		p.label(v.at(end), fmt.Sprintf("%s %s", side.name, metres(reach)))
	}
	p.add(&draw.Circle{Centre: plumb, Radius: 1.1, Fill: draw.Ink})
	p.label(plumb, "seat at rest")
	p.label(v.at(quantity.Vec3{}), "stem")
}
