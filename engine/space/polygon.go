package space

import (
	"math"

	"boughline/quantity"
)

// Polygon is an area in plan, its corners in order; Z does not count.
type Polygon []quantity.Vec3

// Holds reports whether a point lies in the area: a line from it crosses the
// outline an odd number of times.
func (p Polygon) Holds(point quantity.Vec3) bool {
	inside := false
	for k, a := range p {
		b := p[(k+1)%len(p)]
		if (a.Y > point.Y) != (b.Y > point.Y) && point.X < a.X+(b.X-a.X)*(point.Y-a.Y)/(b.Y-a.Y) {
			inside = !inside
		}
	}
	return inside
}

// Distance returns how far a point lies from the area, 0 within it.
func (p Polygon) Distance(point quantity.Vec3) quantity.Length {
	if p.Holds(point) {
		return 0
	}
	least := math.Inf(1)
	for k, a := range p {
		beyond, beside := fromSegment(a, p[(k+1)%len(p)], point)
		least = math.Min(least, math.Hypot(beyond, beside))
	}
	return quantity.Length(least)
}

// Apart returns the least distance between the area and a figure of corners:
// a point, a line, or another area where closed. 0 where they meet.
func (p Polygon) Apart(corners []quantity.Vec3, closed bool) quantity.Length {
	if closed && Polygon(corners).Holds(p[0]) {
		return 0
	}
	least := quantity.Length(math.Inf(1))
	for k, a := range corners {
		least = min(least, p.Distance(a))
		if k+1 == len(corners) && !closed {
			break
		}
		b := corners[(k+1)%len(corners)]
		for j, c := range p {
			if crosses(a, b, c, p[(j+1)%len(p)]) {
				return 0
			}
			beyond, beside := fromSegment(a, b, c)
			least = min(least, quantity.Length(math.Hypot(beyond, beside)))
		}
	}
	return least
}

// crosses reports whether two stretches cross in plan.
func crosses(a, b, c, d quantity.Vec3) bool {
	side := func(p, q, r quantity.Vec3) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}
