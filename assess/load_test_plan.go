package assess

import (
	"math"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// LoadTestPlan is how a hang is loaded before anyone rides: dead mass in steps,
// or a pull straight down through a ground anchor with a load cell, worked from outside the
// drop zone. People are never the test mass.
type LoadTestPlan struct {
	Format  int           `json:"load_test_plan"`
	Hang    string        `json:"hang"`
	Outcome Outcome       `json:"outcome"`
	Use     Use           `json:"use"`
	Total   quantity.Mass `json:"total_kg"`
	// Counts is what the total counts as: the mass at its low 5 % value, as weighed.
	Counts quantity.Mass `json:"counts_kg"`
	Steps  []PlannedStep `json:"steps"`
	Hold   quantity.Time `json:"hold_s"`
	// SetAtMost is the sag that may stay when all is taken off, and ReadingOff by
	// how much a tape may be off in reading it, or any sag.
	SetAtMost  quantity.Length `json:"set_at_most_m"`
	ReadingOff quantity.Length `json:"reading_off_by_m"`
	// StandOff is how far from the plumb line of the hang point everybody stands.
	StandOff quantity.Length `json:"stand_off_m"`
	StopAt   []string        `json:"stop_at"` // signs, as a survey records them
	LeftOut  []LeftOut       `json:"leaves_out"`
	Refs     []source.Ref    `json:"refs"`
}

// PlannedStep is one load in all, with the sag to expect under it and the band
// that holds nine sound limbs in ten. Pull is the weight of Mass.
type PlannedStep struct {
	Mass quantity.Mass   `json:"mass_kg"`
	Pull quantity.Force  `json:"pull_n"`
	Sag  quantity.Length `json:"sag_m"`
	Low  quantity.Length `json:"sag_low_m"`
	High quantity.Length `json:"sag_high_m"`
}

// PlanLoadTest plans the test of one hang for the greatest use within its limits,
// or for what was asked for where there are none.
func PlanLoadTest(s *survey.Survey, k *knowledge.Base, hang string) (LoadTestPlan, error) {
	r, err := rigNamed(s, k, hang)
	if err != nil {
		return LoadTestPlan{}, err
	}
	judged := r.assess()
	use := r.usedWithin(judged)
	sag, err := r.sagBefore()
	if err != nil {
		return LoadTestPlan{}, err
	}
	p := LoadTestPlan{
		Format: Format, Hang: hang, Outcome: judged.Outcome,
		Use:   Use{Riders: r.riders.count, Mass: use.mass, Seat: r.riders.seat, Amplitude: use.amplitude, Line: use.line, Gust: use.gust},
		Total: r.testMass(use, 1), Counts: massOfWeight(r.testPull(use)), Hold: quantity.Time(r.rules.testHold.Value), StandOff: r.standOff(use), ReadingOff: quantity.Tail * leastSagSd,
		StopAt:  []string{survey.TestSound, survey.TestCrack, survey.TestCurve, survey.TestMovement},
		LeftOut: []LeftOut{SidewaysRiding, DefectsNobodySaw, GearDamage},
		Refs:    []source.Ref{r.rules.testFactor.Ref, r.rules.testSteps.Ref, r.rules.stiffnessCoV.Ref},
	}
	steps := int(r.rules.testSteps.Value)
	for i := range steps {
		mass := r.testMass(use, float64(i+1)/float64(steps))
		step := PlannedStep{Mass: mass, Pull: mass.Weight()}
		step.Sag, step.Low, step.High = sag.under(step.Pull)
		p.Steps = append(p.Steps, step)
	}
	p.SetAtMost = p.Steps[steps-1].Sag * quantity.Length(r.rules.testSet.Value)
	return p, nil
}

// testMass is the mass to hang for a share of the load test, in whole kilograms:
// weighed with the doubt of a scale, it counts as that share or more.
func (r *rig) testMass(u trial, share float64) quantity.Mass {
	one := survey.MeasuredMass{Value: 1, How: quantity.Weighed}
	counts := float64(resolve(r.k, one).Low())
	return quantity.Mass(math.Ceil(share*float64(massOfWeight(r.testPull(u)))/counts - 1e-9))
}

// massOfWeight is the mass that hangs with a force.
func massOfWeight(f quantity.Force) quantity.Mass {
	return quantity.Mass(float64(f) / quantity.StandardGravity)
}

// standOff is the ground that a limb which comes down may reach from the plumb
// line: its height with what is to be kept clear beside it, and no less than the riders'
// own kept-clear length.
func (r *rig) standOff(u trial) quantity.Length {
	clear := u
	clear.amplitude = r.spaceAngle(u.amplitude)
	ahead, behind := r.keptClear(clear)
	height := quantity.Length(r.hangPoint().Z) + quantity.Length(r.rules.fallingReach.Value)
	return max(ahead, behind, height)
}

// testCheckers is the check that the riders ask no more than the load test of
// the day has proved; there is none before a test.
func (r *rig) testCheckers() []checker {
	test, path := r.testOfTheDay()
	if test == nil {
		return nil
	}
	borne := r.borneIn(test)
	try := func(u trial, side scenario) figure {
		f := figure{demand: float64(r.testPull(u)), capacity: float64(borne) * (1 + testTolerance), where: Where{Part: r.on.member.ID, Case: string(LoadTested)}}
		if side == favourable { // the test can go on
			f.capacity = greatestMargin * f.demand
		}
		return f
	}
	return []checker{{code: LoadTested, unit: "N", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return append(r.pullTerms(u), factTerm("k_T", "load test over greatest pull", r.rules.testFactor),
			Term{Symbol: "F_T", Name: "load that hung, low value", Value: float64(borne), Unit: "N", Path: path})
	}}}
}

// testTolerance is by how much a total may fall short for want of small weights.
const testTolerance = 0.01

// borneIn is the greatest load of a test, a mass at its low 5 % value.
func (r *rig) borneIn(test *survey.LoadTest) quantity.Force {
	var greatest quantity.Force
	for _, step := range test.Steps {
		load := step.Load()
		if step.Mass != nil {
			load = resolve(r.k, *step.Mass).Low().Weight()
		}
		greatest = max(greatest, load)
	}
	return greatest
}
