package outing

import (
	"time"

	"boughline/quantity"
	"boughline/survey"
)

// Kind is what an event is about.
type Kind string

// The kinds of event.
const (
	Checked    Kind = "check"       // one check of putting up is confirmed
	LoadTest   Kind = "load-test"   // passed or failed: what follows is worked out
	LookedOver Kind = "looked-over" // before use and after each break
	Started    Kind = "started"     // riding begins
	Rode       Kind = "riders"      // one turn
	Stopped    Kind = "stopped"     // riding stops, with a reason or without
	Why        Kind = "why"         // the reason of a stop that had none
	Wind       Kind = "wind"        // by the signs in the trees or a reading
	Thunder    Kind = "lightning"   // flash to bang
	Incident   Kind = "incident"    // somebody was hurt, or nearly
	TakenDown  Kind = "down"
	Correction Kind = "correction"
	Note       Kind = "note"
)

// Kinds lists them in the order in which a day meets them.
func Kinds() []Kind {
	return []Kind{Checked, LoadTest, LookedOver, Started, Rode, Stopped, Why, Wind, Thunder, Incident, TakenDown, Correction, Note}
}

// Event is one thing that happened. Which fields it has depends on its kind.
type Event struct {
	At   time.Time `json:"at"`
	Kind Kind      `json:"kind"`
	By   string    `json:"by,omitempty"`

	Check  Check            `json:"check,omitempty"`  // Checked
	Test   *survey.LoadTest `json:"test,omitempty"`   // LoadTest; its day is that of the outing
	Riders int              `json:"riders,omitempty"` // Rode: how many in this turn
	// AtMost is the mass that none of the riders of a turn is above.
	AtMost quantity.Mass `json:"each_at_most_kg,omitempty"`
	Reason Reason        `json:"reason,omitempty"` // Stopped, Why
	// Beaufort is what the signs in the trees tell, Gust a reading of a wind
	// meter. A reading may stop a day; it never permits one.
	Beaufort *int            `json:"beaufort,omitempty"`
	Gust     *quantity.Speed `json:"gust_m_s,omitempty"`
	// Count is the time from flash to bang; nil where nobody counted.
	Count    *quantity.Time `json:"flash_to_bang_s,omitempty"`
	NearMiss bool           `json:"near_miss,omitempty"`
	Text     string         `json:"text,omitempty"` // what happened, what was done
	Bark     Bark           `json:"bark,omitempty"` // TakenDown
	GearBack bool           `json:"gear_back,omitempty"`
	Wet      bool           `json:"wet,omitempty"`
	Corrects int            `json:"corrects,omitempty"` // number of an event, from 1 on
}

// Reason is why riding stopped.
type Reason string

// The reasons. After Sound and Movement nobody rides on this hang again that
// day; after End it only comes down.
const (
	Gust      Reason = "gust"
	Sound     Reason = "sound"    // the limb or the rig was heard
	Movement  Reason = "movement" // stem or ground moved
	Rain      Reason = "rain"
	Lightning Reason = "lightning"
	Hurt      Reason = "hurt"
	Happened  Reason = "incident" // an incident or near miss was written down
	Crossed   Reason = "crossed"  // somebody walked into the arc
	Break     Reason = "break"
	End       Reason = "end"
)

// Reasons lists those that a person may give.
func Reasons() []Reason {
	return []Reason{Gust, Sound, Movement, Rain, Lightning, Hurt, Crossed, Break, End}
}

// Check is one step of putting a swing up.
type Check string

// PutUp lists the checks of putting up, in their order (common practice, no
// published source).
func PutUp() []Check {
	return []Check{"people", "gear", "bark", "anchor", "height", "gaps", "ground"}
}

// Bark is how the bark looked where the line lay, at take-down.
type Bark string

// What the bark may look like.
const (
	BarkAsBefore Bark = "as before"
	BarkRubbed   Bark = "rubbed"
	BarkBroken   Bark = "broken"
)

// Barks lists them, the least first.
func Barks() []Bark { return []Bark{BarkAsBefore, BarkRubbed, BarkBroken} }
