package notebook_test

import (
	"errors"
	"slices"
	"sync"
	"testing"
	"time"

	"boughline/assess"
	"boughline/notebook"
	"boughline/outing"
	"boughline/quantity"
	"boughline/store/storetest"
	"boughline/survey"
)

// clocked is a notebook with the demo site and a clock that can be moved.
func clocked(t *testing.T) (*notebook.Notebook, *storetest.Memory, *time.Time) {
	t.Helper()
	n, m := open(t)
	now := time.Date(2026, 5, 16, 10, 0, 0, 0, time.UTC)
	return notebook.New(m, n.Knowledge(), func() time.Time { return now }), m, &now
}

func issue(n *notebook.Notebook) outing.Issue {
	return outing.Issue{Tree: "T1", Hang: "oak-swing", At: n.Now(), Until: n.Now().Add(7 * time.Hour), Signed: "Ann"}
}

func issued(t *testing.T, n *notebook.Notebook, id string) {
	t.Helper()
	if _, err := n.IssueCard(t.Context(), site, id, notebook.Edit{Form: "issue " + id}, issue(n)); err != nil {
		t.Fatal(err)
	}
}

func add(t *testing.T, n *notebook.Notebook, id string, events ...outing.Event) *outing.Outing {
	t.Helper()
	var o *outing.Outing
	for _, e := range events {
		var err error
		if o, err = n.AddEvent(t.Context(), site, id, notebook.Edit{}, e); err != nil {
			t.Fatal(err)
		}
	}
	return o
}

// riding are the events up to riding, with a load test as the plan wants it.
func riding() []outing.Event {
	var list []outing.Event
	for _, c := range outing.PutUp() {
		list = append(list, outing.Event{Kind: outing.Checked, Check: c})
	}
	test := &survey.LoadTest{
		Set:   &survey.MeasuredLength{How: quantity.Taped},
		Steps: []survey.LoadStep{{Mass: &survey.MeasuredMass{Value: 215, How: quantity.Weighed}, Sag: &survey.MeasuredLength{Value: 0.004, How: quantity.Taped}}},
	}
	return append(list, outing.Event{Kind: outing.LoadTest, Test: test}, outing.Event{Kind: outing.LookedOver}, outing.Event{Kind: outing.Started})
}

// Every event is a record of its own, and another notebook on the same store
// works out the same.
func TestAnOutingOutlivesTheProgram(t *testing.T) {
	n, m, now := clocked(t)
	issued(t, n, "o1")
	add(t, n, "o1", riding()...)
	*now = now.Add(time.Hour)
	o := add(t, n, "o1", outing.Event{Kind: outing.Rode, Riders: 1, AtMost: 30})
	again := notebook.New(m, n.Knowledge(), n.Now)
	read, err := again.Outing(t.Context(), site, "o1")
	if err != nil || read.Stage != outing.InUse || !slices.Equal(read.Turns, o.Turns) || len(read.Log.Events) != len(o.Log.Events) {
		t.Fatalf("%v: %+v", err, read)
	}
	up, err := again.StillUp(t.Context())
	if err != nil || len(up) != 1 || up[0].Hang != "oak-swing" {
		t.Errorf("still up: %+v, %v", up, err)
	}
	if tests := tree(t, again, "T1").LoadTests; len(tests) != 1 || tests[0].Hang != "oak-swing" || tests[0].On.String() != "2026-05-16" {
		t.Errorf("the tree's load tests %+v", tests)
	}
	add(t, again, "o1", outing.Event{Kind: outing.Stopped, Reason: outing.End}, outing.Event{Kind: outing.TakenDown, Bark: outing.BarkAsBefore, GearBack: true})
	if up, err = again.StillUp(t.Context()); err != nil || len(up) != 0 {
		t.Errorf("still up after it was taken down: %+v, %v", up, err)
	}
	list, err := n.Briefs(t.Context(), site)
	if err != nil || len(list) != 1 || list[0].Up || !list[0].Down || list[0].Turns != 1 || list[0].Minutes != 60 || list[0].LookAgain.IsZero() {
		t.Errorf("outings %+v, %v", list, err)
	}
}

func TestAnEventSentTwiceIsOne(t *testing.T) {
	n, _, _ := clocked(t)
	issued(t, n, "o1")
	var again *notebook.Again
	if _, err := n.IssueCard(t.Context(), site, "o2", notebook.Edit{Form: "issue o1"}, issue(n)); !errors.As(err, &again) {
		t.Errorf("issued twice: %v", err)
	}
	add(t, n, "o1", riding()...)
	turn := outing.Event{Kind: outing.Rode, Riders: 1, AtMost: 30}
	if _, err := n.AddEvent(t.Context(), site, "o1", notebook.Edit{Form: "f"}, turn); err != nil {
		t.Fatal(err)
	}
	if _, err := n.AddEvent(t.Context(), site, "o1", notebook.Edit{Form: "f"}, turn); !errors.As(err, &again) {
		t.Errorf("got %v", err)
	}
	if o, err := n.Outing(t.Context(), site, "o1"); err != nil || o.Turns[0].Turns != 1 {
		t.Errorf("%v: %+v", err, o.Turns)
	}
}

// Two thumbs at once: both turns are kept, in some order.
func TestTwoWhoCountAtOnce(t *testing.T) {
	n, m, _ := clocked(t)
	issued(t, n, "o1")
	add(t, n, "o1", riding()...)
	other := notebook.New(m, n.Knowledge(), n.Now)
	var wait sync.WaitGroup
	for i := range 8 {
		from := []*notebook.Notebook{n, other}[i%2]
		wait.Go(func() {
			if _, err := from.AddEvent(t.Context(), site, "o1", notebook.Edit{}, outing.Event{Kind: outing.Rode, Riders: 1, AtMost: 30}); err != nil {
				t.Error(err)
			}
		})
	}
	wait.Wait()
	if o, err := n.Outing(t.Context(), site, "o1"); err != nil || o.Turns[0].Turns != 8 {
		t.Errorf("%v: %+v", err, o.Turns)
	}
}

func TestNoSecondCardForASwingThatHangs(t *testing.T) {
	n, _, _ := clocked(t)
	issued(t, n, "o1")
	issued(t, n, "o2") // neither is up
	add(t, n, "o1", outing.Event{Kind: outing.Checked, Check: outing.PutUp()[0]})
	var up *notebook.HangsAlready
	if _, err := n.IssueCard(t.Context(), site, "o3", notebook.Edit{}, issue(n)); !errors.As(err, &up) {
		t.Errorf("a third card: %v", err)
	}
	if _, err := n.AddEvent(t.Context(), site, "o2", notebook.Edit{}, outing.Event{Kind: outing.Checked, Check: outing.PutUp()[0]}); !errors.As(err, &up) {
		t.Errorf("put up twice: %v", err)
	}
}

// What showed in use stands on the tree: no card follows from it any more.
func TestASoundInUseBarsTheNextCard(t *testing.T) {
	for why, want := range map[outing.Reason]string{outing.Sound: "limb-14", outing.Movement: "stem-22"} {
		n, _, _ := clocked(t)
		issued(t, n, "o1")
		add(t, n, "o1", append(riding(), outing.Event{Kind: outing.Stopped, Reason: why}, outing.Event{Kind: outing.TakenDown, Bark: outing.BarkAsBefore, GearBack: true})...)
		if !slices.ContainsFunc(tree(t, n, "T1").Findings, func(f survey.Finding) bool { return f.Sign == want }) {
			t.Errorf("%s: findings %+v", why, tree(t, n, "T1").Findings)
		}
		var no *outing.NoCard
		if _, err := n.IssueCard(t.Context(), site, "o2", notebook.Edit{}, issue(n)); !errors.As(err, &no) || no.Outcome != assess.Leave {
			t.Errorf("%s: the next card: %v", why, err)
		}
	}
}

// An event that does not fit leaves no record behind.
func TestARefusedEventIsNotKept(t *testing.T) {
	n, m, _ := clocked(t)
	issued(t, n, "o1")
	var no *outing.Refused
	if _, err := n.AddEvent(t.Context(), site, "o1", notebook.Edit{Form: "x"}, outing.Event{Kind: outing.Started}); !errors.As(err, &no) {
		t.Errorf("got %v", err)
	}
	if list, err := m.List(t.Context(), "event/"); err != nil || len(list) != 0 {
		t.Errorf("kept %v, %v", list, err)
	}
}
