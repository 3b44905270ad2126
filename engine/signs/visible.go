package signs

import "slices"

// Need is a state of tree, weather or season without which a sign cannot show.
type Need string

// The needs. NeedsNothing is the zero value.
const (
	NeedsNothing   Need = ""
	NeedsLeaves    Need = "leaf"
	NeedsBareCrown Need = "bare"
	NeedsWind      Need = "wind"
	NeedsToadstool Need = "toadstool season"
)

// Needs lists the needs.
func Needs() []Need { return []Need{NeedsLeaves, NeedsBareCrown, NeedsWind, NeedsToadstool} }

// Leaves is the state of the crown at a look.
type Leaves string

// The states of a crown; the zero value is not known.
const (
	InLeaf    Leaves = "in leaf"
	PartLeaf  Leaves = "part in leaf" // neither enough to judge the leaves nor bare enough to see through
	BareCrown Leaves = "bare"
)

// Air is what the wind does to the tree at a look.
type Air string

// The states of the air; the zero value is not known.
const (
	StillAir  Air = "still"
	TwigsMove Air = "twigs move"
	LimbsMove Air = "limbs move"
)

// Cover is a thing that lies or grows in the way of a look.
type Cover string

// The covers.
const (
	Snow        Cover = "snow"
	Litter      Cover = "litter"
	Undergrowth Cover = "undergrowth"
	Ivy         Cover = "ivy"
	Foliage     Cover = "leaves"
)

// Covers lists the covers.
func Covers() []Cover { return []Cover{Snow, Litter, Undergrowth, Ivy, Foliage} }

// Conditions is the state of tree, air, season and ground at a look. What is
// not known of it shows nothing.
type Conditions struct {
	Leaves     Leaves
	Air        Air
	Toadstools bool // within the season in which fungi of one summer stand
	InTheWay   []Cover
}

// CouldShow reports whether the sign, had it been there, could have been seen
// under the conditions. Only what is known to meet its need counts.
func (s Sign) CouldShow(c Conditions) bool { return s.Needs.met(c) && len(s.CoveredBy(c)) == 0 }

func (n Need) met(c Conditions) bool {
	switch n {
	case NeedsLeaves:
		return c.Leaves == InLeaf
	case NeedsBareCrown:
		return c.Leaves == BareCrown
	case NeedsWind:
		return c.Air == LimbsMove
	case NeedsToadstool:
		return c.Toadstools
	}
	return n == NeedsNothing
}

// CoveredBy lists what lay in the way of the sign at a look.
func (s Sign) CoveredBy(c Conditions) []Cover {
	var list []Cover
	for _, cover := range c.InTheWay {
		if slices.Contains(s.HiddenBy, cover) {
			list = append(list, cover)
		}
	}
	return list
}

// GrowsOn reports whether a tree of the species may have the sign at all:
// scientific is its scientific name, empty where the kind is not known.
func (s Sign) GrowsOn(scientific string) bool {
	if len(s.Hosts) == 0 || scientific == "" {
		return true
	}
	return slices.ContainsFunc(s.Hosts, func(genus string) bool {
		return scientific == genus || len(scientific) > len(genus) && scientific[:len(genus)+1] == genus+" "
	})
}
