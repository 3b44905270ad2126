package outing

import (
	"fmt"
	"slices"
	"time"

	"boughline/quantity"
	"boughline/survey"
)

// Begin is the state after issue: nothing is up.
func Begin(judge Judge) (State, error) {
	card, _, err := judge(nil)
	return State{Card: card, Stage: Issued, Told: true}, err
}

// Apply returns the state after one more event. An event that does not fit is
// refused with a *Refused, and the state is returned as it was.
func (s State) Apply(e Event, judge Judge) (State, error) {
	after := s
	after.Turns = slices.Clone(s.Turns)
	if err := after.take(e, judge); err != nil {
		return s, err
	}
	after.Events = append(s.Events[:len(s.Events):len(s.Events)], e)
	return after, nil
}

// take lays an event on a state that is thrown away where the event is refused.
func (s *State) take(e Event, judge Judge) error {
	if err := s.inTime(e); err != nil {
		return err
	}
	switch e.Kind {
	case Checked:
		return s.check(e)
	case LoadTest:
		return s.test(e, judge)
	case LookedOver:
		return s.lookOver(e)
	case Started:
		return s.start(e)
	case Rode:
		return s.ride(e)
	case Stopped:
		return s.stop(e)
	case Why:
		return s.why(e)
	case Wind:
		return s.wind(e)
	case Thunder:
		return s.thunder(e)
	case Incident:
		return s.incident(e)
	case TakenDown:
		return s.takeDown(e)
	case Correction:
		return s.correct(e)
	case Note:
		return s.note(e)
	}
	return s.refused(e, fmt.Sprintf("%q is no kind of event", e.Kind), fmt.Sprintf("expected one of %v", Kinds()))
}

// inTime wants events in the order of their times, and nothing that leads to
// riding once the card has lapsed.
func (s *State) inTime(e Event) error {
	if last := s.last(); e.At.Before(last) {
		return s.refused(e, fmt.Sprintf("its time %s is before %s, when the event before it happened", clock(e.At), clock(last)), "write events down in their order")
	}
	if s.Stage == Dismounted && e.Kind != Correction && e.Kind != Incident && e.Kind != Note {
		return s.refused(e, "the outing is over", "issue a new card, or correct the take-down")
	}
	switch e.Kind {
	case Checked, LoadTest, LookedOver, Started, Rode:
		return s.goesOn(e)
	}
	return nil
}

// goesOn refuses what leads to riding where nobody may ride any more, or not
// yet.
func (s *State) goesOn(e Event) error {
	switch until := s.Waits(e.At); {
	case !e.At.Before(s.Card.Until):
		return s.refused(e, "the card lapsed at "+clock(s.Card.Until), "take the swing down")
	case s.Over != "":
		return s.refused(e, fmt.Sprintf("riding is over for today (%s)", s.Over), "take the swing down")
	case !until.IsZero():
		return s.refused(e, "lightning was near", "keep everybody away until "+clock(until))
	}
	return nil
}

func (s *State) refused(e Event, fault, do string) error {
	return &Refused{Kind: e.Kind, Stage: s.Stage, Fault: fault, Do: do}
}

// check confirms the next check of putting up, and none before its turn.
func (s *State) check(e Event) error {
	all := PutUp()
	if s.Stage != Issued {
		return s.refused(e, "it is put up already", "go on with the load test")
	}
	if next := all[s.Confirmed]; e.Check != next {
		return s.refused(e, fmt.Sprintf("%q is not the next check", e.Check), fmt.Sprintf("confirm %q first", next))
	}
	s.Confirmed++
	if s.Confirmed == len(all) {
		s.Stage = Up
	}
	return nil
}

// test judges the hang anew with a load test. A passed one may lower the
// limits, a failed one ends riding for good, one that was not read says nothing.
func (s *State) test(e Event, judge Judge) error {
	if s.Stage == Issued || s.Stage == InUse {
		return s.refused(e, "a load test is made once the swing is up and while nobody rides", "finish putting up, or stop first")
	}
	if e.Test == nil || len(e.Test.Steps) == 0 {
		return s.refused(e, "it has no step", "state at least one load with the sag under it")
	}
	tests := append(s.Tests[:len(s.Tests):len(s.Tests)], *e.Test)
	card, verdict, err := judge(tests)
	if err != nil && verdict == NoTest {
		return s.refused(e, err.Error(), "correct the record of the test")
	}
	s.Verdict = verdict
	switch verdict {
	case Passed:
		s.Card, s.Tests, s.Stage = card, tests, Tested
	case Failed:
		s.Tests, s.Stage, s.Over = tests, Up, Failing
	default:
		s.Stage = Up
	}
	return nil
}

// Failing is why riding is over after a failed load test.
const Failing Reason = "load test failed"

func (s *State) lookOver(e Event) error {
	switch {
	case s.Stage == InUse:
		return s.refused(e, "somebody may be riding", "stop first")
	case s.Verdict != Passed:
		return s.refused(e, "the load test of today is not passed", "put the swing up and test it first")
	case s.Unsaid:
		return s.refused(e, "nobody has said why riding stopped", "say why first")
	}
	s.Stage = Ready
	return nil
}

func (s *State) start(e Event) error {
	switch {
	case s.Stage != Ready:
		return s.refused(e, "it has not been looked over since it was put up, tested or stopped", "look it over first")
	case s.Windy:
		return s.refused(e, "the last wind written down is above what the card allows", "write down what the trees tell now; a reading of a meter does not lift it")
	case !s.Told:
		return s.refused(e, "somebody was hurt and nothing is written down about it", "write down what happened and what was done")
	}
	s.Stage, s.since = InUse, e.At
	return nil
}

// ride counts one turn by riders within the card.
func (s *State) ride(e Event) error {
	l := s.Card.Limits
	switch {
	case s.Stage != InUse:
		return s.refused(e, "nobody rides now", "start riding first")
	case e.Riders < 1 || e.Riders > l.Riders:
		return s.refused(e, fmt.Sprintf("riders is %d", e.Riders), fmt.Sprintf("the card allows 1 to %d at a time", l.Riders))
	case !(e.AtMost > 0) || e.AtMost > l.MassEach*(1+1e-9):
		return s.refused(e, fmt.Sprintf("each_at_most_kg is %.1f", float64(e.AtMost)), fmt.Sprintf("the card allows riders of up to %.1f kg", floor(l.MassEach)))
	}
	s.count(e.AtMost, 1, e.Riders)
	return nil
}

func (s *State) count(most quantity.Mass, turns, riders int) {
	i := slices.IndexFunc(s.Turns, func(t Turns) bool { return t.AtMost == most })
	if i < 0 {
		i = len(s.Turns)
		s.Turns = append(s.Turns, Turns{AtMost: most})
	}
	s.Turns[i].Turns += turns
	s.Turns[i].Riders += riders
}

func (s *State) note(e Event) error {
	if e.Text == "" {
		return s.refused(e, "it says nothing", "write what is to be noted")
	}
	return nil
}

func (s *State) takeDown(e Event) error {
	if !slices.Contains(Barks(), e.Bark) {
		return s.refused(e, fmt.Sprintf("bark is %q", e.Bark), fmt.Sprintf("look where the line lay; expected one of %v", Barks()))
	}
	if !e.GearBack {
		return s.refused(e, "nobody has said that all gear is back", "count the gear, and say so")
	}
	s.rest(e)
	s.Stage, s.Down, s.Unsaid = Dismounted, &e, false
	return nil
}

// rest ends the time of riding.
func (s *State) rest(e Event) {
	if s.Stage == InUse {
		s.Used += e.At.Sub(s.since)
	}
}

func clock(t time.Time) string { return t.Format("15:04") }

// floor cuts a limit to a tenth and never rounds it up.
func floor(m quantity.Mass) float64 { return float64(int(float64(m)*10)) / 10 }

// Recorded lists the tests of an outing as a survey records them.
func (s *State) Recorded() []survey.LoadTest {
	var list []survey.LoadTest
	for _, t := range s.Tests {
		t.Hang, t.On = s.Card.Hang, s.Card.Day()
		list = append(list, t)
	}
	return list
}
