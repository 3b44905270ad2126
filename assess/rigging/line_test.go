package rigging

import (
	"math"
	"testing"

	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

func exact(v float64) span { return span{v, v, v} }

// Worked by hand: the limb 4.50 m up, the seat wanted at 0.60 m, the limb
// sagging 0.02 m and a line of EA 30 kN under 600 N: (4.50 - 0.60 - 0.02)/(1 + 0.02) =
// 3.803922 m from limb to seat, of which 0.90 m are other parts: 2.903922 m, and the seat hangs
// at 4.50 - 0.02 - 3.803922 x 1.02 = 0.60 m again. A height known within 0.10 m alone
// makes a band of 0.10/1.02 to either side.
func TestLineByHand(t *testing.T) {
	in := lineInputs{height: exact(4.5), sag: exact(0.02), axial: exact(30000), others: exact(0.9), resting: 600, seat: 0.6}
	got := in.finished()
	near(t, "finished", got.value, 2.903922, 1e-6)
	near(t, "band", got.high-got.low, 0, 1e-12)
	in.height = span{4.5, 4.4, 4.6}
	got = in.finished()
	near(t, "longer", got.high-got.value, 0.1/1.02, 1e-12)
	near(t, "shorter", got.value-got.low, 0.1/1.02, 1e-12)
	in.others = span{0.9, 0.7, 1.1} // independent of the height
	got = in.finished()
	near(t, "both", got.high-got.value, math.Hypot(0.1/1.02, 0.2), 1e-12)
}

// allStated gives every part of the demo's chain the lengths of the hand-worked
// example: a sling of 1.50 m choked, 0.10, 0.08 and 0.35 m, a line of 11 mm with a bowline and
// a figure-eight.
func allStated(s *survey.Survey) {
	length := func(m quantity.Length) *survey.MeasuredLength {
		return &survey.MeasuredLength{Value: m, SdStated: true, How: quantity.Taped}
	}
	parts := s.Chains[0].Parts
	for i, m := range map[int]quantity.Length{0: 1.5, 1: 0.1, 3: 0.08, 4: 0.35} {
		parts[i].Length = length(m)
	}
	parts[2].Thickness, parts[2].Ends = length(0.011), []string{"bowline", "figure-eight end knot"}
}

// With every length stated what is cut is, by hand: the line from limb to seat
// less 1.50 m - 2 pi R of sling and 0.53 m of the rest, the knots (22 + 36, at most 30 + 46
// thicknesses of 11 mm) and two tails of 12: the adjustable end takes up the band.
func TestLineOfAHangByHand(t *testing.T) {
	seat := quantity.Length(0.6)
	r := rigged(t, "oak-swing", Options{Seat: &seat}, allStated)
	l, radius := r.Line, float64(r.Bark.Terms[1].Value)
	if len(l.Assumed) > 0 || !l.Wished {
		t.Fatalf("assumed %v", l.Assumed)
	}
	rest := 9.80665 * (47.84 + 3.14805) / 33000
	whole := (4.5 - 0.6 - float64(l.Sag)) / (1 + rest)
	near(t, "whole", float64(l.Whole), whole, 1e-9)
	near(t, "stretch", float64(l.Stretch), whole*rest, 1e-9)
	near(t, "finished", float64(l.Finished), whole-(1.5-2*math.Pi*radius)-0.53, 1e-9)
	near(t, "knots", float64(l.Knots), 58*0.011, 1e-12)
	near(t, "tails", float64(l.Tails), 24*0.011, 1e-12)
	near(t, "cut", float64(l.Cut), math.Ceil(100*(float64(l.FinishedHigh)+76*0.011+24*0.011))/100, 1e-9)
	near(t, "adjust", float64(l.Adjust), float64(l.Cut)-24*0.011-float64(l.FinishedLow)-44*0.011, 0.0101)
}

// Left out, the seat is where the line of the hang puts it.
func TestTheLineOfTheHangIsTheDefault(t *testing.T) {
	near(t, "whole", float64(rigged(t, "oak-swing", Options{}, nil).Line.Whole), 3.4, 1e-9)
}

// A line choked round the limb takes the way round it too, and no sling.
func TestALineRoundTheLimb(t *testing.T) {
	r := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		allStated(s)
		s.Chains[0].Parts = s.Chains[0].Parts[2:]
		s.Chains[0].Parts[0].Hitch, s.Chains[0].Parts[0].Ends = "choker", []string{"running bowline", "bowline"}
	})
	near(t, "knots", float64(r.Line.Knots), (24+22)*0.011+2*math.Pi*r.Bark.Terms[1].Value, 1e-9)
	near(t, "finished", float64(r.Line.Finished), 3.4-0.43, 1e-9)
}

// Too short a sling has no drop, and a seat wanted above the limb no line.
func TestLineFaults(t *testing.T) {
	r := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		s.Chains[0].Parts[0].Length = &survey.MeasuredLength{Value: 0.4, How: quantity.Taped}
	})
	if r.Line.Fault == "" {
		t.Error("a sling of 0.4 m goes round a limb")
	}
	seat := quantity.Length(4.4)
	if rigged(t, "oak-swing", Options{Seat: &seat}, nil).Line.Fault == "" {
		t.Error("a line is left where there is no room")
	}
	if rigged(t, "oak-swing", Options{}, func(s *survey.Survey) { s.Chains[0].Parts[2].Kind = "ring" }).Line.Fault == "" {
		t.Error("a chain without a rope has a line")
	}
}

// Cutting covers the band whatever is in doubt: a higher seat never asks for more
// line, more doubt never for less.
func TestDoubtNeverShortensTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := lineInputs{
			height:  exact(rapid.Float64Range(3, 9).Draw(t, "height")),
			sag:     exact(rapid.Float64Range(0, 0.2).Draw(t, "sag")),
			axial:   exact(rapid.Float64Range(1e4, 6e4).Draw(t, "axial")),
			others:  exact(rapid.Float64Range(0, 1).Draw(t, "others")),
			resting: rapid.Float64Range(200, 2000).Draw(t, "resting"), seat: rapid.Float64Range(0.3, 1).Draw(t, "seat"),
		}
		sure := in.finished()
		doubt := rapid.Float64Range(0.01, 0.3).Draw(t, "doubt")
		in.height.low, in.height.high = in.height.value-doubt, in.height.value+doubt
		in.others.low, in.others.high = in.others.value-doubt, in.others.value+doubt
		if less := in.finished(); !(less.high > sure.high && less.low < sure.low) {
			t.Fatalf("%+v in doubt, %+v sure", less, sure)
		}
		in.seat += 0.1
		if higher := in.finished(); higher.value >= sure.value {
			t.Fatalf("%v for a higher seat, %v before", higher.value, sure.value)
		}
	})
}
