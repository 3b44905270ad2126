package signs

import (
	"boughline/quantity"
	"boughline/source"
)

// Hazard is something at the site that can hurt people or that people must
// not harm: an animal, a plant, a wire, water. It is no sign of the tree.
type Hazard struct {
	ID      string
	Group   string // wildlife, insects, plants, things, law
	Name    string
	LookFor string
	Means   string
	// From and To are the months, 1 to 12 on the northern half of the globe, in
	// which to expect it, To before From over the turn of the year; both 0 for
	// the whole year.
	From, To int
	// Reach is how near to people or to the limb in use it counts as near;
	// Beyond is what it does up to three times as far. Farther off it is no
	// concern of a hang (house).
	Reach        quantity.Length
	Near, Beyond Effect
	Do           string
	CheckWith    string // whom to ask about duties; empty where there are none
	Sign         string // the sign of the surroundings under which a look meets it

	Refs             []source.Ref
	FromMemory       bool
	PartlyFromMemory bool
}

// At returns the effect of the hazard at a distance from people or from the
// limb in use; a distance that is not known counts as near.
func (h Hazard) At(distance quantity.Length, known bool) Effect {
	switch {
	case !known || distance <= h.Reach:
		return h.Near
	case distance <= h.Outer():
		return h.Beyond
	}
	return None
}

// Outer is the distance beyond which the hazard is no concern of a hang.
func (h Hazard) Outer() quantity.Length { return 3 * h.Reach }

// Expected reports whether a month, 1 to 12 on the northern half of the globe,
// lies in the season of the hazard.
func (h Hazard) Expected(month int) bool {
	switch {
	case h.From == 0:
		return true
	case h.From <= h.To:
		return h.From <= month && month <= h.To
	}
	return month >= h.From || month <= h.To
}
