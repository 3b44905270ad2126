package assess

import (
	"slices"
	"testing"

	"boughline/survey"
)

// lookOf is the look of the oak at a zone.
func lookOf(t *testing.T, tree *survey.Tree, zone string) *survey.Look {
	t.Helper()
	i := slices.IndexFunc(tree.Looks, func(l survey.Look) bool { return l.Zone == zone })
	if i < 0 {
		t.Fatalf("no look at %s", zone)
	}
	return &tree.Looks[i]
}

// bySign finds the reasons of a code that speak of a sign.
func bySign(h Hang, code Code, sign string) bool {
	return slices.ContainsFunc(h.Reasons, func(r Reason) bool {
		return r.Code == code && (r.SignID == sign || slices.Contains(r.SignIDs, sign))
	})
}

// What could not show on the day is completed by stand-ins that were looked for
// and clear, by what the surveyor looked at instead, or by a dated look; it is
// printed, and without any of them the hang is not decided.
func TestWhatCouldNotShow(t *testing.T) {
	heave := survey.Finding{ID: "new", Sign: "root_plate-06", SeenOn: day(t, "2026-05-09"), Closer: &survey.CloserLook{On: day(t, "2026-05-10"), Result: survey.CloserClear}}
	for _, c := range []struct {
		name  string
		spoil func(*survey.Survey, *survey.Tree)
		want  Outcome
		code  Code
		sign  string
	}{
		{"wind not stated: stood for", func(*survey.Survey, *survey.Tree) {}, MayHang, StoodFor, "stem-22"},
		{"limbs moved: nothing to stand for", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "stem").Air = "limbs move" }, MayHang, StoodFor, "root_plate-03"},
		{"a still day, no look at the root plate", func(_ *survey.Survey, tree *survey.Tree) {
			lookOf(t, tree, "root_plate").State = survey.LookNotDone
		}, Unfinished, SignNotVisible, "stem-22"},
		{"no look at the root plate, but limbs moved", func(_ *survey.Survey, tree *survey.Tree) {
			lookOf(t, tree, "root_plate").State, lookOf(t, tree, "stem").Air = survey.LookNotDone, "limbs move"
		}, Unfinished, LookMissing, ""},
		{"a stand-in that was found and settled", func(_ *survey.Survey, tree *survey.Tree) { tree.Findings = append(tree.Findings, heave) }, MayHang, StoodFor, "stem-22"},
		{"a stand-in that was not clear", func(_ *survey.Survey, tree *survey.Tree) {
			lookOf(t, tree, "stem").StandIns = []survey.StandIn{{Sign: "stem-22", What: "pegs beside the collar", Clear: false}}
		}, Unfinished, SignNotVisible, "stem-22"},
		{"something else looked at instead", func(_ *survey.Survey, tree *survey.Tree) {
			lookOf(t, tree, "stem").StandIns = []survey.StandIn{{Sign: "stem-22", What: "pegs beside the collar", Clear: true}}
		}, MayHang, StandIn, "stem-22"},
		{"leafless, no look in leaf", func(s *survey.Survey, _ *survey.Tree) { *s.Wind.InLeaf = false }, Unfinished, SignNotVisible, "crown-04"},
		{"leafless, buds looked at", func(s *survey.Survey, tree *survey.Tree) {
			*s.Wind.InLeaf = false
			lookOf(t, tree, "crown").StandIns = []survey.StandIn{{Sign: "crown-04", What: "buds by glass, a green scratch", Clear: true}}
		}, MayHang, StandIn, "crown-04"},
		{"leafless, a look in leaf within the year", func(s *survey.Survey, tree *survey.Tree) {
			*s.Wind.InLeaf = false
			tree.Looks = append(tree.Looks, survey.Look{Zone: "crown", State: survey.LookDone, On: day(t, "2025-08-01"), Leaves: "in leaf"})
		}, MayHang, StoodFor, "crown-04"},
		{"leafless, a look in leaf too long ago", func(s *survey.Survey, tree *survey.Tree) {
			*s.Wind.InLeaf = false
			tree.Looks = append(tree.Looks, survey.Look{Zone: "crown", State: survey.LookDone, On: day(t, "2025-05-01"), Leaves: "in leaf"})
		}, Unfinished, SignNotVisible, "crown-04"},
		{"leafless at the look, in leaf on the day", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "crown").Leaves = "bare" }, Unfinished, SignNotVisible, "crown-04"},
		{"a winter look says nothing of leaves it does not state", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "crown").On = day(t, "2026-01-20") }, Unfinished, SignNotVisible, "crown-04"},
		{"outside the season: stood for", func(*survey.Survey, *survey.Tree) {}, MayHang, StoodFor, "root_plate-09"},
		{"snow on the roots", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "root_plate").InTheWay = []string{"snow"} }, Unfinished, LookCovered, "root_plate-02"},
		{"snow on the roots, an earlier look", func(_ *survey.Survey, tree *survey.Tree) {
			lookOf(t, tree, "root_plate").InTheWay = []string{"snow"}
			tree.Looks = append(tree.Looks, survey.Look{Zone: "root_plate", State: survey.LookDone, On: day(t, "2025-10-04")})
		}, MayHang, StoodFor, "root_plate-02"},
		{"ivy on the stem", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "stem").InTheWay = []string{"ivy"} }, Unfinished, LookCovered, "stem-01"},
		{"litter says nothing of the crown", func(_ *survey.Survey, tree *survey.Tree) { lookOf(t, tree, "crown").InTheWay = []string{"litter"} }, MayHang, StoodFor, "crown-08"},
	} {
		s := oak(t)
		c.spoil(s, &s.Trees[0])
		h := assessFirst(t, s)
		if h.Outcome != c.want || !slices.ContainsFunc(h.Reasons, func(r Reason) bool { return r.Code == c.code }) || c.sign != "" && !bySign(h, c.code, c.sign) {
			t.Errorf("%s: %v, want %v with %s of %s:%s", c.name, h.Outcome, c.want, c.code, c.sign, codesOf(h))
		}
	}
}

// Toadstools stand in late summer and autumn: in October nothing has to stand
// for them, and south of the equator in April.
func TestTheSeasonTurnsWithTheHemisphere(t *testing.T) {
	for _, c := range []struct {
		day      string
		latitude float64
		stoodFor bool
	}{{"2026-10-10", 52, false}, {"2026-04-10", 52, true}, {"2026-04-10", -37, false}, {"2026-10-10", -37, true}} {
		s := oak(t)
		s.Place.Latitude, s.Day = c.latitude, day(t, c.day)
		for i := range s.Trees[0].Looks {
			s.Trees[0].Looks[i].On = s.Day
		}
		if got := bySign(assessFirst(t, s), StoodFor, "root_plate-09"); got != c.stoodFor {
			t.Errorf("%s at latitude %v: stood for is %v", c.day, c.latitude, got)
		}
	}
}

// Signs of one kind of tree are asked of that kind alone, and of a tree of
// which nobody knows the kind.
func TestSignsOfOneKindOfTree(t *testing.T) {
	for species, want := range map[string]bool{"Quercus robur": false, "Fraxinus excelsior": true, "Arbor ignota": true} {
		s := oak(t)
		s.Trees[0].Species, s.Trees[0].Group, *s.Wind.InLeaf = species, "broadleaf", false
		h := assessFirst(t, s)
		if got := bySign(h, SignNotVisible, "crown-05") || bySign(h, StoodFor, "crown-05"); got != want {
			t.Errorf("%s: dieback of ash could not show is %v, want %v", species, got, want)
		}
	}
}

// A pine bears its needles in winter too, a larch does not.
func TestEvergreensShowTheirLeavesAllYear(t *testing.T) {
	for species, hides := range map[string]bool{"Pinus sylvestris": false, "Larix decidua": true, "Quercus robur": true} {
		s := oak(t)
		s.Trees[0].Species, *s.Wind.InLeaf = species, false
		if got := bySign(assessFirst(t, s), SignNotVisible, "crown-04"); got != hides {
			t.Errorf("%s in winter: dead twigs could not show is %v", species, got)
		}
	}
}

// What signs mean together counts through the whole assessment, with what was
// measured, and names both.
func TestSignsTogether(t *testing.T) {
	wet := survey.Finding{ID: "wet", Sign: "ground-03", SeenOn: day(t, "2026-05-09")}
	lean := survey.Finding{ID: "lean", Sign: "stem-20", SeenOn: day(t, "2026-05-09")}
	shelter := survey.Finding{ID: "open", Sign: "surroundings-01", SeenOn: day(t, "2026-05-09")}
	for _, c := range []struct {
		name  string
		found []survey.Finding
		long  string
		want  Outcome
		rule  string
	}{
		{"standing wet", []survey.Finding{wet}, "6.5 m laser", AskArborist, ""},
		{"an old lean", []survey.Finding{lean}, "6.5 m laser", Unfinished, ""},
		{"both", []survey.Finding{wet, lean}, "6.5 m laser", Leave, "lean-with-wet-ground"},
		{"shelter gone, short limb", []survey.Finding{shelter}, "6.5 m laser", AskArborist, ""},
		{"shelter gone, long limb", []survey.Finding{shelter}, "8.5 m laser", Leave, "shelter-gone-with-long-limb"},
	} {
		s := threeLimbs(t)
		s.Trees[0].Findings, s.Trees[0].Members[1].Length = c.found, metres(t, c.long)
		h := assessFirst(t, s)
		i := slices.IndexFunc(h.Reasons, func(r Reason) bool { return r.Code == SignsTogether && !r.Remark })
		rule := ""
		if i >= 0 {
			rule = h.Reasons[i].RuleID
			if len(h.Reasons[i].Findings) != len(c.found) {
				t.Errorf("%s: names %v of %d findings", c.name, h.Reasons[i].Findings, len(c.found))
			}
		}
		if h.Outcome != c.want || rule != c.rule {
			t.Errorf("%s: %v by the rule %q, want %v by %q:%s", c.name, h.Outcome, rule, c.want, c.rule, codesOf(h))
		}
	}
}
