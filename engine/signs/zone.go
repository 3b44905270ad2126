package signs

// Zone is a part of the tree or its place, in the order of a look from the
// crown down.
type Zone string

// The zones, from the top down.
const (
	Crown        Zone = "crown"
	Limb         Zone = "limb"
	Union        Zone = "union"
	Stem         Zone = "stem"
	Base         Zone = "base"
	RootPlate    Zone = "root_plate"
	Ground       Zone = "ground"
	Surroundings Zone = "surroundings"
)

// Zones lists the zones in the order of a look.
func Zones() []Zone {
	return []Zone{Crown, Limb, Union, Stem, Base, RootPlate, Ground, Surroundings}
}

// Scope says where a sign counts.
type Scope string

const (
	// Member: the sign counts where it is.
	Member Scope = "member"
	// Tree: the sign speaks of the whole tree and counts everywhere on it.
	Tree Scope = "tree"
	// Place: the sign speaks of the place and counts for every hang there.
	Place Scope = "place"
)

// Scopes lists the scopes from the narrowest to the widest.
func Scopes() []Scope { return []Scope{Member, Tree, Place} }
