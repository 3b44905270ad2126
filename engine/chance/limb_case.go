package chance

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// LimbCase is one section of a limb under its own weight and a ride. The limb
// fails when X = Strength x SectionModulus is less than SelfMoment + RideMoment. All four are
// lognormal and independent. RideMoment is the largest of an outing or a season,
// taken once: the strength is the same in every ride.
//
// TestMoment is that of a load test that is counted as passed, 0 for none. What
// it tells of the ride is in doubt by the lasting factor K, mean 1 and variation
// LastingCoV: X K was not less than SelfMoment + TestMoment. With K no test makes the chance 0.
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

// leastLasting keeps a load test from being taken as proof for ever.
const leastLasting = 0.02

// leastCarried is the least chance of what the limb is seen to do; below it the
// laws contradict the tree.
const leastCarried = 1e-9

// Chance returns the probability that the ride breaks the limb: P(X < S + Q);
// given that it carries its own weight, P(S < X < S + Q) / P(X > S); and given a
// load test passed besides, P(S < X < S + Q, X K > S + T) / P(X > S, X K > S + T).
// S and Q are the moments of own weight and ride, T that of the test, K the
// lasting factor; S and X are the same variables throughout. The figures come
// from quadrature without matched moments; relative error below 1e-5 for
// probabilities down to 1e-11, 1e-2 at 1e-13. A heavier ride never lowers them, evidence never
// raises them, and a stronger test never raises its own. A heavier ride with a test
// heavier in proportion can lower the last: the test then proves more.
// Errors: values out of range; a limb that could not have passed the test.
// Source: definition of conditional probability; evidence from a proof load known
// with error as in Ditlevsen & Madsen, 1996, Structural Reliability Methods (from memory).
func (c LimbCase) Chance() (Chance, error) {
	m, err := c.model()
	if err != nil {
		return Chance{}, fmt.Errorf("chance of a limb: %w", err)
	}
	cannotCarry := Shortfall(m.resistance, m.self).Probability
	carries := Shortfall(m.self, m.resistance).Probability
	if !(carries > leastCarried) {
		return Chance{}, fmt.Errorf("chance of a limb: by these laws it cannot carry its own weight (strength %v Pa, own moment %v N m)",
			float64(c.Strength.Mean), float64(c.SelfMoment.Mean))
	}
	breaks := m.breaksCarrying()
	result := Chance{
		Prior:          FigureOf(cannotCarry + breaks),
		GivenOwnWeight: FigureOf(breaks / carries),
	}
	if m.test == 0 {
		return result, nil
	}
	tested := m.tested()
	passes := tested.passes()
	if !(passes > leastCarried) {
		return Chance{}, fmt.Errorf("chance of a limb: by these laws it cannot pass a test of %v N m", m.test)
	}
	given := FigureOf(tested.breaks() / passes)
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
