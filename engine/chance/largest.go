package chance

import (
	"fmt"
	"math"
)

// Largest is the law of the greatest of a number of independent draws of a law,
// F(x)^n: the load of an outing or a season, of which each ride is one draw.
type Largest struct {
	of Law
	n  float64
}

// LargestOf returns the law of the greatest of n draws, 1 or more.
// Source: elementary; as in Gumbel, 1958, Statistics of Extremes (from memory).
func LargestOf(law Law, n int) (Largest, error) {
	if n < 1 {
		return Largest{}, fmt.Errorf("greatest of %d draws; expected 1 or more", n)
	}
	return Largest{law, float64(n)}, nil
}

// At returns the value at the standard normal deviate z.
func (l Largest) At(z float64) float64 {
	above := -math.Expm1(math.Log1p(-cdf(-z)) / l.n) // of one draw: 1 - Phi(z)^(1/n)
	if z < 0 {
		above = -math.Expm1(math.Log(cdf(z)) / l.n)
	}
	return l.of.At(Beta(above))
}

// Deviate returns the standard normal deviate of a value.
func (l Largest) Deviate(x float64) float64 {
	z := l.of.Deviate(x)
	above := -math.Expm1(math.Log1p(-cdf(-z)) * l.n) // of all draws
	if z < 0 {
		above = -math.Expm1(math.Log(cdf(z)) * l.n)
	}
	return Beta(above)
}
