package chance

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Law is the law of a random input by its map from a standard normal variable
// (probability integral transform): At rises with z, Deviate is its inverse.
type Law interface {
	At(z float64) float64
	Deviate(x float64) float64
}

// Normal is a normal law; SD 0 is a fixed value.
type Normal struct{ Mean, SD float64 }

// NormalOf returns the normal law with the given mean and standard deviation.
// Errors: a mean that is not finite, a deviation that is negative or not finite.
func NormalOf(mean, sd float64) (Normal, error) {
	if math.IsNaN(mean) || math.IsInf(mean, 0) {
		return Normal{}, fmt.Errorf("mean %v; expected a finite value", mean)
	}
	if !(sd >= 0) || math.IsInf(sd, 1) {
		return Normal{}, fmt.Errorf("standard deviation %v; expected 0 or more", sd)
	}
	return Normal{Mean: mean, SD: sd}, nil
}

// At returns the value at the standard normal deviate z.
func (n Normal) At(z float64) float64 { return n.Mean + n.SD*z }

// Deviate returns the standard normal deviate of a value; 0 for a fixed law.
func (n Normal) Deviate(x float64) float64 {
	if n.SD == 0 {
		return 0
	}
	return (x - n.Mean) / n.SD
}

// Deviate returns the standard normal deviate of a value more than 0; 0 for a
// fixed law.
func (l Lognormal) Deviate(x float64) float64 {
	if l.Sigma == 0 {
		return 0
	}
	return (math.Log(x) - l.Mu) / l.Sigma
}

// distribution is what a law needs of a library's distribution.
type distribution interface {
	CDF(x float64) float64
	Quantile(p float64) float64
}

// probit is a law by its distribution and quantile functions.
type probit struct{ distribution }

func (p probit) At(z float64) float64      { return p.Quantile(cdf(z)) }
func (p probit) Deviate(x float64) float64 { return distuv.UnitNormal.Quantile(p.CDF(x)) }

// Other returns the law of any continuous distribution: beta, exponential,
// Gumbel and others of gonum's distuv. Probabilities near 1 are rounded to 1e-16, so
// its upper tail holds six digits up to z = 6 and ends at z = 8.
func Other(d interface {
	CDF(x float64) float64
	Quantile(p float64) float64
}) Law {
	return probit{d}
}
