package figure

import (
	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
)

// Plan draws a tree from above with north up: its members, the crown, its
// findings, and the load path and the path of the seat of a hang.
func Plan(t assess.TreeFigure, on *Judged) *draw.Scene { return plan(t, on, nil) }

// PlanWith draws a tree from above with all its hangs, each with what follows
// for it.
func PlanWith(t assess.TreeFigure, hangs []Judged) *draw.Scene { return plan(t, nil, hangs) }

func plan(t assess.TreeFigure, on *Judged, all []Judged) *draw.Scene {
	v := fromAbove()
	e := v.extentOf(append(append(shownPoints(t, on), crownRim(t)...), linesOf(all)...))
	perMetre, tall := e.fit(innerWidth-16, innerWidth-16)
	p := newPage("plan "+t.Survey.ID, capital(nameOf(t))+" from above", tall+18)
	box := p.area
	box.Max.Y -= 8
	v = v.placed(e, perMetre, box)
	if t.CrownWidth > 0 {
		p.add(&draw.Line{Points: append(v.all(crownRim(t)), v.at(crownRim(t)[0])), Pen: draw.Dotted})
	}
	p.wood(v, t, on.path(), across)
	p.stemFoot(v, t)
	p.findings(v, t, on)
	p.hangOn(v, on)
	p.hanging(v, all)
	p.compassAndScale(perMetre)
	p.memberLabels(v, t)
	return p.finish(append([]string{"Seen from above, north up."}, append(treeSays(t, on), hangsSay(all)...)...))
}

func (p *page) compassAndScale(perMetre float64) {
	p.fixedItem(draw.NorthArrow(draw.Point{X: p.area.Max.X - 4, Y: p.area.Min.Y + 14}))
	p.fixedItem(draw.ScaleBar(draw.Point{X: p.area.Min.X, Y: p.area.Max.Y - 2}, perMetre, innerWidth))
}

// crownRim is the crown from above; nil where its width was not measured.
func crownRim(t assess.TreeFigure) []quantity.Vec3 {
	if t.CrownWidth <= 0 {
		return nil
	}
	return disc(quantity.Vec3{}, t.CrownWidth/2)
}

// disc is a level circle.
func disc(centre quantity.Vec3, radius quantity.Length) []quantity.Vec3 {
	var points []quantity.Vec3
	for _, c := range draw.Round(draw.Point{}, float64(radius)) {
		points = append(points, centre.Add(quantity.Vec3{X: c.X, Y: c.Y}))
	}
	return points
}

// stemFoot draws the stem where it stands.
func (p *page) stemFoot(v view, t assess.TreeFigure) {
	foot := t.Members[0].Axis[0]
	p.add(&draw.Circle{Centre: v.at(foot.Position), Radius: max(0.8, float64(foot.Across)/2*v.perMetre), Pen: draw.Bold, Fill: draw.Cross})
}
