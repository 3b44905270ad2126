package assess

import (
	"bytes"
	"fmt"
	"slices"
	"testing"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// demoSite reads the demo.
func demoSite(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return s
}

// oak returns the demo with its first tree alone, whose swing may be hung.
func oak(t testing.TB) *survey.Survey {
	t.Helper()
	s := demoSite(t)
	s.Trees = s.Trees[:1]
	return s
}

func assessAll(t *testing.T, s *survey.Survey) []Hang {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	a, err := Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	return a.Hangs
}

func assessFirst(t *testing.T, s *survey.Survey) Hang {
	t.Helper()
	return assessAll(t, s)[0]
}

func metres(t *testing.T, text string) *survey.MeasuredLength {
	t.Helper()
	m, err := quantity.Parse[quantity.Length](text)
	if err != nil {
		t.Fatal(err)
	}
	return &m
}

// length is a length that was chosen, not measured.
func length(m float64) survey.ChosenLength { return survey.ChosenLength{Value: quantity.Length(m)} }

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

// spoiled is one thing that is wrong about the oak of the demo, which may be
// hung: the least grave outcome it may have, and the reason that must say so.
type spoiled struct {
	want  Outcome
	code  Code
	spoil func(*survey.Tree, *survey.Hang)
}

// spoilOneByOne spoils one thing at a time. None of it may leave the outcome as it was;
// each row was once too lenient or may become so.
func spoilOneByOne(t *testing.T, rows map[string]spoiled) {
	t.Helper()
	if o := assessFirst(t, oak(t)).Outcome; o != MayHang {
		t.Fatalf("the oak alone: %v, want hang", o)
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			s := oak(t)
			row.spoil(&s.Trees[0], &s.Trees[0].Hangs[0])
			h := assessFirst(t, s)
			if h.Outcome < row.want {
				t.Errorf("%v, want %v or worse", h.Outcome, row.want)
			}
			if !gives(h, row.code, row.want) {
				t.Errorf("no reason %s that makes it %v or worse:%s", row.code, row.want, codesOf(h))
			}
		})
	}
}

// gives reports whether a hang has a reason of this code and gravity.
func gives(h Hang, code Code, want Outcome) bool {
	return slices.ContainsFunc(h.Reasons, func(r Reason) bool { return r.Code == code && !r.Remark && r.Outcome >= want })
}

func codesOf(h Hang) (list string) {
	for _, r := range h.Reasons {
		list += fmt.Sprintf(" %s %v", r.Code, r.Outcome)
	}
	return list
}

// withFinding adds a finding.
func withFinding(f survey.Finding) func(*survey.Tree, *survey.Hang) {
	return func(tree *survey.Tree, _ *survey.Hang) {
		f.ID = "new"
		tree.Findings = append(tree.Findings, f)
	}
}

// withLimb adds a third limb that has been looked at.
func withLimb(m survey.Member) func(*survey.Tree, *survey.Hang) {
	return func(tree *survey.Tree, _ *survey.Hang) {
		m.ID, m.Parent = "L3", "stem"
		tree.Members = append(tree.Members, m)
		tree.Looks = append(tree.Looks, survey.Look{Zone: "limb", State: survey.LookDone})
	}
}

func TestWhatIsNotMeasuredIsNotTakenInFavour(t *testing.T) {
	spoilOneByOne(t, map[string]spoiled{
		"no rises_at":             {Unfinished, ShapeNotMeasured, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].RisesAt = nil }},
		"rises_at against height": {Unfinished, HeightsDisagree, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].RisesAt = metres(t, "9 m laser") }},
		"hang below the ground": {Unfinished, HeightsDisagree, func(tree *survey.Tree, h *survey.Hang) {
			tree.Members[1].Inclination = degreesOf(t, "-60 deg clinometer")
			h.At = *metres(t, "5.5 m laser")
		}},
		"parent of the union by eye":   {Unfinished, DiameterGuessed, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Parent = metres(t, "95 cm by eye") }},
		"parent of the union left out": {Unfinished, DiameterGuessed, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Parent = nil }},
		"measured at the base alone":   {Unfinished, DiameterGuessed, func(tree *survey.Tree, _ *survey.Hang) { tree.Members[1].Stations = tree.Members[1].Stations[:1] }},
		"no union":                     {Unfinished, UnionNotDescribed, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions = nil }},
		"no crown measured":            {Unfinished, CrownNotMeasured, func(tree *survey.Tree, _ *survey.Hang) { tree.Crown = nil }},
		"stem that is thin higher up": {WithinLimits, StemBending, func(tree *survey.Tree, _ *survey.Hang) {
			tree.Members[0].Stations = append(tree.Members[0].Stations, survey.Station{At: length(3), Girth: metres(t, "90 cm taped")})
		}},
		"stem that leans": {WithinLimits, StemBending, func(tree *survey.Tree, _ *survey.Hang) {
			tree.Members[0].Inclination, tree.Members[0].Azimuth = degreesOf(t, "35 deg clinometer"), degreesOf(t, "290 deg compass")
			tree.Members[0].Stations[0].Girth = metres(t, "170 cm taped")
		}},
		"gust of long ago, from hearsay": {WithinLimits, RootPlate, func(tree *survey.Tree, h *survey.Hang) {
			tree.Members[0].Stations[0].Girth = metres(t, "110 cm taped")
			tree.Stood[0].On = day(t, "1990-01-25")
		}},
	})
}

func TestLooksAndFindingsAreNotTakenInFavour(t *testing.T) {
	spoilOneByOne(t, map[string]spoiled{
		"look in the future":     {Unfinished, LookOld, func(tree *survey.Tree, _ *survey.Hang) { tree.Looks[0].On = day(t, "2150-01-01") }},
		"look of last century":   {Unfinished, LookOld, func(tree *survey.Tree, _ *survey.Hang) { tree.Looks[0].On = day(t, "1999-01-01") }},
		"look at some limbs":     {Unfinished, LookMissing, func(tree *survey.Tree, _ *survey.Hang) { tree.Looks[0].Members = []string{"L2"} }},
		"old closer look":        {Unfinished, SignFound, withFinding(survey.Finding{Sign: "limb-06", Member: "L1", At: metres(t, "1 m taped"), Closer: &survey.CloserLook{On: day(t, "1999-05-01"), Result: survey.CloserClear}})},
		"closer look to come":    {Unfinished, SignFound, withFinding(survey.Finding{Sign: "limb-06", Member: "L1", At: metres(t, "1 m taped"), Closer: &survey.CloserLook{On: day(t, "2150-05-01"), Result: survey.CloserClear}})},
		"to be cleared one day":  {Leave, SignFound, withFinding(survey.Finding{Sign: "crown-07", Member: "L1", At: metres(t, "3 m taped"), Cleared: &survey.Cleared{On: day(t, "2150-05-01")}})},
		"side roughly known":     {Leave, SignFound, withFinding(survey.Finding{Sign: "limb-04", Side: degreesOf(t, "300 deg ±90 deg compass"), Distance: metres(t, "4 m taped")})},
		"a spot beside the limb": {Leave, SignFound, withFinding(survey.Finding{Sign: "limb-01", Side: degreesOf(t, "110 deg compass"), Distance: metres(t, "1.5 m taped")})},
		"sign without a place":   {Leave, SignFound, withFinding(survey.Finding{Sign: "limb-04"})},
		"one spot of a way in": {Leave, SignFound, func(tree *survey.Tree, h *survey.Hang) {
			h.WayIn = h.WayIn[1:]
			tree.Findings = append(tree.Findings, survey.Finding{ID: "new", Sign: "crown-07", Side: degreesOf(t, "200 deg compass"), Distance: metres(t, "25 m taped")})
		}},
		"rot of the root plate filed as harmless": {Leave, FungusFound, withFinding(survey.Finding{Sign: "crown-16", Fungus: "Kretzschmaria deusta", Member: "L2", At: metres(t, "1 m taped")})},
		"bark turned in": {Leave, BarkIncluded, func(tree *survey.Tree, _ *survey.Hang) { tree.Unions[0].Bark = survey.BarkInclude }},
		"V not looked into": {Leave, UnionIsV, func(tree *survey.Tree, _ *survey.Hang) {
			tree.Unions[0].Form, tree.Unions[0].Bark = survey.FormV, survey.NotSeen
		}},
	})
}

func TestRoomAndGroundAreNotTakenInFavour(t *testing.T) {
	spoilOneByOne(t, map[string]spoiled{
		"a limb in the path of the seat": {WithinLimits, LimbInPath, withLimb(survey.Member{RisesAt: metres(t, "1.4 m laser"), Azimuth: degreesOf(t, "110 deg compass"),
			Inclination: degreesOf(t, "0 deg clinometer"), Length: metres(t, "9 m laser"), Tip: metres(t, "6 cm taped"), Stations: []survey.Station{{Girth: metres(t, "90 cm taped")}}})},
		"a limb that the rope rubs on": {WithinLimits, LimbInPath, withLimb(survey.Member{RisesAt: metres(t, "3.7 m laser"), Azimuth: degreesOf(t, "110 deg compass"),
			Inclination: degreesOf(t, "0 deg clinometer"), Length: metres(t, "4 m laser"), Tip: metres(t, "3 cm taped"), Stations: []survey.Station{{Girth: metres(t, "12 cm taped")}}})},
		"the limb itself comes down beyond the hang": {WithinLimits, LimbInPath, func(tree *survey.Tree, _ *survey.Hang) {
			m := &tree.Members[1]
			m.Path = []survey.Point{pathPoint(2.6, 0), pathPoint(3, 0), pathPoint(3.3, -3)}
			m.Azimuth, m.Inclination, m.Length = nil, nil, nil
		}},
		"height not measured":    {Unfinished, HeightAssumed, func(_ *survey.Tree, h *survey.Hang) { h.Height = nil }},
		"no waiting place":       {Unfinished, WaitingNotStated, func(_ *survey.Tree, h *survey.Hang) { h.Waiting, h.WayIn = nil, nil }},
		"ground heights guessed": {Unfinished, GroundGuessed, func(_ *survey.Tree, h *survey.Hang) { h.Ground.Along[0].Height = *metres(t, "0 m by eye") }},
		"ground heights in doubt": {WithinLimits, FallHeight, func(_ *survey.Tree, h *survey.Hang) {
			for i := range h.Ground.Along {
				h.Ground.Along[i].Height = *metres(t, "0 m ±2 m clinometer")
			}
		}},
		"ground that drops where they land": {Unfinished, GroundStep, func(_ *survey.Tree, h *survey.Hang) {
			h.Ground.Along = append(h.Ground.Along, survey.GroundPoint{At: length(3), Height: *metres(t, "0 m taped")}, survey.GroundPoint{At: length(3.1), Height: *metres(t, "-2.5 m taped")})
			h.Ground.Along[2].Height = *metres(t, "-2.5 m taped")
		}},
		"fill too shallow":  {WithinLimits, SurfaceRating, func(_ *survey.Tree, h *survey.Hang) { h.Ground.DepthLoose = metres(t, "2 cm taped") }},
		"fill not measured": {Unfinished, DepthNotMeasured, func(_ *survey.Tree, h *survey.Hang) { h.Ground.DepthLoose = nil }},
		"fill by eye":       {Unfinished, DepthNotMeasured, func(_ *survey.Tree, h *survey.Hang) { h.Ground.DepthLoose = metres(t, "45 cm by eye") }},
		"onto rock":         {Leave, SurfaceRating, func(_ *survey.Tree, h *survey.Hang) { h.Ground.Surface = "rock or paving" }},
		"a second swing": {WithinLimits, NotTogether, func(tree *survey.Tree, h *survey.Hang) {
			second := *h
			second.ID = "second"
			second.At = *metres(t, "2.4 m laser")
			tree.Hangs = append(tree.Hangs, second)
		}},
		"fence where they land": {WithinLimits, Obstructed, func(_ *survey.Tree, h *survey.Hang) {
			h.Obstacles = append(h.Obstacles, survey.Obstacle{What: "fence", Azimuth: *degreesOf(t, "170 deg compass"), Distance: *metres(t, "5 m taped"), Radius: *metres(t, "0.5 m taped")})
		}},
	})
}

// pathPoint is a corner of a limb that grows at a heading of 110 degrees, by how
// far out and how high it is.
func pathPoint(out, up float64) survey.Point {
	v := quantity.Heading(110*quantity.Degree, 0).Scale(out)
	return survey.Point{East: length(v.X), North: length(v.Y), Up: length(up)}
}

// TestTheSiteIsNotTakenInFavour: the wind and the riders.
func TestTheSiteIsNotTakenInFavour(t *testing.T) {
	bare := oak(t)
	bare.Wind.InLeaf = nil
	if h := assessFirst(t, bare); !gives(h, SignNotVisible, Unfinished) {
		t.Errorf("not said whether the crowns are in leaf:%s", codesOf(h))
	}
	reach := func(p string) quantity.Length {
		s := oak(t)
		s.Riders[0].Posture = p
		return quantity.Length(checkOf(t, assessFirst(t, s), FootClearance).Capacity)
	}
	least := reach("")
	for _, p := range []string{survey.Seated, survey.Straddled, survey.Standing} {
		if least > reach(p) {
			t.Errorf("posture left out leaves %.2f m under the feet, %s %.2f m", least, p, reach(p))
		}
	}
	if !(least < reach(survey.Standing)) {
		t.Error("a posture left out reaches no farther down than standing")
	}
}

// TestAnElbowIsAsSharpAsItTurns: corners set far apart must not make gentle an
// elbow that is two diameters long.
func TestAnElbowIsAsSharpAsItTurns(t *testing.T) {
	margin := func(corners ...survey.Point) float64 {
		s := oak(t)
		m := &s.Trees[0].Members[1]
		m.Azimuth, m.Inclination, m.Length = nil, nil, nil
		m.Path = corners
		return checkOf(t, assessFirst(t, s), LimbAcrossGrain).Margin
	}
	first, last := pathPoint(1.2, 0), pathPoint(8, 3)
	near := margin(pathPoint(0.4, 0), first, pathPoint(2, 0.35294), last)
	far := margin(first, last)
	if far > 1.02*near {
		t.Errorf("margin with the corners far apart %.3f, close together %.3f", far, near)
	}
}

// TestGearIsNotTakenInFavour spoils the chain of the oak's swing.
func TestGearIsNotTakenInFavour(t *testing.T) {
	for name, row := range map[string]struct {
		code  Code
		spoil func(*survey.Chain)
	}{
		"worn":               {GearCondition, func(c *survey.Chain) { c.Parts[1].Condition = "worn" }},
		"condition left out": {GearCondition, func(c *survey.Chain) { c.Parts[1].Condition = "" }},
		"no rope":            {ChainIncomplete, func(c *survey.Chain) { c.Parts = c.Parts[:2] }},
		"no seat":            {ChainIncomplete, func(c *survey.Chain) { c.Parts = c.Parts[:4] }},
		"nothing round the limb": {ChainIncomplete, func(c *survey.Chain) {
			c.Parts[0].Hitch = "straight"
		}},
		"unknown mark": {GearUnmarked, func(c *survey.Chain) { c.Parts[0].Mark.Kind = survey.MarkUnknown }},
		"retired all the same": {GearRetired, func(c *survey.Chain) {
			c.Parts[0].Condition, c.Parts[0].Despite = "retired", "none other at hand"
		}},
		"unknown mark all the same": {GearUnmarked, func(c *survey.Chain) {
			c.Parts[0].Mark.Kind, c.Parts[0].Despite = survey.MarkUnknown, "none other at hand"
		}},
		"retired": {GearRetired, func(c *survey.Chain) { c.Parts[0].Condition = "retired" }},
	} {
		s := oak(t)
		row.spoil(&s.Chains[0])
		if h := assessFirst(t, s); !gives(h, row.code, Unfinished) {
			t.Errorf("%s: no reason %s:%s", name, row.code, codesOf(h))
		}
	}
	steep := oak(t)
	steep.Trees[0].Members[1].Inclination = degreesOf(t, "25 deg clinometer")
	steep.Trees[0].Hangs[0].Height = metres(t, "5.6 m laser")
	steep.Chains[0].Parts[0].Hitch = "basket"
	if h := assessFirst(t, steep); !gives(h, AnchorCreeps, Unfinished) {
		t.Errorf("a sling that slides down its limb:%s", codesOf(h))
	}
}

// TestGearLeftOutIsTheWeakest: a sling that decides, with something unsaid.
func TestGearLeftOutIsTheWeakest(t *testing.T) {
	margin := func(part int, spoil func(*survey.Part)) float64 {
		s := oak(t)
		parts := s.Chains[0].Parts
		parts[part].Standard, parts[part].Mark = "", &survey.Mark{Strength: survey.ChosenForce{Value: 4000}, Kind: survey.MarkBreaking}
		spoil(&parts[part])
		return checkOf(t, assessFirst(t, s), GearLink).Margin
	}
	for name, row := range map[string]struct {
		part  int
		spoil func(*survey.Part)
	}{
		"ends left out":        {2, func(p *survey.Part) { p.Ends = nil }},
		"hitch left out":       {0, func(p *survey.Part) { p.Hitch = "" }},
		"choke angle left out": {0, func(p *survey.Part) { p.ChokeAngle = nil }},
	} {
		whole := margin(row.part, func(*survey.Part) {})
		if m := margin(row.part, row.spoil); !(m < whole) {
			t.Errorf("%s: margin %.3f, with it %.3f", name, m, whole)
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
	all := demoSite(t)
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
	for name, place := range map[string][2]string{
		"in the path of the seat":        {"14.3 m taped", "28 m taped"},
		"where let-go flights come down": {"12.7 m taped", "23.5 m taped"},
	} {
		s := beside("", "")
		s.Trees[1].East, s.Trees[1].North = metres(t, place[0]), metres(t, place[1])
		if h := assessFirst(t, s); !gives(h, LimbInPath, WithinLimits) {
			t.Errorf("a stem %s:%s", name, codesOf(h))
		}
	}
	s := beside("", "")
	s.Trees[1].Hangs = []survey.Hang{{ID: "beside", Member: "L1", At: *metres(t, "2 m laser"), Line: length(3), Riders: "small", Chain: "day-chain"}}
	if h := assessFirst(t, s); !gives(h, NotTogether, WithinLimits) {
		t.Errorf("a swing in the neighbour:%s", codesOf(h))
	}
}
