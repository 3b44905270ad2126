package figure

import (
	"math"

	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
)

// thinnest keeps twigs visible: half their width on paper, mm.
const thinnest = 0.25

// spread is the axis of a member, or of a stretch of it, as its two sides seen
// in a view.
func (v view) spread(axis []assess.AxisPoint, thick func(assess.AxisPoint) quantity.Length) []draw.Point {
	left, right := make([]draw.Point, len(axis)), make([]draw.Point, len(axis))
	dx, dy := 1.0, 0.0
	for i, a := range axis {
		from, to := v.at(axis[max(0, i-1)].Position), v.at(axis[min(len(axis)-1, i+1)].Position)
		if d := draw.Distance(from, to); d > 1e-6 {
			dx, dy = (to.X-from.X)/d, (to.Y-from.Y)/d
		}
		half := math.Max(thinnest, float64(thick(a))/2*v.perMetre)
		at := v.at(a.Position)
		left[i], right[len(axis)-1-i] = at.Add(dy*half, -dx*half), at.Add(-dy*half, dx*half)
	}
	return append(left, right...)
}

func upright(a assess.AxisPoint) quantity.Length { return a.Upright }
func across(a assess.AxisPoint) quantity.Length  { return a.Across }

// stretchOf returns the axis of a member between two arc lengths.
func stretchOf(m assess.MemberFigure, from, to quantity.Length) []assess.AxisPoint {
	axis := []assess.AxisPoint{m.PointAt(from)}
	for _, a := range m.Axis {
		if a.Along > from && a.Along < to {
			axis = append(axis, a)
		}
	}
	return append(axis, m.PointAt(to))
}

// wood draws every member of a tree, the far ones first, and over them the load
// path of a hang, hatched.
func (p *page) wood(v view, t assess.TreeFigure, path []assess.Stretch, thick func(assess.AxisPoint) quantity.Length) {
	for _, m := range v.farthestFirst(t.Members) {
		pen := draw.Fine
		if !m.Measured {
			pen = draw.Dashed
		}
		p.add(&draw.Group{Key: "member " + m.ID, Title: memberSentence(m), Items: []draw.Item{&draw.Polygon{Points: v.spread(m.Axis, thick), Pen: pen, Fill: draw.Paper}}})
		p.placer.Avoid(v.all(positions(m))...)
	}
	for _, s := range path {
		for _, m := range t.Members {
			if s.Member == m.ID && s.To > s.From {
				p.carrying(v.spread(stretchOf(m, s.From, s.To), thick))
			}
		}
	}
}

// carrying draws wood that carries the hang.
func (p *page) carrying(outline []draw.Point) {
	p.add(&draw.Polygon{Points: outline, Fill: draw.Paper}, &draw.Polygon{Points: outline, Pen: draw.Bold, Fill: draw.Slant})
	p.placer.Avoid(outline...)
}

func positions(m assess.MemberFigure) []quantity.Vec3 {
	list := make([]quantity.Vec3, len(m.Axis))
	for i, a := range m.Axis {
		list[i] = a.Position
	}
	return list
}

// farthestFirst orders members by how near their tips come to the eye.
func (v view) farthestFirst(members []assess.MemberFigure) []assess.MemberFigure {
	eye := v.right.Cross(v.up)
	near := func(m assess.MemberFigure) float64 { return m.Axis[len(m.Axis)-1].Position.Dot(eye) }
	list := append([]assess.MemberFigure(nil), members...)
	for i := 1; i < len(list); i++ {
		for j := i; j > 0 && near(list[j]) < near(list[j-1])-1e-9; j-- {
			list[j], list[j-1] = list[j-1], list[j]
		}
	}
	return list
}
