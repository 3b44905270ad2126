package chance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
)

// expectation returns the mean of f, at least 0, over a standard normal variable by
// the trapezoidal rule, whose error falls faster than any power of the step on
// such integrands. steepness is the greatest rise of f on the probit scale for a
// unit of z; the step shrinks with it, which keeps the relative error near 1e-10.
// f times the density has one peak, so terms are added outwards from z = 0
// until they no longer count.
// Source: Goodwin, 1949, on the trapezoidal rule with a normal weight (from memory).
func expectation(steepness float64, f func(z float64) float64) float64 {
	const coarsest, negligible, farthest = 0.9, 1e-11, 37
	step := coarsest / math.Sqrt(1+steepness*steepness)
	sum := phi(0) * f(0)
	for _, direction := range []float64{1, -1} {
		before := 0.0
		for z := step; z < farthest; z += step {
			term := phi(z) * f(direction*z)
			sum += term
			if term < before && term < negligible*sum {
				break
			}
			before = term
		}
	}
	return sum * step
}

// rule is a Gauss-Legendre rule on -1 to 1.
type rule struct{ x, weight []float64 }

func newRule(n int) rule {
	r := rule{make([]float64, n), make([]float64, n)}
	quad.Legendre{}.FixedLocations(r.x, r.weight, -1, 1)
	return r
}

// integrate returns the integral of f over the pieces between neighbouring breaks.
func (r rule) integrate(f func(float64) float64, breaks []float64) float64 {
	sum := 0.0
	for i, high := range breaks[1:] {
		middle, half := (breaks[i]+high)/2, (high-breaks[i])/2
		piece := 0.0
		for j, x := range r.x {
			piece += r.weight[j] * f(middle+half*x)
		}
		sum += piece * half
	}
	return sum
}

// breaksBetween returns low, the marks inside low to high, and high, with more
// breaks so that no piece is wider than widest.
func breaksBetween(low, high, widest float64, marks ...float64) []float64 {
	marks = slices.DeleteFunc(marks, func(m float64) bool { return !(m > low && m < high) })
	marks = append(marks, high)
	slices.Sort(marks)
	breaks := []float64{low}
	for _, m := range marks {
		last := breaks[len(breaks)-1]
		pieces := int(math.Ceil((m - last) / widest))
		for i := 1; i <= pieces; i++ {
			breaks = append(breaks, last+(m-last)*float64(i)/float64(pieces))
		}
	}
	return breaks
}
