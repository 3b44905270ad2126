package notebook_test

import (
	"errors"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/notebook"
	"boughline/outing"
	"boughline/register"
)

// Gear with something against it gets no card; when the swing is down, its gear
// has been used.
func TestGearOfAnOuting(t *testing.T) {
	n, _, _ := clocked(t)
	if err := n.ImportGear(t.Context(), demo.Register(), notebook.Edit{}); err != nil {
		t.Fatal(err)
	}
	change := func(why string, to func(register.Register) (register.Register, error)) {
		t.Helper()
		if err := n.ChangeGear(t.Context(), notebook.Edit{What: why}, "", to); err != nil {
			t.Fatal(err)
		}
	}
	day := issue(n).Day()
	before, err := n.Gear(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	change("unfit", func(r register.Register) (register.Register, error) {
		return r.Examined("R1", register.Examination{On: day, By: "B", Found: register.Unfit})
	})
	_, err = n.IssueCard(t.Context(), site, "o1", notebook.Edit{}, issue(n))
	var no *outing.NoCard
	if !errors.As(err, &no) || no.Cause != outing.GearDue || !strings.Contains(no.Detail, "R1") {
		t.Fatalf("a card on a line that was found unfit: %v", err)
	}
	change("fit again", func(r register.Register) (register.Register, error) {
		return r.Examined("R1", register.Examination{On: day, By: "B", Found: register.Fit})
	})
	issued(t, n, "o2")
	add(t, n, "o2", riding()...)
	add(t, n, "o2", outing.Event{Kind: outing.Rode, Riders: 1, AtMost: 30}, outing.Event{Kind: outing.Rode, Riders: 1, AtMost: 30},
		outing.Event{Kind: outing.TakenDown, Bark: outing.BarkAsBefore, GearBack: true, Wet: true})
	after, err := n.Gear(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if len(after.Uses) != len(before.Uses)+1 {
		t.Fatalf("%d uses, before %d", len(after.Uses), len(before.Uses))
	}
	use := after.Uses[len(after.Uses)-1]
	if use.Outing != "o2" || !use.Wet || use.Cycles != 2 || use.Date != day || after.DaysUsed("R1") != before.DaysUsed("R1")+1 {
		t.Errorf("%+v", use)
	}
}
