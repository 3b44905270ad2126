package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/quantity"
)

// limbClearanceChecker compares the room between the path of the seat and
// every limb and stem near it, of this tree and its neighbours, with the reach
// of a body. The stem of the tree itself has a check of its own.
func (r *rig) limbClearanceChecker() (checker, bool) {
	lines := r.woodAround()
	if len(lines) == 0 {
		return checker{}, false
	}
	try := func(u trial, side scenario) figure {
		f := figure{demand: r.rules.bodyOutline.Value, capacity: math.Inf(1)}
		path := r.seatPath(u, side)
		for _, line := range lines {
			if line.fromHang-float64(u.line) >= f.capacity {
				break // no nearer, and the others are farther still
			}
			if room := line.room(path); room < f.capacity {
				f.capacity, f.where = room, Where{Part: line.name, Case: string(LimbInPath)}
			}
		}
		f.capacity = math.Min(math.Max(0, f.capacity), greatestMargin)
		return f
	}
	return checker{code: LimbInPath, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline))
	}}, true
}

// timber is the axis of a member with its thickness at each corner.
type timber struct {
	name   string
	points []quantity.Vec3
	radii  []float64
	// fromHang is the distance of its face from the hang point.
	fromHang float64
}

// woodAround lists the members near the swing, the nearest first: all of this tree but those that
// carry the hang, and those of the neighbours.
func (r *rig) woodAround() []timber {
	var list []timber
	hang := r.hangPoint()
	near := 2*float64(r.asked.line) + 2
	add := func(s *shape, offset quantity.Vec3, name string) {
		w := timber{name: name}
		for i, p := range s.points {
			w.points = append(w.points, p.Add(offset))
			w.radii = append(w.radii, radius(s, s.along[i]))
		}
		if w.fromHang = w.room([]quantity.Vec3{hang, hang}); w.fromHang < near {
			list = append(list, w)
		}
	}
	for _, s := range r.order {
		if !r.carriesHang(s) {
			add(s, quantity.Vec3{}, s.member.ID)
		}
	}
	for _, n := range r.neighbours() {
		for _, s := range n.order {
			add(s, n.offset, s.member.ID+" of "+nameOf(n.s))
		}
	}
	slices.SortStableFunc(list, func(a, b timber) int { return cmp.Compare(a.fromHang, b.fromHang) })
	return list
}

// seatPath is the arc of the seat as chords; with the chords 5 degrees wide,
// the arc lies within 5 mm of them for a line of 5 m.
func (r *rig) seatPath(u trial, side scenario) []quantity.Vec3 {
	const steps = 16
	hang := r.on.position(float64(r.armNear(side)))
	hang.Z -= float64(r.on.diameter(float64(r.arm.Value)).upright.Value) / 2
	var path []quantity.Vec3
	for i := -steps; i <= steps; i++ {
		q := u.amplitude * quantity.Angle(i) / steps
		path = append(path, hang.Add(r.heading.Scale(float64(u.line)*q.Sin())).Add(quantity.Vec3{Z: -float64(u.line) * q.Cos()}))
	}
	return path
}

// room is the least distance between a path and the face of the wood.
func (w timber) room(path []quantity.Vec3) float64 {
	least := math.Inf(1)
	for i := 1; i < len(w.points); i++ {
		thickest := math.Max(w.radii[i-1], w.radii[i])
		for j := 1; j < len(path); j++ {
			least = math.Min(least, segmentDistance(path[j-1], path[j], w.points[i-1], w.points[i])-thickest)
		}
	}
	return least
}

// segmentDistance returns the least distance between two segments in space.
// Source: Ericson, Real-Time Collision Detection, 2005, section 5.1.9 (from memory).
func segmentDistance(p1, q1, p2, q2 quantity.Vec3) float64 {
	d1, d2, r := q1.Sub(p1), q2.Sub(p2), p1.Sub(p2)
	a, e, f := d1.Dot(d1), d2.Dot(d2), d2.Dot(r)
	s, t := 0.0, 0.0
	switch {
	case a == 0 && e == 0:
	case a == 0:
		t = unit(f / e)
	case e == 0:
		s = unit(-d1.Dot(r) / a)
	default:
		b, c := d1.Dot(d2), d1.Dot(r)
		if denominator := a*e - b*b; denominator > 0 {
			s = unit((b*f - c*e) / denominator)
		}
		t = (b*s + f) / e
		if t < 0 {
			t, s = 0, unit(-c/a)
		} else if t > 1 {
			t, s = 1, unit((b-c)/a)
		}
	}
	return p1.Add(d1.Scale(s)).Sub(p2.Add(d2.Scale(t))).Norm()
}

// unit holds a number between 0 and 1.
func unit(x float64) float64 { return math.Min(1, math.Max(0, x)) }
