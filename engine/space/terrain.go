package space

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boughline/quantity"
)

// Spot is a spot height: a place in plan and the height of the ground there,
// with the standard deviation of that height.
type Spot struct {
	X, Y       quantity.Length // east and north
	Height, Sd quantity.Length
}

// Terrain is scattered spot heights joined into triangles, each of them plane.
// Beyond the outermost spots nothing is known.
type Terrain struct {
	spots     []Spot
	triangles []triangle
}

// apart is how near two spots may lie in plan, m: nearer ones are one place
// measured twice.
const apart = 0.01

// NewTerrain triangulates spot heights so that no triangle is more pointed
// than it must be (Delaunay). Errors name spots that are not finite or stand
// in one place, fewer than three, and spots that all lie in one line.
func NewTerrain(spots []Spot) (*Terrain, error) {
	list := slices.Clone(spots)
	slices.SortStableFunc(list, func(a, b Spot) int { return cmp.Or(cmp.Compare(a.X, b.X), cmp.Compare(a.Y, b.Y)) })
	if err := checkSpots(list); err != nil {
		return nil, err
	}
	triangles := triangulate(list)
	if len(triangles) == 0 {
		return nil, fmt.Errorf("spots: all %d lie in one line; expected some to either side of it", len(spots))
	}
	return &Terrain{list, triangles}, nil
}

func checkSpots(spots []Spot) error {
	if len(spots) < 3 {
		return fmt.Errorf("spots: there are %d; expected at least three that do not lie in one line", len(spots))
	}
	for i, s := range spots {
		if !finite(s.X) || !finite(s.Y) || !finite(s.Height) || !finite(s.Sd) || s.Sd < 0 {
			return fmt.Errorf("spots: one at (%v, %v) with height %v ± %v; expected finite lengths in m", s.X, s.Y, s.Height, s.Sd)
		}
		for _, other := range spots[:i] {
			if math.Hypot(float64(s.X-other.X), float64(s.Y-other.Y)) < apart {
				return fmt.Errorf("spots: two at (%.2f, %.2f) m; expected each place once", s.X, s.Y)
			}
		}
	}
	return nil
}

// At returns the height of the ground with its standard deviation, and false
// beyond the outermost spots. Between spots both are linear.
func (t *Terrain) At(x, y quantity.Length) (height, sd quantity.Length, known bool) {
	for _, tri := range t.triangles {
		if share, inside := tri.shares(t.spots, Spot{X: x, Y: y}); inside {
			for k, i := range tri {
				height += quantity.Length(share[k]) * t.spots[i].Height
				sd += quantity.Length(share[k]) * t.spots[i].Sd
			}
			return height, sd, true
		}
	}
	return 0, 0, false
}

// Section is a point of the ground on a line in plan.
type Section struct {
	Along      quantity.Length
	Height, Sd quantity.Length
}

// Section cuts the ground along a line through the origin and returns every
// point at which its slope changes, rising, with the first and last point
// known. None where the line misses the ground that is known. The cut through
// plane triangles is exact.
func (t *Terrain) Section(origin quantity.Vec3, azimuth quantity.Angle) []Section {
	heading := quantity.Heading(azimuth, 0)
	var cut []Section
	for _, tri := range t.triangles {
		for k := range tri {
			a, b := t.spots[tri[k]], t.spots[tri[(k+1)%3]]
			cut = append(cut, crossings(origin, heading, a, b)...)
		}
	}
	slices.SortFunc(cut, func(a, b Section) int { return cmp.Compare(a.Along, b.Along) })
	return slices.CompactFunc(cut, func(a, b Section) bool { return math.Abs(float64(b.Along-a.Along)) < 1e-6 })
}

// crossings returns where a line in plan meets the edge between two spots: one
// point, both ends of an edge that lies on the line, or none.
func crossings(origin, heading quantity.Vec3, a, b Spot) []Section {
	place := func(s Spot) (along, beside float64) {
		d := flat(quantity.Vec3{X: float64(s.X), Y: float64(s.Y)}.Sub(origin))
		return d.Dot(heading), heading.X*d.Y - heading.Y*d.X
	}
	alongA, besideA := place(a)
	alongB, besideB := place(b)
	if besideA == 0 && besideB == 0 {
		return []Section{{quantity.Length(alongA), a.Height, a.Sd}, {quantity.Length(alongB), b.Height, b.Sd}}
	}
	if besideA*besideB > 0 {
		return nil
	}
	share := quantity.Length(besideA / (besideA - besideB))
	return []Section{{
		Along:  quantity.Length(alongA) + share*quantity.Length(alongB-alongA),
		Height: a.Height + share*(b.Height-a.Height), Sd: a.Sd + share*(b.Sd-a.Sd),
	}}
}
