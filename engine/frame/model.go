package frame

import "boughline/quantity"

// Material holds the elastic constants along the grain and the density of the
// green wood. Shear may be 0 when neither twist nor shear is asked of the
// finite elements; statics need only the density.
type Material struct {
	Young, Shear quantity.Stress
	Density      quantity.Density
}

// Station is a point of a member's centreline with the outline there. Outlines
// between two stations vary linearly along the centreline.
type Station struct {
	Position quantity.Vec3 // m, in the frame of the site
	Outer    Ellipse
}

// Hollow is a stretch of a member with a concentric hole, its diameters linear
// between two arc lengths from the member's first station; its ends are abrupt.
type Hollow struct {
	From, To           quantity.Length
	InnerFrom, InnerTo Ellipse
}

// Member is a stem, a limb or a side limb as a line of stations from root to
// tip. Member 0 is the main member: its Parent is -1 and its first station is
// clamped. Every other member starts on the centreline of a member listed
// before it, ParentAlong from that member's first station.
type Member struct {
	Name        string
	Parent      int
	ParentAlong quantity.Length
	Stations    []Station
	Hollows     []Hollow
}

// Place is a point on a member's centreline, Along its arc length from the
// member's first station.
type Place struct {
	Member int
	Along  quantity.Length
}

// Mass is a body fixed to the frame: foliage, a side branch, a weight. Its
// weight counts in every load case with gravity.
type Mass struct {
	At   Place
	Mass quantity.Mass
}

// Model is the whole frame, before any load.
type Model struct {
	Members  []Member
	Material Material
	Masses   []Mass
}

// Side says on which side of a place a cut lies.
type Side int

// The sides of a cut. TipSide leaves out a load, mass or side limb that sits
// at the place and takes the axes and section beyond it; RootSide includes it
// and takes those before it.
const (
	TipSide Side = iota
	RootSide
)

// String returns "+" for the tip side and "-" for the root side.
func (s Side) String() string {
	if s == RootSide {
		return "-"
	}
	return "+"
}
