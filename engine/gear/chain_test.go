package gear

import (
	"math"
	"strings"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// Share kept by the choke angle: web sling sheets of two makers after ASME
// B30.9. Choker and basket ratings: web sling tables of the USA, from memory.
// Demands: textile 10 after BS 8437 and steel 5, from memory; 5 on the pull of
// textile is a house value. Knots 0.6: Saez et al. 2024, Symmetry 16:167, found
// a mean of 0.6182 for the best of five. Girth: from memory, the low end.
var factors = Factors{
	TextileBreaking:     Demand{OnResting: 10, OnPeak: 5},
	TextileWorkingLimit: Demand{OnResting: 10.0 / 7, OnPeak: 1},
	MetalBreaking:       Demand{OnPeak: 5},
	MetalWorkingLimit:   Demand{OnPeak: 1.25},
	UntestedKnot:        0.6,
	Choker:              0.75,
	Girth:               0.5,
	ChokeAngles: []ChokeStep{
		{120 * quantity.Degree, 1}, {90 * quantity.Degree, 0.87}, {60 * quantity.Degree, 0.74},
		{30 * quantity.Degree, 0.62}, {0, 0.49},
	},
}

func check(t *testing.T, resting, peak quantity.Force, links ...Link) Result {
	t.Helper()
	got, err := Chain(links).Check(resting, peak, factors)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// One rider of 69.5 kg with a seat of 5.5 kg at 80 degrees: 735.5 N at rest,
// 3 - 2 cos 80 = 2.6527 times that at the lowest point. All figures by hand.
func TestCheckOfAnEverydayChain(t *testing.T) {
	resting := quantity.Mass(75).Weight()
	peak := 2.6527 * resting
	pull, err := LegPull(2, 60*quantity.Degree)
	if err != nil {
		t.Fatal(err)
	}
	got := check(t, resting, peak,
		Link{Name: "sling", Mark: Mark{Breaking, 22000}, Hitch: Basket, Parts: 2, PartPull: pull},
		Link{Name: "connector", Material: Metal, Mark: Mark{Breaking, 20000}},
		Link{Name: "rope", Mark: Mark{Breaking, 22000}, Knots: []Knot{{Name: "figure-eight", Share: 0.66}, {Name: "bowline", Share: 0.55}}},
		Link{Name: "swivel", Material: Metal, Mark: Mark{WorkingLimit, 5000}},
	)
	want := []struct {
		margin float64
		rule   Rule
	}{
		{22000 / (13.2635 * 735.49875 * 0.5773503), PeakRule},
		{20000 / (13.2635 * 735.49875), PeakRule},
		{22000 * 0.55 / (13.2635 * 735.49875), PeakRule},
		{5000 / (1.25 * 2.6527 * 735.49875), PeakRule},
	}
	for i, w := range want {
		near(t, got.Links[i].Name, got.Links[i].Bearing.Margin, w.margin, 1e-6)
		if got.Links[i].Bearing.Rule != w.rule {
			t.Errorf("%s: governed by %s", got.Links[i].Name, got.Links[i].Bearing.Rule)
		}
	}
	if got.Weakest != 2 {
		t.Errorf("weakest is link %d, want the rope", got.Weakest)
	}
	if margin, known := got.Margin(); !known || margin != got.Links[2].Bearing.Margin {
		t.Errorf("margin %v, known %v", margin, known)
	}
}

// At a small amplitude the pull is little more than the weight and the 10 on
// the resting weight governs textile.
func TestRestingWeightGovernsSmallSwings(t *testing.T) {
	got := check(t, 1000, 1268, Link{Name: "rope", Mark: Mark{Breaking, 22000}}, Link{Name: "sling", Mark: Mark{WorkingLimit, 2000}})
	for i, want := range []float64{2.2, 1.4} {
		near(t, got.Links[i].Name, got.Links[i].Bearing.Margin, want, 1e-12)
		if got.Links[i].Bearing.Rule != RestingRule {
			t.Errorf("%s: governed by %s", got.Links[i].Name, got.Links[i].Bearing.Rule)
		}
	}
}

// A working limit that its maker got by dividing by 7 or more (textile, EN
// 1492) or 4 (steel, EN 818; both from memory) never passes where the breaking
// strength behind it would fail.
func TestWorkingLimitIsHeldNoLessThanItsBreakingStrength(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		maker := map[Material]float64{Textile: 7, Metal: 4}
		m := Material(rapid.IntRange(0, 1).Draw(t, "material"))
		limit := quantity.Force(rapid.Float64Range(500, 40000).Draw(t, "limit"))
		resting := quantity.Force(rapid.Float64Range(200, 3000).Draw(t, "resting"))
		peak := resting * quantity.Force(rapid.Float64Range(1, 3).Draw(t, "peak"))
		got, err := Chain{
			{Name: "by limit", Material: m, Mark: Mark{WorkingLimit, limit}},
			{Name: "by breaking strength", Material: m, Mark: Mark{Breaking, limit * quantity.Force(maker[m])}},
		}.Check(resting, peak, factors)
		if err != nil {
			t.Fatal(err)
		}
		if got.Links[0].Bearing.Margin > got.Links[1].Bearing.Margin*(1+1e-12) {
			t.Fatalf("limit passes by %v, breaking strength by %v", got.Links[0].Bearing.Margin, got.Links[1].Bearing.Margin)
		}
	})
}

func TestUnknownMarkGivesNoNumber(t *testing.T) {
	got := check(t, 700, 1900, Link{Name: "old sling", Mark: Mark{Value: 50000}}, Link{Name: "rope", Mark: Mark{Breaking, 22000}})
	if got.Links[0].Bearing != nil {
		t.Errorf("an unknown mark bears %+v", got.Links[0].Bearing)
	}
	if _, known := got.Margin(); known || len(got.Unknown) != 1 || got.Unknown[0] != 0 || got.Weakest != 1 {
		t.Errorf("unknown %v, weakest %d, known %v", got.Unknown, got.Weakest, known)
	}
	if _, known := check(t, 700, 1900).Margin(); known {
		t.Error("an empty chain has a margin")
	}
}

// Choker 0.75 at 60 degrees 0.74, girth 0.5, and a bend of D/d = 4: 0.75.
func TestReductionsMultiply(t *testing.T) {
	got := check(t, 0, 1000,
		Link{Name: "choker", Mark: Mark{Breaking, 20000}, Hitch: Choker, ChokeAngle: 75 * quantity.Degree},
		Link{Name: "girth", Mark: Mark{Breaking, 20000}, Hitch: Girth, BendOver: 0.04, Thickness: 0.01},
		Link{Name: "sewn", Mark: Mark{Breaking, 20000}, Knots: []Knot{{Name: "sewn eye", Share: 0.9, Tested: true}}, Wear: []Reduction{{"a summer of sun", 0.7}}},
		Link{Name: "knotted", Mark: Mark{Breaking, 20000}, Knots: []Knot{{Name: "clove hitch", Share: 0.75}}},
	)
	for i, want := range []float64{20000 * 0.75 * 0.74, 20000 * 0.5 * 0.75, 20000 * 0.9 * 0.7, 20000 * 0.6} {
		near(t, got.Links[i].Name, float64(got.Links[i].Bearing.Strength), want, 1e-6)
	}
}

// A heavier rider, a further reduction, or one more link never raise the
// margin of a chain.
func TestMarginNeverRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		link := func() Link {
			return Link{
				Name: "part", Material: Material(rapid.IntRange(0, 1).Draw(t, "material")),
				Mark:  Mark{MarkKind(rapid.IntRange(1, 2).Draw(t, "kind")), quantity.Force(rapid.Float64Range(1000, 40000).Draw(t, "mark"))},
				Knots: []Knot{{"knot", quantity.Proportion(rapid.Float64Range(0.3, 1).Draw(t, "share")), rapid.Bool().Draw(t, "tested")}},
			}
		}
		chain := Chain{link(), link()}
		resting := quantity.Force(rapid.Float64Range(100, 2000).Draw(t, "resting"))
		peak := resting * quantity.Force(rapid.Float64Range(1, 3).Draw(t, "peak"))
		margin := func(c Chain, scale quantity.Force) float64 {
			got, err := c.Check(resting*scale, peak*scale, factors)
			if err != nil {
				t.Fatal(err)
			}
			m, _ := got.Margin()
			return m
		}
		before := margin(chain, 1)
		heavier := quantity.Force(rapid.Float64Range(1, 2).Draw(t, "heavier"))
		worn := Chain{chain[0], chain[1]}
		worn[1].Wear = []Reduction{{"wear", quantity.Proportion(rapid.Float64Range(0.1, 1).Draw(t, "wear"))}}
		if math.Abs(margin(chain, heavier)*float64(heavier)-before) > 1e-9*before {
			t.Fatal("the margin does not fall as the load rises")
		}
		if margin(worn, 1) > before || margin(append(worn, link()), 1) > margin(worn, 1) {
			t.Fatal("wear or one more link raised the margin")
		}
	})
}

func TestCheckErrorsNameTheField(t *testing.T) {
	mark := Mark{Breaking, 20000}
	for field, link := range map[string]Link{
		"mark.value":            {Mark: Mark{Kind: Breaking}},
		"part_pull":             {Mark: mark, Parts: 2, PartPull: 0.4},
		"parts":                 {Mark: mark, Hitch: Basket},
		"choke_angle":           {Mark: mark, Hitch: Choker, ChokeAngle: 4},
		"bend_over, thickness":  {Mark: mark, BendOver: 0.1},
		"share of sun":          {Mark: mark, Wear: []Reduction{{Cause: "sun"}}},
		"share of half hitches": {Mark: mark, Knots: []Knot{{Name: "half hitches"}}},
	} {
		_, err := Chain{link}.Check(700, 1900, factors)
		if err == nil || !strings.Contains(err.Error(), ": "+field+":") {
			t.Errorf("%s: got error %v", field, err)
		}
	}
	if _, err := (Chain{}).Check(700, 0, factors); err == nil {
		t.Error("a pull of 0 has a margin")
	}
}
