package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Phi(-beta), by SciPy; the betas are targets of EN 1990, annex B (3.3 to 5.2,
// from memory), and of the Probabilistic Model Code of the JCSS, 2001 (3.7, 4.4, from memory).
func TestProbabilityOfTargetIndices(t *testing.T) {
	for _, row := range []struct{ beta, p float64 }{
		{3.3, 4.8342e-4}, {3.7, 1.0780e-4}, {3.8, 7.2348e-5}, {4.2, 1.3346e-5},
		{4.4, 5.4125e-6}, {4.7, 1.3008e-6}, {5.2, 9.9644e-8},
	} {
		near(t, "probability", Probability(row.beta), row.p, 1e-4)
	}
}

// Table of the Probabilistic Model Code of the JCSS: indices to one decimal.
func TestBetaMatchesTheTableOfTheModelCode(t *testing.T) {
	for _, row := range []struct{ p, beta float64 }{
		{1e-1, 1.3}, {1e-2, 2.3}, {1e-3, 3.1}, {1e-4, 3.7}, {1e-5, 4.2}, {1e-6, 4.7}, {1e-7, 5.2},
	} {
		// The table rounds 4.265 to 4.2 and 4.753 to 4.7: it never overstates.
		if got := Beta(row.p); got < row.beta-0.05 || got > row.beta+0.1 {
			t.Errorf("p %v: beta %v, the table has %v", row.p, got, row.beta)
		}
	}
}

// ISO 2394 and EN 1990, annex C: Phi(beta_n) = Phi(beta_1)^n; 4.7 a year is 3.826
// over 50 independent years (EN 1990 rounds to 3.8).
func TestBetaOverFiftyYears(t *testing.T) {
	p := -math.Expm1(50 * math.Log1p(-Probability(4.7)))
	near(t, "beta", Beta(p), 3.8263, 2e-5)
}

func TestBetaAndProbabilityAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		beta := rapid.Float64Range(-4, 8).Draw(t, "beta")
		if got := Beta(Probability(beta)); math.Abs(got-beta) > 1e-9 {
			t.Errorf("beta %v came back as %v", beta, got)
		}
	})
	if !math.IsInf(Beta(0), 1) || !math.IsInf(Beta(1), -1) || !math.IsNaN(Beta(1.1)) || !math.IsNaN(Beta(-1)) {
		t.Errorf("Beta of 0, 1, 1.1, -1: %v %v %v %v", Beta(0), Beta(1), Beta(1.1), Beta(-1))
	}
}

// The index of two lognormal variables does not change with the unit, rises with
// the resistance and is 0 for equal medians.
func TestShortfall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, l := drawLognormal(t, "resistance"), drawLognormal(t, "load")
		r.Sigma += 0.05
		figure := Shortfall(r, l)
		near(t, "probability", figure.Probability, Probability(figure.Beta), 1e-14)
		if stronger := Shortfall(r.Scale(1.5), l); !(stronger.Beta > figure.Beta) {
			t.Errorf("beta %v with 1.5 times the resistance, %v before", stronger.Beta, figure.Beta)
		}
		if scaled := Shortfall(r.Scale(7), l.Scale(7)); math.Abs(scaled.Beta-figure.Beta) > 1e-9*(1+math.Abs(figure.Beta)) {
			t.Errorf("beta %v in another unit, %v before", scaled.Beta, figure.Beta)
		}
		r.Mu = l.Mu
		if got := Shortfall(r, l); got.Beta != 0 || got.Probability != 0.5 {
			t.Errorf("equal medians: %+v", got)
		}
	})
}
