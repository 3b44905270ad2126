package section

import (
	"math"

	"boughline/quantity"
)

// Modulus is what a section offers against bending towards one direction, in
// m3: the moment over the greatest stress on the tension side (away from the
// load), on the compression side (towards it), and on the worse of the two.
// Simple is the elementary I/c with the neutral line square to the load, which
// errs on either side for sections without symmetry.
type Modulus struct {
	TensionM3, CompressionM3, GoverningM3, SimpleM3 float64
}

// A moment that bends towards the unit vector n gives the stress -q.n at a
// point r from the centroid, q = J^-1 r with J the matrix [Iyy Ixy; Ixy Ixx]
// (unsymmetric bending, plane sections; Timoshenko, Strength of Materials,
// from memory). So the stress at r is greatest under a load along q; the
// greatest over all points follows the hull of all q.

// prepare works out q for the corners of the outer edge.
func (s *Section) prepare() {
	det := s.IyyM4*s.IxxM4 - s.IxyM4*s.IxyM4
	outer := s.rings[0]
	sides := make([]vector, len(outer))
	both := make([]vector, 0, 2*len(outer))
	for i, p := range outer {
		r := vector{float64(p.X - s.Centroid.X), float64(p.Y - s.Centroid.Y)}
		q := vector{(s.IxxM4*r.x - s.IxyM4*r.y) / det, (s.IyyM4*r.y - s.IxyM4*r.x) / det}
		sides[i] = q
		both = append(both, q, q.negated())
	}
	s.sides, s.both = newHull(sides), newHull(both)
}

// Modulus returns the section modulus for a load along a direction.
func (s Section) Modulus(load quantity.Angle) Modulus {
	n := vector{load.Cos(), load.Sin()}
	towards, away := s.sides.support(n), s.sides.support(n.negated())
	turned := s.times(n) // r = J q, so r.n = q.(J n)
	furthest := s.both.support(turned)
	return Modulus{
		TensionM3:     1 / away,
		CompressionM3: 1 / towards,
		GoverningM3:   1 / math.Max(towards, away),
		SimpleM3:      n.dot(turned) / furthest,
	}
}

// times returns J n.
func (s *Section) times(n vector) vector {
	return vector{s.IyyM4*n.x + s.IxyM4*n.y, s.IxyM4*n.x + s.IxxM4*n.y}
}

// governing returns the modulus for a load along n by the hull.
func (s *Section) governing(n vector) float64 { return 1 / s.both.support(n) }

// Least returns the smallest section modulus over all directions, in m3, and
// the direction that has it, between 0 and 180 degrees; the opposite direction
// has the same. Where several have it, as in a symmetric section, the greatest
// angle is returned. Exact: it belongs to a corner.
func (s Section) Least() (m3 float64, load quantity.Angle) {
	const equal = 1e-6
	furthest := 0.0
	for _, q := range s.both.corners {
		furthest = math.Max(furthest, math.Hypot(q.x, q.y))
	}
	for _, q := range s.both.corners {
		if math.Hypot(q.x, q.y) > furthest*(1-equal) {
			load = max(load, halfTurn(q))
		}
	}
	return 1 / furthest, load
}

// LeastRatio returns the smallest ratio of this section's modulus to that of
// another, usually the sound one, for the same direction of load. Between two
// edges of either hull the ratio only rises or falls, so edges suffice.
func (s Section) LeastRatio(sound Section) (ratio float64, load quantity.Angle) {
	ratio = math.Inf(1)
	for _, normals := range [2][]vector{s.both.normals, sound.both.normals} {
		for _, n := range normals {
			if r := s.governing(n) / sound.governing(n); r < ratio {
				ratio, load = r, halfTurn(n)
			}
		}
	}
	return ratio, load
}

// halfTurn returns the angle of v or -v, from 0 to below 180 degrees.
func halfTurn(v vector) quantity.Angle {
	angle := math.Atan2(v.y, v.x)
	if angle < 0 {
		angle += math.Pi
	}
	if angle >= math.Pi {
		angle = 0
	}
	return quantity.Angle(angle)
}
