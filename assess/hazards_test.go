package assess

import (
	"slices"
	"testing"

	"boughline/knowledge"
	"boughline/survey"
)

// Hazards of the site count by how near they are to people or to the limb in
// use, and without a place for every hang.
func TestHazardsOfTheSite(t *testing.T) {
	side, far := degreesOf(t, "200 deg compass"), degreesOf(t, "20 deg compass")
	for _, c := range []struct {
		name   string
		hazard survey.Hazard
		want   Outcome
		code   Code
	}{
		{"wire over the waiting place", survey.Hazard{Hazard: "power-line", Tree: "T1", Side: side, Distance: metres(t, "12 m taped")}, Leave, HazardFound},
		{"wire some way off", survey.Hazard{Hazard: "power-line", Tree: "T1", Side: far, Distance: metres(t, "35 m taped")}, MayHang, HazardFound},
		{"wire far off", survey.Hazard{Hazard: "power-line", Tree: "T1", Side: far, Distance: metres(t, "80 m taped")}, MayHang, ""},
		{"wire far off, by hearsay", survey.Hazard{Hazard: "power-line", Tree: "T1", Side: far, Distance: metres(t, "45 m ±22 m by eye")}, Leave, HazardFound},
		{"wire somewhere", survey.Hazard{Hazard: "power-line"}, Leave, HazardFound},
		{"wire at this tree", survey.Hazard{Hazard: "power-line", Tree: "T1"}, Leave, HazardFound},
		{"wire by the grid of the site", survey.Hazard{Hazard: "power-line", East: metres(t, "12 m taped"), North: metres(t, "38 m taped")}, Leave, HazardFound},
		{"the same, far", survey.Hazard{Hazard: "power-line", East: metres(t, "300 m taped"), North: metres(t, "38 m taped")}, MayHang, ""},
		{"glass where they land", survey.Hazard{Hazard: "sharp-litter", Tree: "T1", Side: degreesOf(t, "110 deg compass"), Distance: metres(t, "3 m taped")}, Leave, HazardFound},
		{"glass that was cleared", survey.Hazard{Hazard: "sharp-litter", Cleared: &survey.Cleared{On: day(t, "2026-05-10"), How: "by hand"}}, MayHang, HazardFound},
		{"glass to be cleared one day", survey.Hazard{Hazard: "sharp-litter", Cleared: &survey.Cleared{On: day(t, "2150-05-10"), How: "by hand"}}, Leave, HazardFound},
		{"a sett close by", survey.Hazard{Hazard: "badger-sett", Tree: "T1", Side: side, Distance: metres(t, "9 m taped")}, AskArborist, HazardFound},
		{"a drey to be named", survey.Hazard{Hazard: "squirrel-or-dormouse", Tree: "T1"}, Unfinished, HazardFound},
		{"nettles", survey.Hazard{Hazard: "thorns-and-nettles", Tree: "T1"}, WithinLimits, HazardFound},
		{"ticks", survey.Hazard{Hazard: "ticks"}, MayHang, HazardFound},
	} {
		s := oak(t)
		c.hazard.ID = "H"
		s.Hazards = []survey.Hazard{c.hazard}
		h := assessFirst(t, s)
		told := slices.ContainsFunc(h.Reasons, func(r Reason) bool { return r.Code == HazardFound })
		if h.Outcome != c.want || told != (c.code == HazardFound) {
			t.Errorf("%s: %v, want %v with %s:%s", c.name, h.Outcome, c.want, c.code, codesOf(h))
		}
	}
}

// A hazard at a tree whose place nobody has taken is to be placed.
func TestAHazardAtATreeThatIsNotPlaced(t *testing.T) {
	s := demoSite(t)
	s.Trees[1].East = nil
	s.Hazards = []survey.Hazard{{ID: "H", Hazard: "wasps-hornets-bees", Tree: "T2"}, {ID: "I", Hazard: "ticks", Tree: "T2"}}
	hangs := assessAll(t, s)
	if !gives(hangs[0], HazardNotPlaced, Unfinished) || !gives(hangs[1], HazardFound, Leave) {
		t.Errorf("at the first tree%s\nat the second%s", codesOf(hangs[0]), codesOf(hangs[1]))
	}
}

func TestAHazardThatNoTableHolds(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	s := oak(t)
	s.Hazards = []survey.Hazard{{ID: "H", Hazard: "dragon"}}
	if list := Problems(s, k); len(list) != 1 || list[0].Path != "hazards[0].hazard" {
		t.Errorf("problems %v", list)
	}
}
