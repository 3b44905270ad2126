package notebook_test

import (
	"slices"
	"testing"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"

	"pgregory.net/rapid"
)

// looker looks on a day of its own with the signs of the tables.
func looker(t *testing.T) notebook.Looker {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	day, err := survey.ParseDate("2026-05-16")
	if err != nil {
		t.Fatal(err)
	}
	return notebook.Looker{On: day, By: "R. Tolland", Signs: k.Signs()}
}

// plain is a tree of a stem and one limb that nobody looked at.
func plain() *notebook.Tree {
	t := &notebook.Tree{}
	t.Members = []survey.Member{{ID: "stem"}, {ID: "L1", Parent: "stem"}}
	return t
}

func lookOf(t *notebook.Tree, zone string) survey.Look {
	i := slices.IndexFunc(t.Looks, func(l survey.Look) bool { return l.Zone == zone })
	if i < 0 {
		return survey.Look{}
	}
	return t.Looks[i]
}

func TestAZoneIsLookedAtWhenEverySignHasItsAnswer(t *testing.T) {
	l, tr := looker(t), plain()
	var zone []signs.Sign
	for _, s := range l.Signs {
		if s.Zone == signs.Limb {
			zone = append(zone, s)
		}
	}
	for i, s := range zone {
		if lookOf(tr, "limb").State == survey.LookDone {
			t.Fatalf("looked at after %d of %d answers", i, len(zone))
		}
		answer := []notebook.Answer{notebook.NotSeen, notebook.CouldNotSee}[i%2]
		if err := l.Answer(tr, "limb", s.ID, answer); err != nil {
			t.Fatal(err)
		}
	}
	look := lookOf(tr, "limb")
	if look.State != survey.LookDone || look.On != l.On || look.By != l.By || !slices.Equal(look.Members, []string{"L1"}) || len(look.NotVisible) != len(zone)/2 {
		t.Errorf("the look is %+v", look)
	}
}

func TestASignSeenIsAFinding(t *testing.T) {
	l, tr := looker(t), plain()
	for range 2 { // a second press changes nothing
		if err := l.Answer(tr, "crown", "crown-06", notebook.Seen); err != nil {
			t.Fatal(err)
		}
	}
	if len(tr.Findings) != 1 || tr.Findings[0].Sign != "crown-06" || tr.Findings[0].SeenOn != l.On {
		t.Fatalf("findings %+v", tr.Findings)
	}
	l.Rest(tr, "crown")
	if len(tr.Findings) != 1 || tr.Answers["crown"]["crown-06"] != notebook.Seen {
		t.Errorf("answering the rest took the finding: %+v", tr.Findings)
	}
	if err := l.Answer(tr, "crown", "crown-06", notebook.NotSeen); err != nil || len(tr.Findings) != 0 {
		t.Errorf("findings %+v, %v", tr.Findings, err)
	}
}

func TestNothingSeenAtAllIsNoLook(t *testing.T) {
	l, tr := looker(t), plain()
	for _, s := range l.Signs {
		if s.Zone == signs.Crown {
			if err := l.Answer(tr, "crown", s.ID, notebook.CouldNotSee); err != nil {
				t.Fatal(err)
			}
		}
	}
	if look := lookOf(tr, "crown"); look.State != survey.LookBlocked {
		t.Errorf("the look is %+v", look)
	}
}

func TestOneAnswerDoesNotRenewAnOldLook(t *testing.T) {
	l, tr := looker(t), plain()
	old, err := survey.ParseDate("2025-01-02")
	if err != nil {
		t.Fatal(err)
	}
	tr.Looks = []survey.Look{{Zone: "crown", State: survey.LookDone, On: old, NotVisible: []string{"crown-01"}}}
	if err := l.Answer(tr, "crown", "crown-02", notebook.Seen); err != nil {
		t.Fatal(err)
	}
	if look := lookOf(tr, "crown"); look.On != old || !slices.Equal(look.NotVisible, []string{"crown-01"}) {
		t.Errorf("the look is %+v", look)
	}
	l.Afresh(tr, "crown")
	if look := lookOf(tr, "crown"); look.State != survey.LookNotDone || len(tr.Findings) != 1 {
		t.Errorf("the look is %+v, findings %v", look, tr.Findings)
	}
}

func TestALimbAddedLaterIsNotLookedAt(t *testing.T) {
	for _, members := range [][]string{nil, {"L1"}} {
		tr := plain()
		tr.Looks = []survey.Look{{Zone: "limb", State: survey.LookDone, Members: members}, {Zone: "crown", State: survey.LookDone}}
		notebook.NewLimb(tr)
		tr.Members = append(tr.Members, survey.Member{ID: "L2", Parent: "stem"})
		if missing := notebook.Limbless(tr, "limb"); !slices.Equal(missing, []string{"L2"}) {
			t.Errorf("members %v: missing %v", members, missing)
		}
		notebook.LimbGone(tr, "L1")
		if look := lookOf(tr, "limb"); look.State != survey.LookNotDone {
			t.Errorf("a look at a limb that is gone covers all others: %+v", look)
		}
		if lookOf(tr, "crown").State != survey.LookDone {
			t.Error("the crown has to be looked at again")
		}
	}
}

func TestAnswersThatAreNone(t *testing.T) {
	l, tr := looker(t), plain()
	if l.Answer(tr, "crown", "stem-01", notebook.Seen) == nil || l.Answer(tr, "crown", "crown-01", "perhaps") == nil || len(tr.Findings) > 0 {
		t.Error("an answer to nothing was taken")
	}
}

// However answers come and go, a look that is done has an answer to each sign,
// a finding for each one seen, and hides none that could not be seen.
func TestLooksNeverSayMoreThanTheirAnswers(t *testing.T) {
	l := looker(t)
	rapid.Check(t, func(r *rapid.T) {
		tr := plain()
		for range rapid.IntRange(1, 60).Draw(r, "presses") {
			s := rapid.SampledFrom(l.Signs).Draw(r, "sign")
			switch rapid.IntRange(0, 9).Draw(r, "press") {
			case 0:
				l.Rest(tr, string(s.Zone))
			case 1:
				l.Afresh(tr, string(s.Zone))
			default:
				a := rapid.SampledFrom([]notebook.Answer{notebook.Seen, notebook.NotSeen, notebook.CouldNotSee}).Draw(r, "answer")
				if err := l.Answer(tr, string(s.Zone), s.ID, a); err != nil {
					r.Fatal(err)
				}
			}
		}
		for _, s := range l.Signs {
			look, answer := lookOf(tr, string(s.Zone)), tr.Answers[string(s.Zone)][s.ID]
			found := slices.ContainsFunc(tr.Findings, func(f survey.Finding) bool { return f.Sign == s.ID })
			if found != (answer == notebook.Seen) {
				r.Fatalf("%s: answer %q, finding %v", s.ID, answer, found)
			}
			if look.State != survey.LookDone {
				continue
			}
			if answer == "" || slices.Contains(look.NotVisible, s.ID) != (answer == notebook.CouldNotSee) {
				r.Fatalf("%s: answer %q in the look %+v", s.ID, answer, look)
			}
		}
	})
}
