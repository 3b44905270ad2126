package outing

import (
	"fmt"
	"slices"
)

// stop ends riding at once, with a reason or without. It is taken at any time
// while something is up.
func (s *State) stop(e Event) error {
	if e.Reason != "" && !slices.Contains(Reasons(), e.Reason) {
		return s.refused(e, fmt.Sprintf("reason is %q", e.Reason), fmt.Sprintf("expected one of %v", Reasons()))
	}
	if !s.IsUp() {
		return s.refused(e, "nothing is up", "there is nothing to stop")
	}
	s.halt(e)
	s.Unsaid = e.Reason == ""
	s.because(e, e.Reason)
	return nil
}

// halt brings riding to rest. Where it had not come as far as riding, the stage
// of putting up stays, so that a stop never stands for a test or a check.
func (s *State) halt(e Event) {
	s.rest(e)
	s.Stop = e
	if s.Stage == InUse || s.Stage == Ready || s.Stage == Tested {
		s.Stage = AtRest
	}
}

// because draws what follows from the reason of a stop.
func (s *State) because(e Event, why Reason) {
	switch why {
	case Sound, Movement, End:
		if s.Over == "" || s.Over == End {
			s.Over = why
		}
	case Gust:
		s.Windy = true
	case Lightning:
		s.Thunder = e.At
	case Hurt:
		s.Told = false
	}
}

// why says what a stop without a reason was for.
func (s *State) why(e Event) error {
	switch {
	case !s.Unsaid:
		return s.refused(e, "no stop waits for its reason", "stop first, or add a note")
	case !slices.Contains(Reasons(), e.Reason):
		return s.refused(e, fmt.Sprintf("reason is %q", e.Reason), fmt.Sprintf("expected one of %v", Reasons()))
	}
	s.Unsaid = false
	s.because(e, e.Reason)
	return nil
}

// wind takes what the trees tell or a meter reads. Above the card it stops
// riding; below, only the trees lift an earlier stop: a reading at head height
// in a wood says too little of the wind that the crown meets.
func (s *State) wind(e Event) error {
	switch {
	case (e.Beaufort == nil) == (e.Gust == nil):
		return s.refused(e, "it states no wind, or two", "state the wind force by the signs in the trees, or the reading of a meter")
	case e.Beaufort != nil && (*e.Beaufort < 0 || *e.Beaufort > 12):
		return s.refused(e, fmt.Sprintf("beaufort is %d", *e.Beaufort), "expected 0 to 12")
	case e.Gust != nil && !(*e.Gust >= 0 && *e.Gust <= 100):
		return s.refused(e, fmt.Sprintf("gust_m_s is %v", float64(*e.Gust)), "expected 0 to 100 m/s")
	}
	above := e.Beaufort != nil && *e.Beaufort >= s.Card.StopBeaufort || e.Gust != nil && *e.Gust > s.Card.Limits.Gust
	switch {
	case above:
		s.Windy = true
		s.interrupt(e, Gust)
	case e.Beaufort != nil:
		s.Windy = false
	}
	return nil
}

// interrupt stops riding for what was written down.
func (s *State) interrupt(e Event, why Reason) {
	if s.Stage != InUse && s.Stage != Ready {
		return
	}
	e.Reason = why
	s.halt(e)
	s.Unsaid = false
}

// thunder takes a flash with its time to the bang. One within the card's time,
// or that nobody counted, stops everything; while that holds, any thunder
// begins the wait anew.
func (s *State) thunder(e Event) error {
	if e.Count != nil && !(*e.Count >= 0 && *e.Count <= 600) {
		return s.refused(e, fmt.Sprintf("flash_to_bang_s is %v", float64(*e.Count)), "expected 0 to 600 s, or nothing where nobody counted")
	}
	near := e.Count == nil || *e.Count <= s.Card.Leave
	if near {
		s.interrupt(e, Lightning)
	}
	if near || !s.Waits(e.At).IsZero() {
		s.Thunder = e.At
	}
	return nil
}

// incident takes what happened and what was done. Riding rests until the swing
// has been looked over.
func (s *State) incident(e Event) error {
	if e.Text == "" {
		return s.refused(e, "it does not say what happened and what was done", "write both down")
	}
	s.interrupt(e, Happened)
	s.Told = true
	return nil
}

// SignOf is the sign of the inspection that a stop for a reason has shown, empty
// for none. It stands on the tree until somebody has looked into it.
func SignOf(why Reason) string {
	switch why {
	case Sound:
		return "limb-14"
	case Movement:
		return "stem-22"
	}
	return ""
}
