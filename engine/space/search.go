package space

import (
	"math"

	"boughline/engine/numeric"
)

const (
	rootScan    = 64   // intervals in which the sign of a smooth function is read
	maximumScan = 12   // intervals of a smooth stretch before it is narrowed
	endProbe    = 1e-6 // how far inside an end a fall is looked for, as a share of an interval of the scan
	goldenSteps = 40   // each narrows by 0.618: 40 reach the root of rounding, below which a top is flat
)

// roots returns the places between lo and hi at which the smooth function f
// is 0 or changes sign. A pair of roots inside one interval of the scan is
// found through the hump between them.
func roots(f func(float64) float64, lo, hi float64) []float64 {
	var found []float64
	var value [rootScan + 1]float64
	x := func(i int) float64 { return lo + float64(i)*(hi-lo)/rootScan }
	bracket := func(a, fa, b, fb float64) {
		if fa*fb < 0 {
			found = append(found, numeric.Root(f, a, b))
		}
	}
	for i := range value {
		if value[i] = f(x(i)); value[i] == 0 {
			found = append(found, x(i))
		}
		if i > 0 {
			bracket(x(i-1), value[i-1], x(i), value[i])
		}
		if i < 2 || !humpToZero(value[i-2], value[i-1], value[i]) {
			continue
		}
		side := math.Copysign(1, value[i-1])
		top, _ := numeric.Greatest(func(q float64) float64 { return -side * f(q) }, x(i-2), x(i), goldenSteps)
		bracket(x(i-2), value[i-2], top, f(top))
		bracket(top, f(top), x(i), value[i])
	}
	return found
}

// humpToZero says whether three values in a row lie on one side of 0 and the
// middle one is the nearest to it.
func humpToZero(before, here, after float64) bool {
	return before*here > 0 && after*here > 0 &&
		math.Abs(here) <= math.Abs(before) && math.Abs(here) <= math.Abs(after)
}

// greatestBetween returns where f is greatest between lo and hi, both
// included, and its value there.
func greatestBetween(f func(float64) float64, lo, hi float64) (at, greatest float64) {
	step := (hi - lo) / maximumScan
	best := 0
	at, greatest = lo, f(lo)
	for i := 1; i <= maximumScan; i++ {
		if v := f(lo + float64(i)*step); v > greatest {
			best, at, greatest = i, lo+float64(i)*step, v
		}
	}
	a := lo + float64(max(best-1, 0))*step
	b := lo + float64(min(best+1, maximumScan))*step
	if inside := at + endProbe*(b+a-2*at); (best == 0 || best == maximumScan) && f(inside) <= greatest {
		return at, greatest // it falls from the end inwards
	}
	if q, v := numeric.Greatest(f, a, b, goldenSteps); v > greatest {
		return q, v
	}
	return at, greatest
}
