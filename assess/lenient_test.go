package assess

import (
	"bytes"
	"testing"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// oak returns the demo with its first tree alone, whose swing may be hung.
func oak(t *testing.T) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	s.Trees = s.Trees[:1]
	return s
}

func assessFirst(t *testing.T, s *survey.Survey) Hang {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	a, err := Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	return a.Hangs[0]
}

func metres(t *testing.T, text string) *survey.MeasuredLength {
	t.Helper()
	m, err := quantity.Parse[quantity.Length](text)
	if err != nil {
		t.Fatal(err)
	}
	return &m
}

func degreesOf(t *testing.T, text string) *survey.MeasuredAngle {
	t.Helper()
	m, err := quantity.Parse[quantity.Angle](text)
	if err != nil {
		t.Fatal(err)
	}
	return &m
}

func day(t *testing.T, text string) survey.Date {
	t.Helper()
	d, err := survey.ParseDate(text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// TestNothingIsTakenInFavour takes the oak of the demo, which may be hung, and
// spoils one thing at a time. None of it may leave the outcome as it was; each
// row was once too lenient or may become so.
func TestNothingIsTakenInFavour(t *testing.T) {
	if o := assessFirst(t, oak(t)).Outcome; o != MayHang {
		t.Fatalf("the oak alone: %v, want hang", o)
	}
	finding := func(f survey.Finding) func(*survey.Tree, *survey.Hang) {
		return func(tree *survey.Tree, _ *survey.Hang) {
			f.ID = "new"
			tree.Findings = append(tree.Findings, f)
		}
	}
	for name, row := range map[string]struct {
		want  Outcome // at best
		spoil func(*survey.Tree, *survey.Hang)
	}{
		"a limb in the path of the seat": {WithinLimits, func(tree *survey.Tree, _ *survey.Hang) {
			tree.Members = append(tree.Members, survey.Member{ID: "L3", Parent: "stem", RisesAt: metres(t, "1.4 m laser"), Azimuth: degreesOf(t, "110 deg compass"),
				Inclination: degreesOf(t, "0 deg clinometer"), Length: metres(t, "9 m laser"), Tip: metres(t, "6 cm taped"),
				Stations: []survey.Station{{Girth: metres(t, "90 cm taped")}}})
			tree.Looks = append(tree.Looks, survey.Look{Zone: "limb", State: survey.LookDone})
		}},
		"no rises_at":             {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].RisesAt = nil }},
		"rises_at against height": {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].RisesAt = metres(t, "9 m laser") }},
		"hang below the ground": {Unfinished, func(tree *survey.Tree, h *survey.Hang) {
			tree.Members[1].Inclination = degreesOf(t, "-60 deg clinometer")
			h.At = *metres(t, "5.5 m laser")
		}},
		"height not measured": {Unfinished, func(_ *survey.Tree, h *survey.Hang) { h.Height = nil }},
		"no waiting place":    {Unfinished, func(_ *survey.Tree, h *survey.Hang) { h.Waiting, h.WayIn = nil, nil }},
		"one spot of a way in": {Leave, func(tree *survey.Tree, h *survey.Hang) {
			h.WayIn = h.WayIn[1:]
			tree.Findings = append(tree.Findings, survey.Finding{ID: "new", Sign: "crown-07", Side: degreesOf(t, "200 deg compass"), Distance: metres(t, "25 m taped")})
		}},
		"parent of the union by eye":   {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Parent = metres(t, "95 cm by eye") }},
		"parent of the union left out": {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Parent = nil }},
		"measured at the base alone":   {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].Stations = tree.Members[1].Stations[:1] }},
		"look in the future":           {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Looks[0].On = day(t, "2150-01-01") }},
		"look of last century":         {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Looks[0].On = day(t, "1999-01-01") }},
		"old closer look":              {Unfinished, finding(survey.Finding{Sign: "limb-06", Member: "L1", At: metres(t, "1 m taped"), Closer: &survey.CloserLook{On: day(t, "1999-05-01"), Result: survey.CloserClear}})},
		"closer look to come":          {Unfinished, finding(survey.Finding{Sign: "limb-06", Member: "L1", At: metres(t, "1 m taped"), Closer: &survey.CloserLook{On: day(t, "2150-05-01"), Result: survey.CloserClear}})},
		"to be cleared one day":        {Leave, finding(survey.Finding{Sign: "crown-07", Member: "L1", At: metres(t, "3 m taped"), Cleared: &survey.Cleared{On: day(t, "2150-05-01")}})},
		"side roughly known":           {Leave, finding(survey.Finding{Sign: "limb-04", Side: degreesOf(t, "300 deg ±90 deg compass"), Distance: metres(t, "4 m taped")})},
		"ground heights guessed":       {Unfinished, func(_ *survey.Tree, h *survey.Hang) { h.Ground.Along[0].Height = *metres(t, "0 m by eye") }},
		"ground heights in doubt": {WithinLimits, func(_ *survey.Tree, h *survey.Hang) {
			for i := range h.Ground.Along {
				h.Ground.Along[i].Height = *metres(t, "0 m ±2 m clinometer")
			}
		}},
		"fill too shallow":  {WithinLimits, func(_ *survey.Tree, h *survey.Hang) { h.Ground.DepthLoose = metres(t, "2 cm taped") }},
		"fill not measured": {Unfinished, func(_ *survey.Tree, h *survey.Hang) { h.Ground.DepthLoose = nil }},
		"onto rock":         {Leave, func(_ *survey.Tree, h *survey.Hang) { h.Ground.Surface = "rock or paving" }},
		"a second swing": {WithinLimits, func(tree *survey.Tree, h *survey.Hang) {
			second := *h
			second.ID = "second"
			second.At = *metres(t, "2.4 m laser")
			tree.Hangs = append(tree.Hangs, second)
		}},
		"fence where they land": {WithinLimits, func(_ *survey.Tree, h *survey.Hang) {
			h.Obstacles = append(h.Obstacles, survey.Obstacle{What: "fence", Azimuth: *degreesOf(t, "170 deg compass"), Distance: *metres(t, "5 m taped"), Radius: *metres(t, "0.5 m taped")})
		}},
		"rot of the root plate filed as harmless": {Leave, finding(survey.Finding{Sign: "crown-16", Fungus: "Kretzschmaria deusta", Member: "L2", At: metres(t, "1 m taped")})},
		"bark turned in": {Leave, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Bark = survey.BarkInclude }},
		"V not looked into": {Leave, func(tree *survey.Tree, _ *survey.Hang) {
			tree.Unions[0].Form, tree.Unions[0].Bark = survey.FormV, survey.NotSeen
		}},
		"no union":             {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions = nil }},
		"no crown measured":    {Unfinished, func(tree *survey.Tree, _ *survey.Hang) { tree.Crown = nil }},
		"sign without a place": {Leave, finding(survey.Finding{Sign: "limb-04"})},
	} {
		t.Run(name, func(t *testing.T) {
			s := oak(t)
			row.spoil(&s.Trees[0], &s.Trees[0].Hangs[0])
			h := assessFirst(t, s)
			if h.Outcome < row.want {
				t.Errorf("%v, want %v or worse", h.Outcome, row.want)
			}
		})
	}
}

// TestGearIsNotTakenInFavour spoils the chain of the oak's swing.
func TestGearIsNotTakenInFavour(t *testing.T) {
	for name, spoil := range map[string]func(*survey.Chain){
		"worn":               func(c *survey.Chain) { c.Parts[1].Condition = "worn" },
		"condition left out": func(c *survey.Chain) { c.Parts[1].Condition = "" },
		"no rope":            func(c *survey.Chain) { c.Parts = c.Parts[:2] },
		"unknown mark":       func(c *survey.Chain) { c.Parts[0].Mark.Kind = survey.MarkUnknown },
		"retired":            func(c *survey.Chain) { c.Parts[0].Condition = "retired" },
	} {
		s := oak(t)
		spoil(&s.Chains[0])
		if h := assessFirst(t, s); h.Outcome < Unfinished {
			t.Errorf("%s: %v, want unfinished or worse", name, h.Outcome)
		}
	}
	steep := oak(t)
	steep.Trees[0].Members[1].Inclination = degreesOf(t, "25 deg clinometer")
	steep.Trees[0].Hangs[0].Height = metres(t, "5.6 m laser")
	steep.Chains[0].Parts[0].Hitch = "basket"
	if h := assessFirst(t, steep); h.Outcome < Unfinished {
		t.Errorf("a sling that slides down its limb: %v, want unfinished or worse", h.Outcome)
	}
	margin := func(spoil func(*survey.Chain)) float64 {
		s := oak(t)
		spoil(&s.Chains[0])
		return checkOf(t, assessFirst(t, s), GearLink).Margin
	}
	whole := margin(func(*survey.Chain) {})
	for name, spoil := range map[string]func(*survey.Chain){
		"ends left out":        func(c *survey.Chain) { c.Parts[2].Ends = nil },
		"hitch left out":       func(c *survey.Chain) { c.Parts[0].Hitch = "" },
		"choke angle left out": func(c *survey.Chain) { c.Parts[0].ChokeAngle = nil },
	} {
		if m := margin(spoil); m > whole {
			t.Errorf("%s: margin %.2f, with it %.2f", name, m, whole)
		}
	}
}

// TestASiteMayStopEarlierThanTheHouseButNotLater: a storm as a stop rule.
func TestASiteMayStopEarlierThanTheHouseButNotLater(t *testing.T) {
	gust := func(force int) quantity.Speed {
		s := oak(t)
		s.Wind.StopBeaufort = &force
		return assessFirst(t, s).Asked.Gust
	}
	if house := gust(5); gust(9) != house || !(gust(4) < house) {
		t.Errorf("gusts asked for: Beaufort 4 %v, 5 %v, 9 %v m/s", gust(4), house, gust(9))
	}
}

// TestNeighboursCount: a tree beside the swing, and what hangs in it.
func TestNeighboursCount(t *testing.T) {
	all, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	beside := func(sign string, member string) *survey.Survey {
		s := oak(t)
		ash := all.Trees[4]
		ash.Hangs, ash.Findings = nil, nil
		ash.East, ash.North = metres(t, "13 m taped"), metres(t, "23 m taped")
		if sign != "" {
			ash.Findings = []survey.Finding{{ID: "new", Sign: sign, Member: member}}
		}
		s.Trees = append(s.Trees, ash)
		return s
	}
	if h := assessFirst(t, beside("stem-21", "stem")); h.Outcome != Leave {
		t.Errorf("a neighbour with a fresh lean: %v, want leave", h.Outcome)
	}
	if h := assessFirst(t, beside("crown-07", "L2")); h.Outcome != Leave {
		t.Errorf("a hung-up branch in a neighbour: %v, want leave", h.Outcome)
	}
	s := beside("", "")
	s.Trees[1].East, s.Trees[1].North = metres(t, "14.3 m taped"), metres(t, "28 m taped")
	if h := assessFirst(t, s); h.Outcome < WithinLimits {
		t.Errorf("a stem in the path of the seat: %v", h.Outcome)
	}
}
