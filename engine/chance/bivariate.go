package chance

import "math"

// BelowAbove returns the probability that one of two standard normal variables
// with the given correlation is below h while the other is above k. Relative
// accuracy is about 1e-13, in the tails too; correlations of -1 and 1 are exact.
// The correlation is cut to -1 to 1.
// Source: the conditional form, integral of phi(z) Phi((h - rho z)/sqrt(1 - rho^2))
// over z > k, as in Owen, 1956, Annals of Mathematical Statistics 27:1075 (from memory).
func BelowAbove(h, k, rho float64) float64 {
	return belowAbove(newRule(20), h, k, rho)
}

func belowAbove(gauss rule, h, k, rho float64) float64 {
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
	low, high := math.Max(k, peak-away), peak+away
	step, width := h/rho, c/math.Abs(rho) // where Phi steps, and how widely
	breaks := breaksBetween(low, high, 2.5,
		peak, peak-6*c, peak-c, peak+c/4, peak+c, peak+6*c, step-6*width, step, step+6*width)
	return gauss.integrate(func(z float64) float64 { return phi(z) * cdf((h-rho*z)/c) }, breaks)
}
