package chance

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// LimbCase is one section of a limb under its own weight and a ride. The limb
// fails when Strength x SectionModulus is less than SelfMoment + RideMoment. All four are
// lognormal and independent. RideMoment is the largest of an outing or a season,
// taken once: the strength is the same in every ride, so its chance is never
// counted once for each ride.
//
// TestMoment is that of a load test that is counted as passed, 0 for none.
// LastingCoV is the variation of the factor, mean 1, by which the strength at the
// ride may differ from that at the test; with it no test makes the chance 0.
//
// Left out: defects nobody saw, wind, other sections, shear and twist, the shared diameter
// in SectionModulus and SelfMoment, loss of strength by repeated load.
type LimbCase struct {
	Strength       Variable[quantity.Stress] // member factor and model error included
	SectionModulus Variable[quantity.Volume]
	SelfMoment     Variable[quantity.Moment]
	RideMoment     Variable[quantity.Moment]
	TestMoment     quantity.Moment
	LastingCoV     float64
}

// Chance is the probability of failure of a limb, by what is known of it.
type Chance struct {
	Prior          Figure  // nothing known beyond the laws
	GivenOwnWeight Figure  // the limb carries its own weight today
	GivenLoadTest  *Figure // and has passed the load test; nil without one
}

const (
	// leastLasting keeps a load test from being taken as proof for ever.
	leastLasting = 0.02
	// leastEvidence is the least probability of something seen or counted on
	// that still fits the laws; below it the inputs contradict what is seen.
	leastEvidence = 1e-12
)

// Chance returns the probability that the ride breaks the limb: unconditioned;
// given that it carries its own weight, P(S < X < S + Q) / P(X > S); and given
// that it has carried S + T in a test, P(X K < S + Q, X > S + T) / P(X > S + T).
// X is the resisting moment, S and Q the moments of own weight and ride, T that
// of the test, K the lasting factor. S is the same variable throughout. No sum is
// replaced by one law of matched moments; the quadrature is within 1e-6 of the
// result (checked down to 1e-10). A heavier ride never lowers a figure, a stronger
// test never raises that of the test. K counts only with a test, so that a
// light test of a strong limb can give more than GivenOwnWeight.
// Errors: values out of range; a limb that by its laws could not stand or pass the test.
// Source: definition of conditional probability; proof loading as in Ditlevsen &
// Madsen, 1996, Structural Reliability Methods (from memory).
func (c LimbCase) Chance() (Chance, error) {
	m, err := c.model()
	if err != nil {
		return Chance{}, fmt.Errorf("chance of a limb: %w", err)
	}
	carries := Shortfall(m.self, m.resistance).Probability
	if !(carries > leastEvidence) {
		return Chance{}, fmt.Errorf("chance of a limb: by these laws it cannot carry its own weight (probability %.1g); expected strength %v Pa and own moment %v N m to fit a limb that stands",
			carries, float64(c.Strength.Mean), float64(c.SelfMoment.Mean))
	}
	result := Chance{
		Prior:          figureOf(m.overloaded(false)),
		GivenOwnWeight: figureOf(m.overloaded(true) / carries),
	}
	if m.test == 0 {
		return result, nil
	}
	passed := m.passes()
	if !(passed > leastEvidence) {
		return Chance{}, fmt.Errorf("chance of a limb: by these laws it cannot pass a test of %v N m (probability %.1g); expected a moment it can carry", m.test, passed)
	}
	given := figureOf(m.failsAfterTest() / passed)
	result.GivenLoadTest = &given
	return result, nil
}

// limbModel is a LimbCase by its laws.
type limbModel struct {
	resistance, self, ride, lasting Lognormal
	test                            float64
}

func (c LimbCase) model() (limbModel, error) {
	var m limbModel
	var strength, modulus Lognormal
	for _, v := range []struct {
		law       *Lognormal
		name      string
		mean, cov float64
	}{
		{&strength, "strength", float64(c.Strength.Mean), c.Strength.CoV},
		{&modulus, "section modulus", float64(c.SectionModulus.Mean), c.SectionModulus.CoV},
		{&m.self, "own moment", float64(c.SelfMoment.Mean), c.SelfMoment.CoV},
		{&m.ride, "moment of the ride", float64(c.RideMoment.Mean), c.RideMoment.CoV},
		{&m.lasting, "lasting factor", 1, c.LastingCoV},
	} {
		law, err := LognormalOf(v.mean, v.cov)
		if err != nil {
			return m, fmt.Errorf("%s: %w", v.name, err)
		}
		*v.law = law
	}
	m.resistance = Product(strength, modulus)
	m.test = float64(c.TestMoment)
	return m, m.check(c)
}

func (m limbModel) check(c LimbCase) error {
	if c.Strength.CoV < leastLasting || c.Strength.CoV > 1 {
		return fmt.Errorf("strength: coefficient of variation %v; expected %v to 1", c.Strength.CoV, leastLasting)
	}
	if !(m.test >= 0) || math.IsInf(m.test, 1) {
		return fmt.Errorf("moment of the test %v N m; expected 0 or more", m.test)
	}
	if m.test > 0 && c.LastingCoV < leastLasting {
		return fmt.Errorf("lasting factor: coefficient of variation %v; expected %v or more with a load test", c.LastingCoV, leastLasting)
	}
	return nil
}

// overloaded returns P(X < S + Q), or P(S < X < S + Q) if the limb is to carry
// its own weight. Given the ratio Q/S both are intervals of ln X - ln S, which
// is normal then; one integral over the ratio is left.
func (m limbModel) overloaded(carrying bool) float64 {
	x, s, q := m.resistance, m.self, m.ride
	ratio := Lognormal{q.Mu - s.Mu, math.Hypot(q.Sigma, s.Sigma)}
	shift := 0.0 // of ln X - ln S for a unit of the ratio's deviate
	if ratio.Sigma > 0 {
		shift = s.Sigma * s.Sigma / ratio.Sigma
	}
	spread := math.Sqrt(x.Sigma*x.Sigma + s.Sigma*s.Sigma - shift*shift)
	return expectation(ratio.Sigma/spread, func(z float64) float64 {
		centre := x.Mu - s.Mu + shift*z
		high := (math.Log1p(ratio.At(z)) - centre) / spread
		if carrying {
			return between(-centre/spread, high)
		}
		return cdf(high)
	})
}

// passes returns P(X > S + T).
func (m limbModel) passes() float64 {
	x := m.resistance
	return expectation(m.self.Sigma/x.Sigma, func(z float64) float64 {
		return cdf((x.Mu - math.Log(m.self.At(z)+m.test)) / x.Sigma)
	})
}

// failsAfterTest returns P(X K < S + Q, X > S + T), a bivariate normal
// probability in ln X K and ln X once S and Q are given.
func (m limbModel) failsAfterTest() float64 {
	x, xk := m.resistance, Product(m.resistance, m.lasting)
	rho := x.Sigma / xk.Sigma
	gauss := newRule(10)
	return expectation(m.self.Sigma/m.lasting.Sigma, func(zs float64) float64 {
		self := m.self.At(zs)
		k := (math.Log(self+m.test) - x.Mu) / x.Sigma
		return expectation(m.ride.Sigma/m.lasting.Sigma, func(zq float64) float64 {
			h := (math.Log(self+m.ride.At(zq)) - xk.Mu) / xk.Sigma
			return belowAbove(gauss, h, k, rho)
		})
	})
}
