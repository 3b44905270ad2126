package outing

import "fmt"

// correct adds a correction. It may take back a check or a look-over, undo a
// take-down that did not happen and change the count of a turn; every other event
// stands, with the correction's text beside it. No correction leads nearer to
// riding than the outing was.
func (s *State) correct(e Event) error {
	if e.Corrects < 1 || e.Corrects > len(s.Events) {
		return s.refused(e, fmt.Sprintf("corrects is %d", e.Corrects), fmt.Sprintf("expected the number of an event, 1 to %d", len(s.Events)))
	}
	if e.Text == "" {
		return s.refused(e, "it does not say what was wrong", "write what happened instead")
	}
	for _, earlier := range s.Events {
		if earlier.Kind == Correction && earlier.Corrects == e.Corrects && s.Events[e.Corrects-1].Kind == Rode {
			return s.refused(e, fmt.Sprintf("event %d is corrected already", e.Corrects), "correct nothing twice; count anew")
		}
	}
	switch wrong := s.Events[e.Corrects-1]; wrong.Kind {
	case Checked:
		return s.uncheck(e, wrong)
	case LookedOver:
		if s.Stage == InUse || s.Stage == Ready {
			s.halt(e)
		}
	case TakenDown:
		if s.Stage == Dismounted && s.Down != nil && s.Down.At.Equal(wrong.At) {
			s.Stage, s.Down = AtRest, nil
			s.backTo()
		}
	case Rode:
		if e.Riders < 0 || e.Riders > s.Card.Limits.Riders {
			return s.refused(e, fmt.Sprintf("riders is %d", e.Riders), fmt.Sprintf("expected how many rode in that turn, 0 to %d", s.Card.Limits.Riders))
		}
		s.count(wrong.AtMost, -1, -wrong.Riders)
		if e.Riders > 0 {
			s.count(wrong.AtMost, 1, e.Riders)
		}
	}
	return nil
}

// uncheck takes back a check and all that rest on it; the swing has to be put
// up and tested anew from there.
func (s *State) uncheck(e, wrong Event) error {
	if s.Stage == Dismounted {
		return nil
	}
	for i, c := range PutUp() {
		if c == wrong.Check && i < s.Confirmed {
			s.rest(e)
			s.Confirmed, s.Stage, s.Verdict = i, Issued, NoTest
		}
	}
	return nil
}

// backTo is where an outing stands that was taken for over.
func (s *State) backTo() {
	switch {
	case s.Confirmed < len(PutUp()):
		s.Stage = Issued
	case s.Verdict != Passed:
		s.Stage = Up
	}
}
