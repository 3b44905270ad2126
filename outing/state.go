package outing

import (
	"time"

	"boughline/quantity"
	"boughline/survey"
)

// Stage is where an outing stands.
type Stage string

// The stages.
const (
	Issued     Stage = "issued"
	Up         Stage = "up"
	Tested     Stage = "tested"
	Ready      Stage = "looked over"
	InUse      Stage = "in use"
	AtRest     Stage = "stopped"
	Dismounted Stage = "down"
)

// State is what follows from an outing's events.
type State struct {
	Card   Card
	Stage  Stage
	Events []Event
	// Confirmed counts the checks of putting up.
	Confirmed int
	Tests     []survey.LoadTest
	Verdict   Verdict // of the last test
	// Stop is the last stop, with its number; Unsaid while nobody said why.
	Stop   Event
	Unsaid bool
	// Over is why nobody rides on this hang again that day; empty while it may
	// be ridden.
	Over Reason
	// Windy is set from a wind above the card's until the trees tell less.
	Windy bool
	// Thunder is the last one that counts; before it plus the card's time
	// nothing goes on.
	Thunder time.Time
	// Told is false from a stop with somebody hurt until it is written down.
	Told  bool
	Turns []Turns
	// Used is how long it was in use, up to the last stop.
	Used  time.Duration
	since time.Time
	Down  *Event
}

// Turns counts the turns and riders up to one mass.
type Turns struct {
	AtMost quantity.Mass
	Turns  int
	Riders int
}

// IsUp reports whether anything hangs in the tree, be it half put up.
func (s *State) IsUp() bool {
	return s.Stage != Dismounted && (s.Confirmed > 0 || s.Stage != Issued)
}

// Late reports whether the swing is still up past its time.
func (s *State) Late(now time.Time) bool { return s.IsUp() && !now.Before(s.Card.Until) }

// Waits is until when lightning keeps everybody away, the zero time for not at all.
func (s *State) Waits(now time.Time) time.Time {
	if s.Thunder.IsZero() {
		return time.Time{}
	}
	until := s.Thunder.Add(time.Duration(float64(s.Card.Return) * float64(time.Second)))
	if !now.Before(until) {
		return time.Time{}
	}
	return until
}

// InUseFor is how long it was in use up to now.
func (s *State) InUseFor(now time.Time) time.Duration {
	if s.Stage == InUse && now.After(s.since) {
		return s.Used + now.Sub(s.since)
	}
	return s.Used
}

// Riders counts all turns and all who rode in them.
func (s *State) Riders() (turns, riders int) {
	for _, t := range s.Turns {
		turns, riders = turns+t.Turns, riders+t.Riders
	}
	return turns, riders
}

// last is when the newest event happened.
func (s *State) last() time.Time {
	if len(s.Events) == 0 {
		return s.Card.Issue.At
	}
	return s.Events[len(s.Events)-1].At
}
