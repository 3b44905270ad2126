package wording

import (
	"strings"
	"testing"

	"boughline/assess"
	"boughline/engine/chance"
	"boughline/knowledge"
	"boughline/survey"
)

func TestEveryChanceHasWords(t *testing.T) {
	for _, code := range []assess.LeftOut{assess.DefectsNobodySaw, assess.Misuse, assess.GearDamage, assess.RepeatedLoading, assess.OtherLimbs, assess.OtherWays, assess.SidewaysRiding} {
		if leftOut[code] == "" {
			t.Errorf("no words for %s", code)
		}
	}
	for _, code := range []string{assess.OneRide, assess.OneOuting, assess.OneSeason, assess.AtDesignAmplitude} {
		if Exposure(code) == "" {
			t.Errorf("no words for %s", code)
		}
	}
	for _, code := range []string{survey.TestSound, survey.TestCrack, survey.TestCurve, survey.TestMovement} {
		if StopSign(code) == "" {
			t.Errorf("no words for %s", code)
		}
	}
}

// Chances keep two digits; what the laws do not reach is not told.
func TestProbabilities(t *testing.T) {
	for p, want := range map[float64]string{0: "below 1e-15", 3e-16: "below 1e-15", 1.234e-6: "1.2e-06", 0.0512: "0.051", 1: "1"} {
		if got := Probability(p); got != want {
			t.Errorf("%g: %q, want %q", p, got, want)
		}
	}
	if got, want := Figure(chance.Figure{Probability: 8.54e-6, Beta: 4.299}), "8.5e-06 (index 4.29)"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	none := Interval(assess.SampledChance{High: 3e-4, Samples: 1000})
	if !strings.HasPrefix(none, "none of 1000 failed") {
		t.Error(none)
	}
	if got := LimbChances(assess.LimbChances{Probability: 0.5, Target: 4.3}); !strings.Contains(got, "no chance can be told") {
		t.Error(got)
	}
}

func TestNextIsWordedByWhatItChanges(t *testing.T) {
	now := assess.Standing{Outcome: assess.WithinLimits, Mass: 30, Riders: 1, Index: 4.1}
	with := func(change func(*assess.NextMeasurement)) string {
		n := assess.NextMeasurement{What: knowledge.LimbDiameterEffort, Part: "L1", Along: 2.4, Minutes: 8, Places: 1, Now: now, Likely: now, Better: now, Worse: now}
		change(&n)
		return Next(n)
	}
	for _, c := range []struct {
		want   string
		change func(*assess.NextMeasurement)
	}{
		{"tape limb L1 at 2.4 m (8 min): likely to lift the limit from one rider to 2 riders", func(n *assess.NextMeasurement) { n.Likely.Riders, n.Likely.Mass = 2, 60 }},
		{"tape limb L1 at 2.4 m (8 min): likely to lift the limit from 30 kg to 44 kg", func(n *assess.NextMeasurement) { n.Likely.Mass = 44 }},
		{"tape limb L1 at 2.4 m (8 min): likely to lead to: may be put up and load-tested for the use asked for, up to 60 kg", func(n *assess.NextMeasurement) { n.Likely.Outcome, n.Likely.Mass = assess.MayHang, 60 }},
		{"tape limb L1 at 2.4 m (8 min): if it comes out well: may be put up and load-tested for the use asked for, up to 30 kg", func(n *assess.NextMeasurement) { n.Better.Outcome = assess.MayHang }},
		{"tape limb L1 at 2.4 m (8 min): if it comes out badly: leave it: nothing is hung here", func(n *assess.NextMeasurement) { n.Worse.Outcome, n.Worse.Mass = assess.Leave, 0 }},
		{"tape limb L1 at 2.4 m (8 min): the index may come to lie between 3.90 and 4.30", func(n *assess.NextMeasurement) { n.Worse.Index, n.Better.Index = 3.9, 4.3 }},
		{"tape limb L1 at 3 places (8 min): settles one of the 2 things that are open", func(n *assess.NextMeasurement) { n.Places, n.Now.Open, n.Likely.Open = 3, 2, 1 }},
		{"look at the root plate (8 min): the index may come to lie between 4.10 and 4.10", func(n *assess.NextMeasurement) { n.What, n.Part = knowledge.LookEffort+"root_plate", "" }},
		{"look at the limb L2 (8 min): the index may come to lie between 4.10 and 4.10", func(n *assess.NextMeasurement) { n.What, n.Part = knowledge.LookEffort+"limb", "L2" }},
	} {
		if got := with(c.change); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	for what := range efforts {
		if got := with(func(n *assess.NextMeasurement) { n.What = what }); strings.Contains(got, "%!") || strings.HasPrefix(got, " ") {
			t.Errorf("%s: %q", what, got)
		}
	}
}
