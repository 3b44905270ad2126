package chance

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Figure is a probability of failure and the reliability index that says the
// same: Probability = Phi(-Beta).
type Figure struct {
	Probability float64 `json:"probability"`
	Beta        float64 `json:"index"`
}

// Probability returns the probability of failure of a reliability index,
// Phi(-beta).
// Source: Hasofer & Lind, 1974 (from memory); definition in EN 1990, annex C.
func Probability(beta float64) float64 { return distuv.UnitNormal.CDF(-beta) }

// Beta returns the reliability index of a probability of failure, the inverse of
// Probability: +Inf for 0, -Inf for 1, NaN outside 0 to 1.
func Beta(probability float64) float64 {
	if !(probability >= 0 && probability <= 1) {
		return math.NaN()
	}
	return -distuv.UnitNormal.Quantile(probability)
}

// Shortfall returns the chance that a resistance is less than a load, both
// lognormal and independent: Beta = (Mu_R - Mu_L) / sqrt(Sigma_R^2 + Sigma_L^2), exact.
// Two fixed values give a Beta of +Inf or -Inf (NaN if equal).
// Source: elementary; Rosenblueth & Esteva, 1972 (from memory).
func Shortfall(resistance, load Lognormal) Figure {
	beta := (resistance.Mu - load.Mu) / math.Hypot(resistance.Sigma, load.Sigma)
	return Figure{Probability: Probability(beta), Beta: beta}
}

// FigureOf returns the figure of a probability.
func FigureOf(probability float64) Figure {
	return Figure{Probability: probability, Beta: Beta(probability)}
}

// phi returns the density, cdf the distribution of a standard normal variable;
// cdf keeps its relative accuracy in the lower tail.
func phi(z float64) float64 { return math.Exp(-z*z/2) / math.Sqrt(2*math.Pi) }

func cdf(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// between returns the probability that a standard normal variable lies between
// low and high, without loss of digits in either tail; 0 where high < low.
func between(low, high float64) float64 {
	switch {
	case high <= low:
		return 0
	case low > 0:
		return cdf(-low) - cdf(-high)
	}
	return cdf(high) - cdf(low)
}
