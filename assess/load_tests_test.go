package assess

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

// tested returns the oak with a load test of its swing.
func tested(t *testing.T, test survey.LoadTest) *survey.Survey {
	t.Helper()
	s := oak(t)
	test.Hang = s.Trees[0].Hangs[0].ID
	if test.On.IsZero() {
		test.On = s.Day
	}
	s.Trees[0].LoadTests = append(s.Trees[0].LoadTests, test)
	return s
}

// stepOf is a step of a mass that was weighed and a sag that was taped.
func stepOf(kg, millimetres float64) survey.LoadStep {
	load := survey.MeasuredMass{Value: quantity.Mass(kg), How: quantity.Weighed}
	sag := survey.MeasuredLength{Value: quantity.Length(millimetres / 1000), How: quantity.Taped}
	return survey.LoadStep{Mass: &load, Sag: &sag}
}

func setOf(millimetres float64) *survey.MeasuredLength {
	return &survey.MeasuredLength{Value: quantity.Length(millimetres / 1000), How: quantity.Taped}
}

func judgedWith(t *testing.T, s *survey.Survey, code Code) (Outcome, bool) {
	t.Helper()
	h := assessFirst(t, s)
	for _, r := range h.Reasons {
		if r.Code == code {
			return h.Outcome, true
		}
	}
	return h.Outcome, false
}

func TestLoadTestsAreJudged(t *testing.T) {
	before := day(t, "2026-05-01")
	enough := []survey.LoadStep{stepOf(100, 2), stepOf(215, 4)}
	for name, c := range map[string]struct {
		test survey.LoadTest
		code Code
		want Outcome
	}{
		"passed":                     {survey.LoadTest{Steps: enough, Set: setOf(0)}, TestPassed, MayHang},
		"lapsed":                     {survey.LoadTest{Steps: enough, Set: setOf(0), On: before}, TestLapsed, MayHang},
		"no set read":                {survey.LoadTest{Steps: enough}, TestNotRead, Unfinished},
		"no sag read":                {survey.LoadTest{Steps: []survey.LoadStep{{Mass: enough[1].Mass}}, Set: setOf(0)}, TestNotRead, Unfinished},
		"less than planned":          {survey.LoadTest{Steps: []survey.LoadStep{stepOf(150, 3)}, Set: setOf(0)}, LoadTested, WithinLimits},
		"next to nothing":            {survey.LoadTest{Steps: []survey.LoadStep{stepOf(20, 1)}, Set: setOf(0)}, LoadTested, Unfinished},
		"a sound":                    {survey.LoadTest{Steps: enough, Set: setOf(0), Signs: []string{survey.TestSound}}, TestStopped, Leave},
		"a sound on another day":     {survey.LoadTest{Steps: enough, Set: setOf(0), On: before, Signs: []string{survey.TestSound}}, TestStopped, Leave},
		"more sag than the band":     {survey.LoadTest{Steps: []survey.LoadStep{stepOf(215, 20)}, Set: setOf(0)}, TestSags, Leave},
		"a set that stays":           {survey.LoadTest{Steps: enough, Set: setOf(10)}, TestSet, Leave},
		"within what a tape can err": {survey.LoadTest{Steps: []survey.LoadStep{stepOf(215, 6)}, Set: setOf(2)}, TestPassed, MayHang},
	} {
		got, said := judgedWith(t, tested(t, c.test), c.code)
		if got != c.want || !said {
			t.Errorf("%s: %v, %s is %v; want %v", name, got, c.code, said, c.want)
		}
	}
}

// A later good test lifts nothing, and neither does one of another hang on the limb.
func TestAGoodTestDoesNotLiftABadOne(t *testing.T) {
	s := tested(t, survey.LoadTest{Steps: []survey.LoadStep{stepOf(50, 1)}, Signs: []string{survey.TestCrack}, On: day(t, "2026-05-01")})
	s.Trees[0].LoadTests = append(s.Trees[0].LoadTests, survey.LoadTest{Hang: s.Trees[0].Hangs[0].ID, On: s.Day, Steps: []survey.LoadStep{stepOf(215, 4)}, Set: setOf(0)})
	if got, _ := judgedWith(t, s, TestStopped); got != Leave {
		t.Errorf("outcome %v", got)
	}
	other := s.Trees[0].Hangs[0]
	other.ID, other.At.Value = "nearer", 1
	s.Trees[0].Hangs = append(s.Trees[0].Hangs, other)
	if h := assessAll(t, s)[1]; h.Outcome != Leave {
		t.Errorf("nearer on the same limb: %v", h.Outcome)
	}
}

// A hollow knock beside a passed test stays what it is.
func TestAPassedTestLiftsNoFinding(t *testing.T) {
	passed := survey.LoadTest{Steps: []survey.LoadStep{stepOf(215, 4)}, Set: setOf(0)}
	withFinding := func(s *survey.Survey) *survey.Survey {
		s.Trees[0].Findings = append(s.Trees[0].Findings, survey.Finding{ID: "k", Sign: "base-09"})
		return s
	}
	before, after := assessFirst(t, withFinding(oak(t))), assessFirst(t, withFinding(tested(t, passed)))
	if before.Outcome != Leave || after.Outcome != before.Outcome {
		t.Errorf("before %v, after %v", before.Outcome, after.Outcome)
	}
}

// A test of the day can only take away: whatever is recorded, the outcome is never better
// than without it.
func TestNoLoadTestImprovesAnOutcome(t *testing.T) {
	without := assessFirst(t, oak(t)).Outcome
	rapid.Check(t, func(d *rapid.T) {
		test := survey.LoadTest{Steps: []survey.LoadStep{stepOf(rapid.Float64Range(5, 400).Draw(d, "kg"), rapid.Float64Range(0.1, 30).Draw(d, "mm"))}}
		if rapid.Bool().Draw(d, "set read") {
			test.Set = setOf(rapid.Float64Range(0, 20).Draw(d, "set"))
		}
		if got := assessFirst(t, tested(t, test)).Outcome; got < without {
			d.Errorf("with the test %v, without %v", got, without)
		}
	})
}

// The sag for 1 N of a limb without taper on a stiff stem is that of a cantilever,
// F l^3/(3 E I); with a slender stem of height H without taper comes x^2 H/(E I). The band is
// lognormal: its ends lie as far from the middle as each other in ratio.
func TestSagToExpect(t *testing.T) {
	for _, stem := range []float64{2000, 300} {
		text := fmt.Sprintf(calibrationLimb, 39, stem, 200, 199.999, stem)
		s := readSurvey(t, strings.Replace(text, `"tip": "200 mm taped"}`, fmt.Sprintf(`"tip": "%v mm taped", "bark": "0 mm ±0 mm calliper"}`, stem), 1))
		r, err := rigNamed(s, base(t), "h")
		if err != nil {
			t.Fatal(err)
		}
		law, err := r.sagBefore()
		if err != nil {
			t.Fatal(err)
		}
		const inside, arm, rises = 0.184, 2.5, 5
		bends := func(d float64) float64 { return r.species.wood.MOE.Value * math.Pi / 64 * math.Pow(d, 4) }
		lever := arm + stem/2000
		want := math.Pow(arm, 3)/(3*bends(inside)) + lever*lever*rises/bends(stem/1000)
		middle, low, high := law.under(1)
		mean := 1 / law.Power(-1).Mean() // of the stiffness, which is what was worked out
		if math.Abs(mean/want-1) > 1e-3 {
			t.Errorf("stem of %v mm: sag %.5g m/N, closed form %.5g", stem, mean, want)
		}
		if got := float64(low*high) / float64(middle*middle); math.Abs(got-1) > 1e-9 {
			t.Errorf("band %v to %v about %v", low, high, middle)
		}
	}
}

// Readings that say what was worked out narrow the stiffness and leave its mean;
// a conjugate normal law by hand: 1/sd^2 adds up.
func TestReadingsNarrowTheStiffness(t *testing.T) {
	s := oak(t)
	r, err := rigNamed(s, base(t), "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	law, err := r.sagBefore()
	if err != nil {
		t.Fatal(err)
	}
	prior := law.compliance()
	const kg = 2000.0 // far more than any test, so that the tape's doubt is small beside the sag
	load := quantity.Mass(kg).Weight()
	step := stepOf(kg, 1000*prior.Mean*float64(load))
	after, err := r.stiffnessAfter(&survey.LoadTest{Steps: []survey.LoadStep{step}})
	if err != nil {
		t.Fatal(err)
	}
	reading := r.sagRead(*step.Sag).Sd / quantity.Length(load)
	sd := 1 / math.Sqrt(1/(prior.SD*prior.SD)+1/float64(reading*reading))
	if math.Abs(after.After/after.Before-1) > 1e-9 || math.Abs(after.AfterCoV-sd/prior.Mean) > 1e-9 {
		t.Errorf("got %+v, want the mean kept and variation %.6f", after, sd/prior.Mean)
	}
	none, err := r.stiffnessAfter(&survey.LoadTest{})
	if err != nil || math.Abs(none.AfterCoV/none.BeforeCoV-1) > 1e-12 {
		t.Errorf("without readings %+v, %v", none, err)
	}
}

// A stronger test never lowers the strength that is left, and never raises the chance.
func TestAStrongerTestNeverRaisesTheChance(t *testing.T) {
	s := oak(t)
	r, err := rigNamed(s, base(t), "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	var before LoadTestUpdate
	for i, kg := range []float64{50, 200, 800, 2000} {
		u, err := r.afterTest(&survey.LoadTest{Steps: []survey.LoadStep{stepOf(kg, 1)}})
		if err != nil {
			t.Fatal(err)
		}
		if i > 0 && (u.Chance.Probability > before.Chance.Probability*(1+1e-9) || u.Strength.After < before.Strength.After) {
			t.Errorf("%v kg: %+v after %+v", kg, u, before)
		}
		before = u
	}
}

func TestThePlanAddsUpToItsTotal(t *testing.T) {
	p, err := PlanLoadTest(oak(t), base(t), "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	last := p.Steps[len(p.Steps)-1]
	if math.Abs(float64(last.Mass/p.Total-1)) > 1e-12 || !(last.Low < last.Sag && last.Sag < last.High) {
		t.Errorf("last step %+v of %v kg", last, p.Total)
	}
	if h := assessFirst(t, oak(t)); h.Limits.TestMass != p.Total {
		t.Errorf("planned %v kg, limits say %v kg", p.Total, h.Limits.TestMass)
	}
	if p.StandOff < 5 {
		t.Errorf("people stand %v m away", p.StandOff)
	}
}

// What hangs by the plan, weighed as the plan says, counts in full: the limits are then no
// lower than those it was planned for. A mass weighed within 3 % counts at 1 - 1.645 x 0.03 of
// its figure, by hand 212 kg at 201.5 kg.
func TestATestHungAsPlannedCountsInFull(t *testing.T) {
	plan, err := PlanLoadTest(oak(t), base(t), "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	test := survey.LoadTest{Set: setOf(0)}
	for _, step := range plan.Steps {
		test.Steps = append(test.Steps, stepOf(float64(step.Mass), 1000*float64(step.Sag)))
	}
	s := tested(t, test)
	r, err := rigNamed(s, base(t), "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	if borne, asked := r.borneIn(&test), plan.Counts.Weight(); borne < asked || borne > asked+quantity.Mass(1).Weight() {
		t.Errorf("hung as planned it counts %.1f N of %.1f N", borne, asked)
	}
	before, after := assessFirst(t, oak(t)).Limits, assessFirst(t, s).Limits
	if before == nil || after == nil || after.Mass < before.Mass {
		t.Errorf("limits %+v after the test, %+v before", after, before)
	}
	if whole := float64(plan.Total); whole != math.Trunc(whole) {
		t.Errorf("%v kg is no mass that anybody weighs", whole)
	}
	if got := float64(plan.Counts / plan.Total); got > 1-1.645*0.03 || got < 1-1.645*0.03-1/float64(plan.Total) {
		t.Errorf("counts %.1f kg of %.1f kg", float64(plan.Counts), float64(plan.Total))
	}
}
