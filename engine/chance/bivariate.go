package chance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
)

// belowAbove returns the probability that one of two standard normal variables
// with the given correlation is below h while the other is above k. Relative
// accuracy is about 1e-13, in the tails too; correlations of -1 and 1 are exact.
// Source: the conditional form, integral of phi(z) Phi((h - rho z)/sqrt(1 - rho^2))
// over z > k, as in Owen, 1956, Annals of Mathematical Statistics 27:1075 (from memory).
func belowAbove(h, k, rho float64) float64 {
	if rho >= 1 {
		return between(k, h)
	}
	if rho <= -1 {
		return cdf(math.Min(h, -k))
	}
	c := math.Sqrt((1 - rho) * (1 + rho))
	// The integrand has one peak. Where Phi is in its own tail it is about
	// phi(h) phi((z - rho h)/c), elsewhere phi(z); this is where the greater lies
	// beyond k.
	peak := 0.0
	if h < 0 {
		peak = rho * h
	}
	peak = math.Max(peak, k)
	// Its logarithm curves down by at least 1, so ten units away nothing is left.
	const away = 10
	marks := append(around(peak, c), around(h/rho, c/math.Abs(rho))...) // where it peaks, where Phi steps
	breaks := breaksBetween(math.Max(k, peak-away), peak+away, 2.5, marks...)
	return integrate(func(z float64) float64 { return phi(z) * cdf((h-rho*z)/c) }, breaks)
}

// around lists places about a centre at which a function that changes over a
// width is cut: pieces of twice the width, as far as eight widths. Wider ones cost digits
// where a steep end of it is all that counts.
func around(centre, width float64) []float64 {
	marks := []float64{centre + width/4}
	for k := -8.0; k <= 8; k += 2 {
		marks = append(marks, centre+k*width)
	}
	return marks
}

// integrate returns the integral of f by twenty Gauss-Legendre points on each
// piece between neighbouring breaks.
func integrate(f func(float64) float64, breaks []float64) float64 {
	sum := 0.0
	for i, high := range breaks[1:] {
		middle, half := (breaks[i]+high)/2, (high-breaks[i])/2
		for j, x := range twenty.x {
			sum += half * twenty.weight[j] * f(middle+half*x)
		}
	}
	return sum
}

// twenty is that rule on -1 to 1.
var twenty = func() (r struct{ x, weight [20]float64 }) {
	quad.Legendre{}.FixedLocations(r.x[:], r.weight[:], -1, 1)
	return r
}()

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
