package assess

import (
	"math"
	"strings"
	"testing"

	"boughline/engine/gear"
	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// twoOaks is the first oak of the demo twice, the second one 6 m to the east,
// with one line between their stems and gear that bears it.
func twoOaks(t testing.TB, kind string) *survey.Survey {
	t.Helper()
	s := oak(t)
	s.Lines, s.Hazards = nil, nil
	a := s.Trees[0]
	a.Hangs, a.LoadTests, a.Findings = nil, nil, nil
	b := a
	b.ID, b.Name = "second", "the second oak"
	east := *a.East
	east.Value += 6
	b.East = &east
	s.Trees = []survey.Tree{a, b}
	fixed := func(m float64) survey.MeasuredLength {
		return survey.MeasuredLength{Value: quantity.Length(m), SdStated: true, How: quantity.Taped}
	}
	exact := func(m float64) *survey.MeasuredLength { l := fixed(m); return &l }
	mass := survey.MeasuredMass{Value: 40, SdStated: true, How: quantity.Weighed}
	none := survey.MeasuredMass{Value: 0, SdStated: true, How: quantity.Weighed}
	s.Riders = []survey.Riders{{ID: "r", Count: 1, Each: &mass, Seat: &none}}
	strong := &survey.Mark{Strength: survey.ChosenForce{Value: 80e3}, Kind: survey.MarkBreaking}
	s.Chains = []survey.Chain{{ID: "c", Parts: []survey.Part{
		{Name: "strap", Kind: "sling", Material: "textile", Mark: strong, Hitch: "girth", Width: exact(0.06), Condition: "good"},
		{Name: "line", Kind: "rope", Material: "textile", Mark: strong, Ends: []string{"eye splice"}, AxialStiffness: &survey.ChosenForce{Value: 40e3}, Condition: "good"},
		{Name: "body", Kind: "seat", Material: "textile", Mark: strong, Condition: "good"},
	}}}
	end := func(tree string) survey.LineEnd {
		return survey.LineEnd{Tree: tree, Member: "stem", At: fixed(1.3), Anchor: "strap"}
	}
	l := survey.Line{ID: "l", Kind: kind, Ends: []survey.LineEnd{end(a.ID), end(b.ID)}, Span: exact(5.1), Sag: exact(0.5), Riders: "r", Chain: "c", Sleeve: "pad",
		Ground: &survey.Ground{Surface: "turf kept", Along: []survey.GroundPoint{{At: survey.ChosenLength{}, Height: fixed(0)}, {At: survey.ChosenLength{Value: 5.2}, Height: fixed(0)}}}}
	switch kind {
	case survey.HammockLine:
		l.Body = &survey.ChosenLength{Value: 2.6}
	case survey.ClimbingLine:
		l.Ends, l.Span, l.Sag, l.Ground = l.Ends[:1], nil, nil, nil
		l.Ends[0].Member, l.Ends[0].At, l.Fixed = "L1", fixed(0.8), survey.FixedDoubled
	}
	s.Lines = []survey.Line{l}
	return s
}

func assessLine(t testing.TB, s *survey.Survey) Line {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	list, err := AssessLines(s, k)
	if err != nil {
		t.Fatal(err)
	}
	return list[0]
}

func lineCheck(t testing.TB, l Line, code Code) Check {
	t.Helper()
	for _, c := range l.Checks {
		if c.Code == code {
			return c
		}
	}
	t.Fatalf("no check %s of %q: %v", code, l.ID, l.Reasons)
	return Check{}
}

func term(t testing.TB, c Check, symbol string) float64 {
	t.Helper()
	for _, term := range c.Terms {
		if term.Symbol == symbol {
			return term.Value
		}
	}
	t.Fatalf("no term %s of %s", symbol, c.Code)
	return 0
}

func within(t testing.TB, what string, got, want, share float64) {
	t.Helper()
	if math.Abs(got-want) > share*math.Abs(want) {
		t.Errorf("%s: got %.6g, want %.6g", what, got, want)
	}
}

// Half the weight at each end of the body: V = W/2, H = W/2 (s - b)/(2 f)
// (triangle of forces).
func TestHammockPulls(t *testing.T) {
	s := twoOaks(t, survey.HammockLine)
	l := assessLine(t, s)
	weight := 40 * quantity.StandardGravity
	within(t, "down", float64(l.Ends[0].Down), weight/2, 1e-6)
	within(t, "level", float64(l.Ends[0].Level), weight/2*(5.1-2.6)/2/0.5, 1e-6)
	within(t, "let go", float64(l.Ends[0].Sudden), 2*float64(l.Ends[0].AtRest), 1e-6)
	within(t, "other end", float64(l.Ends[1].AtRest), float64(l.Ends[0].AtRest), 1e-6)
	if l.Outcome > WithinLimits {
		t.Errorf("outcome %v: %v", l.Outcome, l.Reasons[0])
	}
}

// A light line is a triangle of forces with the rider in the middle, H = P s/(4 f)
// but for the line's own weight; the same line by its catenaries to 1e-6.
func TestTraversePulls(t *testing.T) {
	s := twoOaks(t, survey.TraverseLine)
	l := assessLine(t, s)
	weight := quantity.Force(40 * quantity.StandardGravity)
	within(t, "level", float64(l.Ends[0].Level), float64(weight)*5.1/(4*0.5), 0.02)
	two, err := gear.TraverseLine{Right: gear.Spot{X: 5.1}, Load: gear.Spot{X: 2.55, Y: -0.5}, Weight: 1, Point: weight}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "level, by two catenaries", float64(l.Ends[0].Level), float64(two.Horizontal), 1e-3)
	within(t, "sag", float64(l.Shape.Sag), 0.5, 1e-6)
	if f := l.Shape.SuddenFactor; f < 2 || f > 4 {
		t.Errorf("a load let go counts %v times; expected 2 to 4", f)
	}
}

// The moment on the root plate is the level pull at its height, factored at rest
// or let go onto the line, and the gust.
func TestRootPlateUnderASidewaysPull(t *testing.T) {
	l := assessLine(t, twoOaks(t, survey.HammockLine))
	c := lineCheck(t, l, RootPlate)
	pull := math.Max(1.35, 2) * float64(l.Ends[0].Level)
	within(t, "moment", c.Demand-1.35*term(t, c, "M_w"), pull*1.3, 1e-6)
}

// Bending at the foot of the stem, without wind, own weight relieved or not.
func TestStemBendsUnderASidewaysPull(t *testing.T) {
	s := twoOaks(t, survey.TraverseLine)
	weak := assessLine(t, s)
	s.Lines[0].Ends[0].At.Value = 2.6
	s.Lines[0].Ends[1].At.Value = 2.6
	high := assessLine(t, s)
	if lineCheck(t, high, RootPlate).Margin >= lineCheck(t, weak, RootPlate).Margin {
		t.Error("a higher anchor leaves more in hand at the roots")
	}
}

// 2 T cos(q/2) for the redirect, both legs side by side for a line fixed at the
// base, the weight alone for one that is doubled.
func TestClimbingPulls(t *testing.T) {
	weight := 40 * quantity.StandardGravity
	s := twoOaks(t, survey.ClimbingLine)
	within(t, "doubled", float64(assessLine(t, s).Ends[0].AtRest), weight, 1e-6)
	s.Lines[0].Fixed = survey.FixedAtBase
	within(t, "at the base", float64(assessLine(t, s).Ends[0].AtRest), 2*weight, 1e-6)
	s.Lines[0].Fixed = ""
	within(t, "not stated", float64(assessLine(t, s).Ends[0].AtRest), 2*weight, 1e-6)
	s.Lines[0].Fixed = survey.FixedAtLimb
	for _, degrees := range []quantity.Angle{20, 90, 150} {
		angle := survey.MeasuredAngle{Value: degrees * quantity.Degree, SdStated: true, How: quantity.Clinometer}
		s.Lines[0].Redirect = &survey.Redirect{Member: "L2", At: s.Lines[0].Ends[0].At, Angle: &angle, Anchor: "strap"}
		l := assessLine(t, s)
		want, err := gear.RedirectPull(quantity.Force(weight), degrees*quantity.Degree)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "redirect", float64(l.Ends[1].AtRest), float64(want), 1e-6)
		within(t, "anchor", float64(l.Ends[0].AtRest), weight, 1e-6)
		if l.Outcome == MayHang {
			t.Error("a climbing line has no limits")
		}
	}
}

// Heavier riders never leave more in hand, less sag never pulls less at rest, and
// the line looks the same from its other end.
func TestMarginsOfLinesFall(t *testing.T) {
	at := func(mass, sag float64, turned bool) Line {
		s := twoOaks(t, survey.TraverseLine)
		l := &s.Lines[0]
		s.Riders[0].Each.Value, l.Sag.Value = quantity.Mass(mass), quantity.Length(sag)
		if turned {
			l.Ends[0], l.Ends[1] = l.Ends[1], l.Ends[0]
		}
		return assessLine(t, s)
	}
	for _, sag := range []float64{0.2, 0.45, 0.9} {
		last := at(15, sag, false)
		for mass := 25.0; mass < 100; mass *= 1.7 {
			now := at(mass, sag, false)
			for _, code := range []Code{RootPlate, StemBending, GearLink} {
				if a, b := lineCheck(t, last, code).Margin, lineCheck(t, now, code).Margin; b > a {
					t.Errorf("%v kg on %v m of sag: %s leaves %v in hand, lighter riders %v", mass, sag, code, b, a)
				}
			}
			if tighter := at(mass, sag/1.2, false); tighter.Ends[0].AtRest <= now.Ends[0].AtRest {
				t.Errorf("%v kg: a tighter line pulls with %v N, %v N before", mass, tighter.Ends[0].AtRest, now.Ends[0].AtRest)
			}
			last = now
		}
		turned := at(60, sag, true)
		within(t, "from the other end", lineCheck(t, turned, RootPlate).Margin, lineCheck(t, at(60, sag, false), RootPlate).Margin, 1e-6)
	}
}

func BenchmarkTraverse(b *testing.B) {
	s := twoOaks(b, survey.TraverseLine)
	for b.Loop() {
		assessLine(b, s)
	}
}

// What is missing or out of the norm, and what follows.
func TestLinesAreNotLenient(t *testing.T) {
	for name, c := range map[string]struct {
		outcome Outcome
		code    Code
		do      func(*survey.Survey, *survey.Line)
	}{
		"no ground": {Unfinished, GroundNotSurveyed, func(_ *survey.Survey, l *survey.Line) { l.Ground = nil }},
		"short ground": {Unfinished, GroundTooShort, func(_ *survey.Survey, l *survey.Line) {
			l.Ground = &survey.Ground{Surface: "turf kept", Along: l.Ground.Along[:1]}
		}},
		"no width":       {Unfinished, StrapNotMeasured, func(s *survey.Survey, _ *survey.Line) { s.Chains[0].Parts[0].Width = nil }},
		"a narrow strap": {Leave, StrapWidth, func(s *survey.Survey, _ *survey.Line) { s.Chains[0].Parts[0].Width = metres(t, "25 mm taped") }},
		"a thin stem": {Leave, StemAtAnchor, func(s *survey.Survey, _ *survey.Line) {
			s.Trees[1].Members = append([]survey.Member{}, s.Trees[1].Members...)
			s.Trees[1].Members[0].Stations = []survey.Station{{Girth: metres(t, "90 cm taped")}}
		}},
		"high": {Leave, FallHeight, func(_ *survey.Survey, l *survey.Line) {
			l.Ends[0].Height, l.Ends[1].Height = metres(t, "3.4 m taped"), metres(t, "3.4 m taped")
		}},
		"on the ground": {Leave, LineClearance, func(_ *survey.Survey, l *survey.Line) {
			l.Ends[0].Height, l.Ends[1].Height = metres(t, "0.4 m taped"), metres(t, "0.4 m taped")
		}},
		"weak gear": {Leave, GearLink, func(s *survey.Survey, _ *survey.Line) {
			s.Chains[0].Parts[1].Mark = &survey.Mark{Strength: survey.ChosenForce{Value: 2e3}, Kind: survey.MarkBreaking}
		}},
		"another span":     {Unfinished, SpanDisagrees, func(_ *survey.Survey, l *survey.Line) { l.Span = metres(t, "7.5 m taped") }},
		"nothing is known": {Unfinished, RidersNotKnown, func(s *survey.Survey, _ *survey.Line) { s.Riders[0].Each = nil }},
		"sliding": {Unfinished, AnchorCreeps, func(s *survey.Survey, l *survey.Line) {
			s.Chains[0].Parts[0].Hitch = "basket"
			l.Sag = metres(t, "1.1 m taped")
		}},
		"no look":       {Unfinished, LookMissing, func(s *survey.Survey, _ *survey.Line) { s.Trees[1].Looks = nil }},
		"another on it": {WithinLimits, NotTogether, func(s *survey.Survey, l *survey.Line) { two := *l; two.ID = "k"; s.Lines = append(s.Lines, two) }},
		"no such tree":  {Unfinished, NotComputed, func(s *survey.Survey, _ *survey.Line) { s.Trees = s.Trees[:1] }},
		"a body too long": {Unfinished, NotComputed, func(_ *survey.Survey, l *survey.Line) {
			l.Kind, l.Body = survey.HammockLine, &survey.ChosenLength{Value: 5.4}
		}},
		"limb not measured": {Unfinished, HeightAssumed, func(_ *survey.Survey, l *survey.Line) {
			l.Ends = append([]survey.LineEnd{}, l.Ends...)
			l.Ends[0].Member = "L1"
			l.Ends[0].At = *metres(t, "1 m taped")
		}},
	} {
		t.Run(name, func(t *testing.T) {
			s := twoOaks(t, survey.TraverseLine)
			s.Chains[0].Parts = append([]survey.Part{}, s.Chains[0].Parts...)
			c.do(s, &s.Lines[0])
			l := assessLine(t, s)
			found := false
			for _, r := range l.Reasons {
				found = found || r.Code == c.code && r.Outcome == c.outcome
			}
			if !found || l.Outcome < c.outcome {
				t.Errorf("outcome %v without %s: %v", l.Outcome, c.code, reasonsOf(l.Reasons))
			}
		})
	}
}

func reasonsOf(list []Reason) string {
	var words []string
	for _, r := range list {
		if !r.Remark {
			words = append(words, string(r.Code)+"="+r.Outcome.String()+" "+r.Text)
		}
	}
	return strings.Join(words, ", ")
}

// A finding on either tree bars the line, as it bars a hang there.
func TestFindingsOnBothTreesCount(t *testing.T) {
	for i := range 2 {
		s := twoOaks(t, survey.HammockLine)
		before := assessLine(t, s).Outcome
		s.Trees[i].Findings = append([]survey.Finding{{ID: "heave", Sign: "root-01"}}, s.Trees[i].Findings...)
		k, err := knowledge.Load()
		if err != nil {
			t.Fatal(err)
		}
		for _, sign := range k.Signs() {
			if sign.Urgency == signs.Stop && string(sign.Zone) == "root_plate" {
				s.Trees[i].Findings[0].Sign = sign.ID
			}
		}
		if after := assessLine(t, s).Outcome; after != Leave || before == Leave {
			t.Errorf("tree %d: %v before, %v with a lifted root plate", i, before, after)
		}
	}
}
