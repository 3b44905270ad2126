package chance

import (
	"fmt"
	"math"
)

// Variable is an uncertain quantity by its mean and coefficient of variation.
type Variable[Q ~float64] struct {
	Mean Q
	CoV  float64
}

// Lognormal is a variable whose natural logarithm is normal with mean Mu and
// standard deviation Sigma; exp(Mu) is its median. Sigma 0 is a fixed value.
type Lognormal struct{ Mu, Sigma float64 }

// LognormalOf returns the lognormal law with the given mean and coefficient of
// variation: Sigma^2 = ln(1 + CoV^2), Mu = ln(mean) - Sigma^2/2.
// Errors: a mean that is not positive, a variation outside 0 to 10.
// Source: elementary; as in the Probabilistic Model Code of the Joint Committee
// on Structural Safety (from memory).
func LognormalOf(mean, cov float64) (Lognormal, error) {
	if !(mean > 0) || math.IsInf(mean, 1) {
		return Lognormal{}, fmt.Errorf("mean %v; expected more than 0", mean)
	}
	if !(cov >= 0 && cov <= 10) {
		return Lognormal{}, fmt.Errorf("coefficient of variation %v; expected 0 to 10", cov)
	}
	variance := math.Log1p(cov * cov)
	return Lognormal{Mu: math.Log(mean) - variance/2, Sigma: math.Sqrt(variance)}, nil
}

// Mean returns the mean, exp(Mu + Sigma^2/2).
func (l Lognormal) Mean() float64 { return math.Exp(l.Mu + l.Sigma*l.Sigma/2) }

// CoV returns the coefficient of variation.
func (l Lognormal) CoV() float64 { return math.Sqrt(math.Expm1(l.Sigma * l.Sigma)) }

// At returns the value at the standard normal deviate z.
func (l Lognormal) At(z float64) float64 { return math.Exp(l.Mu + l.Sigma*z) }

// Scale returns the law of factor times the variable; factor is positive.
func (l Lognormal) Scale(factor float64) Lognormal {
	return Lognormal{l.Mu + math.Log(factor), l.Sigma}
}

// Power returns the law of the variable raised to n.
func (l Lognormal) Power(n float64) Lognormal {
	return Lognormal{n * l.Mu, math.Abs(n) * l.Sigma}
}

// Product returns the law of the product of independent variables.
func Product(factors ...Lognormal) Lognormal {
	var mu, variance float64
	for _, f := range factors {
		mu += f.Mu
		variance += f.Sigma * f.Sigma
	}
	return Lognormal{mu, math.Sqrt(variance)}
}

// Sum returns the lognormal law with the mean and variance of a sum of
// independent lognormal variables. The sum itself is not lognormal: the lower
// tail is off, and the upper one thins out too early for great scatter.
// Source: Fenton, 1960, IRE Transactions on Communications Systems 8:57 (from memory).
func Sum(terms ...Lognormal) (Lognormal, error) {
	var mean, variance float64
	for _, t := range terms {
		m := t.Mean()
		mean += m
		variance += m * m * math.Expm1(t.Sigma*t.Sigma)
	}
	return LognormalOf(mean, math.Sqrt(variance)/mean)
}
