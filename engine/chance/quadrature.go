package chance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
)

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
		sum += r.over(f, breaks[i], high)
	}
	return sum
}

// over returns the integral of f from low to high.
func (r rule) over(f func(float64) float64, low, high float64) float64 {
	middle, half := (low+high)/2, (high-low)/2
	sum := 0.0
	for j, x := range r.x {
		sum += r.weight[j] * f(middle+half*x)
	}
	return sum * half
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
