package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// near fails unless got lies within rel of want.
func near(t interface{ Errorf(string, ...any) }, what string, got, want, rel float64) {
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s: got %.17g, want %.17g, off by %.2g", what, got, want, got/want-1)
	}
}

// Sheppard, 1899: P(Z1 < 0, Z2 < 0) = 1/4 + asin(rho)/(2 pi).
func TestBelowAboveMatchesTheOrthantFormula(t *testing.T) {
	for _, rho := range []float64{-0.9999999, -0.99, -0.7, -0.2, 0, 1e-9, 0.3, 0.5, 0.8, 0.95, 0.999, 0.9999999} {
		want := 0.25 - math.Asin(rho)/(2*math.Pi)
		near(t, "orthant", belowAbove(0, 0, rho), want, 1e-9)
	}
	near(t, "orthant at 1/2", belowAbove(0, 0, 0.5), 1.0/6, 1e-14)
	near(t, "orthant at -1/2", belowAbove(0, 0, -0.5), 1.0/3, 1e-14)
}

// With rho = sin 45 deg and k = 0 the conditional form is the integral of phi Phi: exactly
// Phi(h)^2/2, and for -rho Phi(h) - Phi(h)^2/2.
func TestBelowAboveMatchesTheSquareInTheTail(t *testing.T) {
	rho := math.Sqrt(0.5)
	for h := -9.0; h <= 3; h += 0.5 {
		p := cdf(h)
		near(t, "rho > 0", belowAbove(h, 0, rho), p*p/2, 1e-12)
		near(t, "rho < 0", belowAbove(h, 0, -rho), p-p*p/2, 1e-12)
	}
}

// Steep ends of the integrand, where wide pieces cost digits: values of mpmath 1.3 with 40
// digits, the conditional form integrated in pieces of half its width.
func TestBelowAboveBesideAFullCorrelation(t *testing.T) {
	const want = 1.706055479894311766e-13
	rho := math.Tanh(3.75)
	near(t, "upper end", belowAbove(7, 7, rho), want, 1e-12)
	near(t, "lower end", belowAbove(-7, -7, rho), want, 1e-12)
}

func TestBelowAboveOfIndependentAndTiedVariables(t *testing.T) {
	for _, c := range []struct{ h, k float64 }{{-7, 1}, {0.3, -0.8}, {2, 7}, {-5, -5}} {
		near(t, "independent", belowAbove(c.h, c.k, 0), cdf(c.h)*cdf(-c.k), 1e-13)
		if got, want := belowAbove(c.h, c.k, 1), math.Max(0, cdf(c.h)-cdf(c.k)); math.Abs(got-want) > 1e-15 {
			t.Errorf("rho 1: got %v, want %v", got, want)
		}
		near(t, "rho -1", belowAbove(c.h, c.k, -1), cdf(math.Min(c.h, -c.k)), 1e-15)
	}
}

// Plackett, 1954 (Biometrika 41:351): the derivative of the bivariate normal
// distribution by rho is its density. Integrated from rho = 0 to below 0 every term is
// positive, so the tails are checked to relative accuracy.
func TestBelowAboveMatchesPlackettsIdentity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(-5, 5).Draw(t, "h")
		k := rapid.Float64Range(-5, 5).Draw(t, "k")
		angle := rapid.Float64Range(-1.4, 0).Draw(t, "asin rho")
		// rho = sin a turns the density into a smooth exponential.
		density := func(a float64) float64 {
			s, c := math.Sin(a), math.Cos(a)
			return math.Exp(-(h*h+k*k-2*h*k*s)/(2*c*c)) / (2 * math.Pi)
		}
		want := cdf(h)*cdf(-k) + integrate(density, breaksBetween(angle, 0, 0.05))
		near(t, "rho < 0", belowAbove(h, k, math.Sin(angle)), want, 1e-11)
	})
}

// (Z1, Z2) and (-Z2, -Z1) have the same law: the two sides are integrals over
// different variables. Down to probabilities of 1e-14 and close to full correlation.
func TestBelowAboveIsSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(-7, 7).Draw(t, "h")
		k := rapid.Float64Range(-7, 7).Draw(t, "k")
		rho := math.Tanh(rapid.Float64Range(-4, 4).Draw(t, "atanh rho"))
		p := belowAbove(h, k, rho)
		if p > 1e-14 {
			near(t, "swapped", belowAbove(-k, -h, rho), p, 1e-11)
		}
	})
}

// P(Z1 < h, Z2 > k; rho) + P(Z1 < h, -Z2 > -k; -rho) = P(Z1 < h).
func TestBelowAboveIsComplete(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(-6, 6).Draw(t, "h")
		k := rapid.Float64Range(-6, 6).Draw(t, "k")
		rho := rapid.Float64Range(-1, 1).Draw(t, "rho")
		near(t, "total", belowAbove(h, k, rho)+belowAbove(h, -k, -rho), cdf(h), 1e-12)
	})
}
