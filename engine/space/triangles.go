package space

import "slices"

// triangle is three spots by their index, counter-clockwise in plan.
type triangle [3]int

// triangulate joins spots, sorted by X and then Y, into triangles: each spot
// in turn is joined to the sides of the outline that it sees, and sides are
// then turned until no spot lies within the circle through a triangle. Empty
// where all lie in one line. No module within reach triangulates a plane; a
// site has tens of spots, so that the plain way is quick enough.
// Source: Lawson, Software for C1 surface interpolation, 1977 (from memory).
func triangulate(spots []Spot) []triangle {
	list, outline, next := fan(spots)
	for i := next; i < len(spots); i++ {
		outline = join(spots, outline, i, &list)
	}
	for turnOne(spots, list) {
	}
	return list
}

// fan joins the first spot beside the line of all before it to each two of
// them. It returns the triangles, the outline counter-clockwise, and the spot
// that comes next.
func fan(spots []Spot) (list []triangle, outline []int, next int) {
	for i := 2; i < len(spots); i++ {
		side := turn(spots[0], spots[i-1], spots[i])
		if side > -inLine && side < inLine {
			continue
		}
		for k := range i {
			outline = append(outline, k)
		}
		if side < 0 { // to the right of the line: the other way round
			slices.Reverse(outline)
		}
		for k := 1; k < i; k++ {
			list = append(list, triangle{outline[k-1], outline[k], i})
		}
		return list, append(outline, i), i + 1
	}
	return nil, nil, len(spots)
}

// inLine is twice the area, m2, below which three spots count as in line.
const inLine = 1e-9

// turn is twice the area of the triangle a, b, c: above 0 where they run
// counter-clockwise.
func turn(a, b, c Spot) float64 {
	return float64((b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X))
}

// join adds the triangles between spot i, which lies beyond the outline, and
// the sides of it that it sees; they follow one another. It returns the new
// outline.
func join(spots []Spot, outline []int, i int, list *[]triangle) []int {
	n := len(outline)
	sees := func(k int) bool {
		return turn(spots[outline[k%n]], spots[outline[(k+1)%n]], spots[i]) < -inLine
	}
	first := 0
	for first < n && !(sees(first) && !sees(first+n-1)) {
		first++
	}
	if first == n {
		return outline
	}
	last := first
	for ; sees(last); last++ {
		*list = append(*list, triangle{outline[last%n], i, outline[(last+1)%n]})
	}
	grown := []int{i}
	for k := last; k <= first+n; k++ {
		grown = append(grown, outline[k%n])
	}
	return grown
}

// turnOne turns one side between two triangles whose circle holds the fourth
// spot, and reports whether there was one.
func turnOne(spots []Spot, list []triangle) bool {
	for a := range list {
		for b := range a {
			if turnBetween(spots, list, a, b) {
				return true
			}
		}
	}
	return false
}

func turnBetween(spots []Spot, list []triangle, a, b int) bool {
	for k := range 3 {
		p, q, r := list[a][k], list[a][(k+1)%3], list[a][(k+2)%3]
		s, shared := list[b].across(p, q)
		if shared && inCircle(spots[p], spots[q], spots[r], spots[s]) {
			list[a], list[b] = triangle{p, s, r}, triangle{s, q, r}
			return true
		}
	}
	return false
}

// across returns the third corner of a triangle that has the side from q to p.
func (t triangle) across(p, q int) (int, bool) {
	for k := range 3 {
		if t[k] == q && t[(k+1)%3] == p {
			return t[(k+2)%3], true
		}
	}
	return 0, false
}

// inCircle reports whether d lies within the circle through a, b and c, which
// run counter-clockwise. Four on one circle count as not, so that turning ends.
// Source: Guibas and Stolfi, ACM Trans. Graphics 4 (1985), 74 (from memory).
func inCircle(a, b, c, d Spot) bool {
	row := func(p Spot) (x, y, square float64) {
		x, y = float64(p.X-d.X), float64(p.Y-d.Y)
		return x, y, x*x + y*y
	}
	ax, ay, a2 := row(a)
	bx, by, b2 := row(b)
	cx, cy, c2 := row(c)
	size := a2*b2 + b2*c2 + c2*a2
	return ax*(by*c2-b2*cy)-ay*(bx*c2-b2*cx)+a2*(bx*cy-by*cx) > 1e-12*size
}

// shares returns the shares of the corners in a point of the triangle, and
// false for a point outside.
func (t triangle) shares(spots []Spot, p Spot) (share [3]float64, inside bool) {
	a, b, c := spots[t[0]], spots[t[1]], spots[t[2]]
	whole := turn(a, b, c)
	share = [3]float64{turn(b, c, p) / whole, turn(c, a, p) / whole, turn(a, b, p) / whole}
	return share, min(share[0], share[1], share[2]) >= -1e-9
}
