package assess

import (
	"fmt"

	"boughline/engine/chance"
	"boughline/quantity"
	"boughline/survey"
)

// Updated is a number before and after a load test, by its mean and variation.
type Updated struct {
	Before    float64 `json:"before"`
	BeforeCoV float64 `json:"before_variation"`
	After     float64 `json:"after"`
	AfterCoV  float64 `json:"after_variation"`
	Unit      string  `json:"unit"`
}

// LoadTestUpdate is what a passed test says of the limb: of its stiffness at
// the hang point and of its strength at the union, as the moment it bears.
type LoadTestUpdate struct {
	Stiffness Updated `json:"stiffness"`
	Strength  Updated `json:"strength"`
	// Chance is that of a year with this test passed, at the union.
	Chance chance.Figure `json:"chance"`
}

// afterTest updates stiffness by the readings and strength by the load borne:
// it was not weaker than that, in that direction, at that moment.
func (r *rig) afterTest(test *survey.LoadTest) (LoadTestUpdate, error) {
	stiffness, err := r.stiffnessAfter(test)
	if err != nil {
		return LoadTestUpdate{}, err
	}
	c := &r.limbs[0].cuts[0]
	limb := r.limbCase(r.asked, c, unfavourable)
	limb.TestMoment = quantity.Moment(r.momentPerNewton(c) * float64(r.borneIn(test)))
	strength, err := strengthAfter(limb)
	if err != nil {
		return LoadTestUpdate{}, err
	}
	figures, err := limb.Chance()
	if err != nil {
		return LoadTestUpdate{}, err
	}
	u := LoadTestUpdate{Stiffness: stiffness, Strength: strength, Chance: told(figures.GivenOwnWeight)}
	if figures.GivenLoadTest != nil {
		u.Chance = told(*figures.GivenLoadTest)
	}
	return u, nil
}

func (r *rig) stiffnessAfter(test *survey.LoadTest) (Updated, error) {
	law, err := r.sagBefore()
	if err != nil {
		return Updated{}, err
	}
	before := law.compliance()
	after, err := before.Update(r.readings(test)...)
	if err != nil {
		return Updated{}, fmt.Errorf("sag readings: %w", err)
	}
	k := after.Inverse()
	return Updated{Before: 1 / before.Mean, BeforeCoV: before.SD / before.Mean, After: k.Mean, AfterCoV: k.SD / k.Mean, Unit: "N/m"}, nil
}

// strengthAfter proves the lognormal strength with own weight and test together,
// in doubt by the lasting factor.
func strengthAfter(limb chance.LimbCase) (Updated, error) {
	strength, err := chance.LognormalOf(float64(limb.Strength.Mean), limb.Strength.CoV)
	if err != nil {
		return Updated{}, err
	}
	modulus, err := chance.LognormalOf(float64(limb.SectionModulus.Mean), limb.SectionModulus.CoV)
	if err != nil {
		return Updated{}, err
	}
	before := chance.Product(strength, modulus)
	load := float64(limb.SelfMoment.Mean + limb.TestMoment)
	proved, err := chance.Prove(before, chance.Proof{Load: load, SD: load * limb.LastingCoV})
	if err != nil {
		return Updated{}, err
	}
	mean, sd := proved.Moments()
	return Updated{Before: before.Mean(), BeforeCoV: before.CoV(), After: mean, AfterCoV: sd / mean, Unit: "N m"}, nil
}

func (u LoadTestUpdate) terms(path string) []Term {
	term := func(symbol, name string, value, cov float64, unit string) Term {
		return Term{Symbol: symbol, Name: name, Value: value, Unit: unit, Note: percent("variation", cov)}
	}
	after := term("k'", "stiffness after the readings", u.Stiffness.After, u.Stiffness.AfterCoV, "N/m")
	after.Path = path
	return []Term{
		term("k", "stiffness of the limb at the hang point as worked out", u.Stiffness.Before, u.Stiffness.BeforeCoV, "N/m"), after,
		term("M_b", "moment that the union bears, before", u.Strength.Before, u.Strength.BeforeCoV, "N m"),
		term("M_b'", "the same after the test", u.Strength.After, u.Strength.AfterCoV, "N m"),
		{Symbol: "p", Name: "chance of failure in a year with this test", Value: u.Chance.Probability, Unit: "1", Note: chanceCovers},
	}
}

// chanceCovers is said beside every chance.
const chanceCovers = "modelled loads and strengths only: not defects nobody saw, misuse or damaged gear"
