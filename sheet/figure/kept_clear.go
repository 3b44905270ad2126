package figure

import (
	"fmt"
	"math"

	"boughline/draw"
	"boughline/quantity"
)

// KeptClear draws the ground of one hang from above, the way of the seat across
// the paper as in Swing: what is kept clear, the plumb line, the foot of the stem,
// where people wait, and what stands on the ground. Area is the outline of a card,
// in the frame of the tree; a card allows less than the hang could swing.
func KeptClear(j Judged, area [][2]float64) *draw.Scene {
	s := SpotOf(j)
	s.At, s.Placed = quantity.Vec3{}, true // about the foot of its own tree
	s.People.Area = nil
	for _, corner := range area {
		s.People.Area = append(s.People.Area, quantity.Vec3{X: corner[0], Y: corner[1]})
	}
	v := view{right: quantity.Heading(s.Azimuth, 0), up: quantity.Heading(s.Azimuth-90*quantity.Degree, 0)}
	e := v.extentOf(siteExtent(nil, []Spot{s}))
	perMetre, tall := e.fit(innerWidth-8, 60)
	p := newPage("ground "+s.ID, s.ID+": ground kept clear", tall+17)
	box := p.area
	box.Min.Y += 3
	box.Max.Y -= 14
	v = v.placed(e, perMetre, box)
	p.backed = true
	p.ground(v, s)
	p.stemFoot(v, j.Figure.Tree)
	p.swingLine(v, s)
	p.fixedItem(north(v, p.area.Max.Add(-8, -7)))
	p.fixedItem(draw.ScaleBar(draw.Point{X: p.area.Min.X, Y: p.area.Max.Y - 2}, perMetre, innerWidth))
	side := max(reachAlong(s.People.Area, s.Point, s.Azimuth+90*quantity.Degree), reachAlong(s.People.Area, s.Point, s.Azimuth-90*quantity.Degree))
	p.rows = append(p.rows,
		row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while the swing is in use, to each side " + kept(side)},
		row{mark: patch(draw.Fine, draw.Upright), words: "where people wait; dashed: the way in"})
	return p.finish([]string{fmt.Sprintf("Seen from above, %s to the right.", compass(s.Azimuth)), clearSentence(s)})
}

// north is an arrow about a point towards north, wherever that lies on the
// paper.
func north(v view, centre draw.Point) (draw.Item, draw.Box) {
	const long = 4.5
	x, y := v.right.Y*long, -v.up.Y*long // along the paper, Y downwards
	foot, tip := centre.Add(-x, -y), centre.Add(x, y)
	letter := &draw.Text{At: centre.Add(1.45*x, 1.45*y+1), Words: "N", Size: draw.LabelSize, Anchor: draw.Middle, Strong: true}
	return &draw.Group{Key: "north", Title: "The arrow points north.", Items: []draw.Item{
		&draw.Line{Points: []draw.Point{foot, tip}, Pen: draw.Fine}, draw.Arrow(foot, tip, 3.2), letter,
	}}, draw.Box{Min: centre.Add(-7, -7), Max: centre.Add(7, 7)}
}

// kept writes a distance to keep, never rounded down.
func kept(l quantity.Length) string {
	return fmt.Sprintf("%.1f"+unbroken+"m", math.Ceil(float64(l)*10-1e-9)/10)
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
		p.label(v.at(end), fmt.Sprintf("%s %s", side.name, kept(reach)))
	}
	p.add(&draw.Circle{Centre: plumb, Radius: 1.1, Fill: draw.Ink})
	p.label(plumb, "seat at rest")
	stem := v.at(quantity.Vec3{})
	p.placer.Take(draw.Box{Min: stem.Add(-2.5, -2.5), Max: stem.Add(2.5, 2.5)})
	p.label(stem, "stem")
}
