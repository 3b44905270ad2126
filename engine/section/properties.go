package section

import (
	"math"

	"boughline/quantity"
)

// Section is the wood left of a cross-section, measured.
type Section struct {
	Area     quantity.Area
	Centroid Point
	// Second moments of area about the centroid in m4: the integrals of y
	// squared, x squared and x times y.
	IxxM4, IyyM4, IxyM4 float64
	// Principal second moments, and the direction of the axis about which the
	// greater one is taken.
	MajorM4, MinorM4 float64
	MajorAxis        quantity.Angle
	rings            []Ring
	// Hulls of the stress vectors (modulus.go), and of them with their opposites.
	sides, both hull
}

// Rings returns the edges of the wood: the outer one, then cavities that do
// not reach it.
func (s Section) Rings() []Ring { return s.rings }

// vector is a point or direction in plain numbers.
type vector struct{ x, y float64 }

func (v vector) dot(w vector) float64   { return v.x*w.x + v.y*w.y }
func (v vector) negated() vector        { return vector{-v.x, -v.y} }
func (v vector) cross(w vector) float64 { return v.x*w.y - v.y*w.x }

// measure integrates over the wood by Green's theorem, edge by edge (Steger
// 1996, On the calculation of moments of polygons, from memory; exact for
// straight edges). Moments are taken about the first point and moved to the
// centroid.
func measure(rings []Ring) Section {
	s := Section{rings: rings}
	origin := rings[0][0]
	var area, x, y, xx, yy, xy float64
	for i, ring := range rings {
		m := integrate(ring, origin)
		if (m.area > 0) != (i == 0) { // outer ring counts, holes are taken off
			m = m.negated()
		}
		area += m.area
		x, y = x+m.x, y+m.y
		xx, yy, xy = xx+m.xx, yy+m.yy, xy+m.xy
	}
	cx, cy := x/area, y/area
	s.Area = quantity.Area(area)
	s.Centroid = Point{origin.X + quantity.Length(cx), origin.Y + quantity.Length(cy)}
	s.IxxM4, s.IyyM4, s.IxyM4 = yy-area*cy*cy, xx-area*cx*cx, xy-area*cx*cy
	s.principal()
	s.prepare()
	return s
}

// moments are the integrals of 1, x, y, x squared, y squared and xy.
type moments struct{ area, x, y, xx, yy, xy float64 }

func (m moments) negated() moments {
	return moments{-m.area, -m.x, -m.y, -m.xx, -m.yy, -m.xy}
}

func integrate(ring Ring, origin Point) moments {
	m := moments{}
	for i, p := range ring {
		q := ring[(i+1)%len(ring)]
		a := vector{float64(p.X - origin.X), float64(p.Y - origin.Y)}
		b := vector{float64(q.X - origin.X), float64(q.Y - origin.Y)}
		c := a.cross(b)
		m.area += c / 2
		m.x += c * (a.x + b.x) / 6
		m.y += c * (a.y + b.y) / 6
		m.xx += c * (a.x*a.x + a.x*b.x + b.x*b.x) / 12
		m.yy += c * (a.y*a.y + a.y*b.y + b.y*b.y) / 12
		m.xy += c * (2*a.x*a.y + a.x*b.y + b.x*a.y + 2*b.x*b.y) / 24
	}
	return m
}

// principal finds the principal values by Mohr's circle.
func (s *Section) principal() {
	mean, half := (s.IxxM4+s.IyyM4)/2, (s.IxxM4-s.IyyM4)/2
	radius := math.Hypot(half, s.IxyM4)
	s.MajorM4, s.MinorM4 = mean+radius, mean-radius
	s.MajorAxis = quantity.Angle(math.Atan2(-s.IxyM4, half) / 2)
}
