package gear

import "boughline/quantity"

// Material of a part, which decides the factor asked for.
type Material int

// Textile is the zero value because it is held to the larger factors.
const (
	Textile Material = iota
	Metal
)

// MarkKind says what the number on a part stands for.
type MarkKind int

// The kinds of mark. Unknown is the zero value: a part nobody has read the
// mark of carries nothing.
const (
	Unknown MarkKind = iota
	Breaking
	WorkingLimit
)

// Mark is the number on a part. Value does not count for an unknown kind.
type Mark struct {
	Kind  MarkKind
	Value quantity.Force
}

// Hitch is how a part holds what it hangs on.
type Hitch int

// The hitches. A basket has two parts side by side; PartPull says how much of
// the pull one of them takes.
const (
	Straight Hitch = iota
	Basket
	Choker
	Girth
)

// Knot is a knot, splice or sewn eye in a part.
type Knot struct {
	Name  string
	Share quantity.Proportion // of the strength kept, above 0, at most 1
	// Tested says that the share is that of this very termination, tested or
	// stated by its maker; otherwise Factors.UntestedKnot is its ceiling.
	Tested bool
}

// Reduction is one cause for which a part keeps only a share of its strength.
type Reduction struct {
	Cause string
	Share quantity.Proportion // above 0, at most 1
}

// Link is one part of a chain.
type Link struct {
	Name       string
	Material   Material
	Mark       Mark
	Hitch      Hitch
	ChokeAngle quantity.Angle // for a choker: 0 to 180 degrees
	// Parts is the number of equal parts side by side; 0 counts as 1.
	Parts int
	// PartPull is the pull in one part for each unit of pull on the chain, see
	// LegPull. 0 counts as 1: one part takes it all, however many there are.
	PartPull float64
	Knots    []Knot
	// BendOver is the diameter of what the part bends over under load,
	// Thickness its own; BendOver 0 for no bend.
	BendOver, Thickness quantity.Length
	// Wear lists further reductions: age, sun, wet, condition.
	Wear []Reduction
	// Length is that of one part; AxialStiffness is the pull that would
	// stretch it by its own length (EA), needed for textile with a length.
	Length         quantity.Length
	AxialStiffness quantity.Force
}

func (l Link) parts() int { return max(1, l.Parts) }

func (l Link) partPull() float64 {
	if l.PartPull == 0 {
		return 1
	}
	return l.PartPull
}

// Chain is the parts in order, from the limb down.
type Chain []Link
