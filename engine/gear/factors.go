package gear

import "boughline/quantity"

// Demand is the strength a mark must show, as multiples of the two loads; the
// larger result counts.
type Demand struct {
	OnResting float64 // on the resting weight of riders and seat
	OnPeak    float64 // on the greatest pull
}

// ChokeStep is one row of a table of choke angles: from the angle From
// upwards the share of the choker rating is Share.
type ChokeStep struct {
	From  quantity.Angle
	Share quantity.Proportion
}

// Factors are the demands and shares a chain is checked with.
//
// A breaking strength is asked for 10 times the resting weight (textile for
// people: common practice after BS 8437, from memory) and 5 times the greatest
// pull (house).
//
// A working limit has been divided by its maker already, by a factor the mark
// doesn't tell: commonly 7 for textile slings (EN 1492, from memory) and 4 for
// steel (EN 818, from memory). To multiply it back would credit a factor
// nobody has read. So it counts as it stands: it must not be less than the
// greatest pull (OnPeak 1), which with 7 keeps more than the 5 asked of a
// breaking strength. For steel with 4 it would keep less, so OnPeak 5/4 is the
// equal of 5. OnResting 10/7 for textile is the equal of 10; at amplitudes
// above 45 degrees the greatest pull governs anyway.
type Factors struct {
	TextileBreaking, TextileWorkingLimit Demand
	MetalBreaking, MetalWorkingLimit     Demand
	// UntestedKnot is the most any knot is credited with unless tested.
	UntestedKnot quantity.Proportion
	// Choker and Girth are the shares of the straight rating kept in these
	// hitches, the choker at a wide choke angle.
	Choker, Girth quantity.Proportion
	// ChokeAngles holds the further share of a choker by its angle, in falling
	// order down to 0.
	ChokeAngles []ChokeStep
}

func (f Factors) demand(m Material, k MarkKind) Demand {
	switch {
	case m == Metal && k == WorkingLimit:
		return f.MetalWorkingLimit
	case m == Metal:
		return f.MetalBreaking
	case k == WorkingLimit:
		return f.TextileWorkingLimit
	}
	return f.TextileBreaking
}
