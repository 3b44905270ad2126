package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
)

// Elevation draws a tree from the side: its members with their taper to scale,
// its findings at their places, the load path of a hang hatched. With a hang
// the eye looks square to its limb, which is seen at its true length; without
// one, square to the longest limb.
func Elevation(t assess.TreeFigure, on *Judged) *draw.Scene { return elevation(t, on, nil) }

// ElevationWith draws a tree from the side with all its hangs, each with what
// follows for it.
func ElevationWith(t assess.TreeFigure, hangs []Judged) *draw.Scene { return elevation(t, nil, hangs) }

func elevation(t assess.TreeFigure, on *Judged, all []Judged) *draw.Scene {
	v := lookingAlong(headingOf(mainLimb(t, on)) - 90*quantity.Degree)
	e := v.extentOf(append(append(shownPoints(t, on), crownOutline(t, v)...), linesOf(all)...))
	perMetre, tall := e.fit(innerWidth-20, 118)
	p := newPage("elevation "+t.Survey.ID, capital(nameOf(t))+", seen towards "+compass(headingOf(mainLimb(t, on))-90*quantity.Degree), tall+18)
	box := p.area
	box.Max.Y -= 10
	v = v.placed(e, perMetre, box)
	if outline := crownOutline(t, v); outline != nil {
		p.add(&draw.Line{Points: v.all(append(outline, outline[0])), Pen: draw.Dotted})
	}
	p.wood(v, t, on.path(), upright)
	p.level(v, box)
	p.findings(v, t, on)
	p.hangOn(v, on)
	p.hanging(v, all)
	p.fixedItem(draw.ScaleBar(draw.Point{X: p.area.Min.X, Y: p.area.Max.Y - 2}, perMetre, innerWidth))
	p.memberLabels(v, t)
	return p.finish(append(treeSays(t, on), hangsSay(all)...))
}

// mainLimb is the limb of the hang, or the one that reaches farthest; a tree
// without limbs has its stem.
func mainLimb(t assess.TreeFigure, on *Judged) assess.MemberFigure {
	best, reach := t.Members[0], -1.0
	for _, m := range t.Members {
		tip := m.Axis[len(m.Axis)-1].Position
		switch r := math.Hypot(tip.X, tip.Y); {
		case on != nil && m.ID == on.Assessed.Member:
			return m
		case m.Parent != "" && r > reach:
			best, reach = m, r
		}
	}
	return best
}

// shownPoints are the places that a drawing of a tree has to show.
func shownPoints(t assess.TreeFigure, on *Judged) []quantity.Vec3 {
	points := []quantity.Vec3{{}}
	for _, m := range t.Members {
		for _, a := range m.Axis {
			points = append(points, around(a.Position, max(a.Upright, a.Across)/2)...)
		}
	}
	for _, f := range t.Findings {
		points = append(points, f.Position)
	}
	if on != nil {
		points = append(points, on.swingPath(on.Figure.Survey().Amplitude.Value)...)
	}
	return points
}

// around are the places about a point as far as the wood reaches.
func around(p quantity.Vec3, radius quantity.Length) []quantity.Vec3 {
	r := float64(radius)
	return []quantity.Vec3{
		p.Add(quantity.Vec3{X: r, Y: r, Z: r}), p.Add(quantity.Vec3{X: -r, Y: -r, Z: -r}),
		p.Add(quantity.Vec3{X: r, Y: -r, Z: r}), p.Add(quantity.Vec3{X: -r, Y: r, Z: -r}),
	}
}

// crownOutline is the crown as an ellipse across the view; nil where it was not
// measured.
func crownOutline(t assess.TreeFigure, v view) []quantity.Vec3 {
	if t.CrownWidth <= 0 || t.CrownBase >= t.Height {
		return nil
	}
	centre, half := float64(t.CrownBase+t.Height)/2, float64(t.Height-t.CrownBase)/2
	var points []quantity.Vec3
	for _, c := range draw.Round(draw.Point{}, 1) {
		points = append(points, v.right.Scale(c.X*float64(t.CrownWidth)/2).Add(quantity.Vec3{Z: centre + c.Y*half}))
	}
	return points
}

// level draws the ground as a line with earth below.
func (p *page) level(v view, box draw.Box) {
	y := v.at(quantity.Vec3{}).Y
	p.earth([]draw.Point{{X: box.Min.X, Y: y}, {X: box.Max.X, Y: y}})
}

// earth hatches a strip below a line of ground.
func (p *page) earth(surface []draw.Point) {
	const deep, deepLines = 2.4, 2
	outline := append([]draw.Point(nil), surface...)
	for i := len(surface) - 1; i >= 0; i-- {
		outline = append(outline, surface[i].Add(0, deep))
	}
	p.add(&draw.Polygon{Points: outline, Fill: draw.Slant})
	p.wall(draw.Bold, surface...)
	for i := range deepLines {
		p.placer.Forbid(shifted(surface, deep*float64(i+1)/deepLines)...)
	}
}

// shifted moves points down the paper.
func shifted(points []draw.Point, by float64) []draw.Point {
	list := make([]draw.Point, len(points))
	for i, p := range points {
		list[i] = p.Add(0, by)
	}
	return list
}

// memberLabels names the limbs near their tips.
func (p *page) memberLabels(v view, t assess.TreeFigure) {
	for _, m := range t.Members {
		if m.Parent == "" {
			continue
		}
		at := m.PointAt(m.Axis[len(m.Axis)-1].Along * 0.85)
		p.labels = append(p.labels, label{at: v.at(at.Position), words: fmt.Sprintf("%s, %s", draw.Fit(m.ID, draw.LabelSize, false, 24), millimetres(m.Axis[0].Upright)),
			group: draw.Group{Key: nameOfKey + "member " + m.ID, Title: memberSentence(m)}})
	}
}
