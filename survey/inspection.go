package survey

// Zones of a look, from the top down.
var Zones = []string{"crown", "limb", "union", "stem", "base", "root_plate", "ground", "surroundings"}

// States of a look.
const (
	LookDone    = "done"
	LookNotDone = "not done"
	LookBlocked = "could not be seen"
)

// Look is one zone of the inspection. In a zone that is done every sign
// without a finding was looked for and not seen, but for those in NotVisible
// and those that leaves, air, season or what lay in the way kept from showing.
type Look struct {
	Zone       string    `json:"zone"`
	State      string    `json:"state"`
	Members    []string  `json:"members,omitempty"` // limbs and unions looked at; none means all
	On         Date      `json:"on,omitzero"`
	By         string    `json:"by,omitempty"`
	Leaves     string    `json:"leaves,omitempty"`      // in leaf, part in leaf or bare
	Air        string    `json:"air,omitempty"`         // still, twigs move or limbs move
	InTheWay   []string  `json:"in_the_way,omitempty"`  // snow, litter, undergrowth, ivy, leaves
	NotVisible []string  `json:"not_visible,omitempty"` // sign ids that could not show that day
	StandIns   []StandIn `json:"stand_ins,omitempty"`
	Note       string    `json:"note,omitempty"`
}

// StandIn is what was looked at instead of a sign that could not show.
type StandIn struct {
	Sign  string `json:"sign"`
	What  string `json:"what"`
	Clear bool   `json:"clear"`
}

// Finding is a sign that was seen, somewhere on or about the tree: on a
// member at a distance along it, or in a zone at a height, side and distance.
type Finding struct {
	ID       string          `json:"id"`
	Sign     string          `json:"sign"`
	Fungus   string          `json:"fungus,omitempty"`
	Member   string          `json:"member,omitempty"`
	At       *MeasuredLength `json:"at,omitempty"`       // along the member; on the stem the height
	Extent   *MeasuredLength `json:"extent,omitempty"`   // from At towards the tip
	Side     *MeasuredAngle  `json:"side,omitempty"`     // compass direction seen from the stem
	Height   *MeasuredLength `json:"height,omitempty"`   // above ground, in a zone
	Distance *MeasuredLength `json:"distance,omitempty"` // from the stem's axis, in a zone
	SeenOn   Date            `json:"seen_on,omitzero"`
	Closer   *CloserLook     `json:"closer_look,omitempty"`
	Cleared  *Cleared        `json:"cleared,omitempty"`
	Note     string          `json:"note,omitempty"`
}

// Results of a closer look.
const (
	CloserClear   = "clear"
	CloserWorse   = "worse"
	CloserUnclear = "unclear"
)

// CloserLook is the second look that a sign asks for.
type CloserLook struct {
	On     Date   `json:"on"`
	How    string `json:"how"`
	Result string `json:"result"`
	By     string `json:"by,omitempty"`
}

// Cleared says that what was found has been taken away, such as a hung-up
// branch.
type Cleared struct {
	On  Date   `json:"on"`
	How string `json:"how"`
	By  string `json:"by,omitempty"`
}
