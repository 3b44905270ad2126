package register_test

import (
	"reflect"
	"testing"

	"boughline/register"

	"pgregory.net/rapid"
)

// Two copies of a register go their own ways and are put together: no use, no
// examination and no retirement of either is lost, and taking one in twice
// changes nothing more.
func TestMergedLosesNothing(t *testing.T) {
	start := demoRegister(t)
	rapid.Check(t, func(t *rapid.T) {
		mine, theirs := start, start
		for range rapid.IntRange(0, 5).Draw(t, "mine") {
			mine = step(t, mine)
		}
		for range rapid.IntRange(0, 5).Draw(t, "theirs") {
			theirs = step(t, theirs)
		}
		both, err := mine.Merged(theirs)
		if err != nil {
			t.Fatal(err)
		}
		for _, id := range ids {
			a, _ := mine.Item(id)
			b, _ := theirs.Item(id)
			c, _ := both.Item(id)
			if (a.Retired != nil || b.Retired != nil) && c.Retired == nil {
				t.Fatalf("%s came back", id)
			}
			if len(c.Examinations) < max(len(a.Examinations), len(b.Examinations)) {
				t.Fatalf("%s lost an examination", id)
			}
			if both.DaysUsed(id) < max(mine.DaysUsed(id), theirs.DaysUsed(id)) {
				t.Fatalf("%s lost a use", id)
			}
			if both.Cycles(id) < max(mine.Cycles(id), theirs.Cycles(id)) {
				t.Fatalf("%s lost rides", id)
			}
		}
		if again, err := both.Merged(theirs); err != nil || !reflect.DeepEqual(again, both) {
			t.Fatalf("taken in twice: %v", err)
		}
		if problems := both.Validate(); len(problems) > 0 {
			t.Fatal(problems)
		}
	})
}

// Two like uses on one day are two, here and in the file.
func TestMergedKeepsWhatStandsTwice(t *testing.T) {
	r := demoRegister(t)
	twice := r
	for range 2 {
		var err error
		if twice, err = twice.Used(register.Use{Date: day("2026-05-16"), Items: []string{"S1"}, Cycles: 30}); err != nil {
			t.Fatal(err)
		}
		if twice, err = twice.Examined("S1", register.Examination{On: day("2026-05-17"), By: "A", Found: register.Fit}); err != nil {
			t.Fatal(err)
		}
	}
	for _, from := range []register.Register{r, twice} {
		both, err := from.Merged(twice)
		if err != nil || both.Cycles("S1") != r.Cycles("S1")+60 {
			t.Errorf("%d rides, %v", both.Cycles("S1"), err)
		}
		was, _ := twice.Item("S1")
		if is, _ := both.Item("S1"); len(is.Examinations) != len(was.Examinations) {
			t.Errorf("%d examinations", len(is.Examinations))
		}
	}
}

func TestMergedRefusesOneIDForTwoThings(t *testing.T) {
	r := demoRegister(t)
	other := register.Register{Version: register.Version, Owner: "b", Items: []register.Item{{ID: "S1", Name: "swivel", Kind: register.Swivel, Material: register.Metal}}}
	if _, err := r.Merged(other); err == nil {
		t.Error("a sling became a swivel")
	}
}

func TestEditedKeepsWhatHappened(t *testing.T) {
	r := demoRegister(t)
	old, _ := r.Item("R0")
	e, err := r.Edited("R0", register.Item{ID: "R9", Name: "old line", Kind: register.Rope, Material: register.Textile})
	if err != nil {
		t.Fatal(err)
	}
	i, err := e.Item("R9")
	if err != nil || i.Retired == nil || *i.Retired != *old.Retired || e.DaysUsed("R9") != r.DaysUsed("R0") || e.DaysUsed("R0") != 0 || len(e.Validate()) > 0 {
		t.Errorf("%v, %d days, %v", i.Retired, e.DaysUsed("R9"), err)
	}
	if _, err := r.Edited("R0", register.Item{ID: "S1"}); err == nil {
		t.Error("two items of one id")
	}
	if _, err := r.Added(register.Item{ID: "S1"}); err == nil {
		t.Error("two items of one id")
	}
}
