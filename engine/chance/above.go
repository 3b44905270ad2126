package chance

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Above is a lognormal strength known for certain to exceed a load: its density
// cut off below the load and scaled to 1. All in closed form.
// Source: truncated lognormal law, elementary; Johnson, Kotz & Balakrishnan, 1994,
// Continuous Univariate Distributions, chapter 14 (from memory).
type Above struct {
	Lognormal
	Load float64
}

// Survival returns the chance, by the prior, of exceeding the load.
func (a Above) Survival() float64 { return cdf(-a.cut()) }

func (a Above) cut() float64 { return a.Lognormal.Deviate(a.Load) }

// CDF returns the probability that the strength is less than r.
func (a Above) CDF(r float64) float64 {
	if r <= a.Load {
		return 0
	}
	return between(a.cut(), a.Lognormal.Deviate(r)) / a.Survival()
}

// Quantile returns the strength that is not reached with probability p, 0 to 1.
func (a Above) Quantile(p float64) float64 {
	return a.Lognormal.At(-distuv.UnitNormal.Quantile((1 - p) * a.Survival()))
}

// Law returns the law of the strength that exceeds the load, as an input; the
// fields of Above itself are those of the law before.
func (a Above) Law() Law { return exceeding{a, a.Survival()} }

type exceeding struct {
	above    Above
	survival float64
}

func (e exceeding) At(z float64) float64 { return e.above.Lognormal.At(Beta(cdf(-z) * e.survival)) }

func (e exceeding) Deviate(x float64) float64 {
	return Beta(math.Min(1, cdf(-e.above.Lognormal.Deviate(x))/e.survival))
}

// Moments returns mean and standard deviation.
func (a Above) Moments() (mean, sd float64) {
	share := func(order float64) float64 { return cdf(order*a.Sigma-a.cut()) / a.Survival() }
	mean = a.Lognormal.Mean() * share(1)
	square := math.Exp(2*a.Mu+2*a.Sigma*a.Sigma) * share(2)
	return mean, math.Sqrt(math.Max(0, square-mean*mean))
}
