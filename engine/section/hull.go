package section

import (
	"cmp"
	"math"
	"slices"
)

// hull is a convex polygon about the origin, counter-clockwise, with the unit
// normal of the edge from each corner to the next, ordered by angle.
type hull struct {
	corners, normals []vector
	angles           []float64 // of the normals, ascending
}

func newHull(points []vector) hull {
	corners := convex(points)
	h := hull{}
	start, least := 0, math.Inf(1)
	for i, a := range corners {
		if angle := normal(a, corners[(i+1)%len(corners)]).angle(); angle < least {
			start, least = i, angle
		}
	}
	for k := range corners {
		a, b := corners[(start+k)%len(corners)], corners[(start+k+1)%len(corners)]
		n := normal(a, b)
		h.corners, h.normals, h.angles = append(h.corners, a), append(h.normals, n), append(h.angles, n.angle())
	}
	return h
}

// normal returns the outward unit normal of the edge from a to b.
func normal(a, b vector) vector {
	d := vector{b.y - a.y, a.x - b.x}
	length := math.Hypot(d.x, d.y)
	return vector{d.x / length, d.y / length}
}

func (v vector) angle() float64 { return math.Atan2(v.y, v.x) }

// support returns how far the hull reaches along n: the corner whose two edges
// have n between their normals.
func (h *hull) support(n vector) float64 {
	i, _ := slices.BinarySearch(h.angles, n.angle())
	return h.corners[i%len(h.corners)].dot(n)
}

// convex returns the corners of the convex hull, counter-clockwise (monotone
// chain, Andrew 1979). Points on an edge are left out.
func convex(points []vector) []vector {
	sorted := slices.Clone(points)
	slices.SortFunc(sorted, func(a, b vector) int { return cmp.Or(cmp.Compare(a.x, b.x), cmp.Compare(a.y, b.y)) })
	var chain []vector
	half := func(next []vector) {
		floor := len(chain)
		for _, p := range next {
			for len(chain) >= floor+2 {
				a, b := chain[len(chain)-2], chain[len(chain)-1]
				if (vector{b.x - a.x, b.y - a.y}).cross(vector{p.x - b.x, p.y - b.y}) > 0 {
					break
				}
				chain = chain[:len(chain)-1]
			}
			chain = append(chain, p)
		}
		chain = chain[:len(chain)-1]
	}
	half(sorted)
	slices.Reverse(sorted)
	half(sorted)
	return chain
}
