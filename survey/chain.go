package survey

// Kinds of a mark on gear.
const (
	MarkBreaking = "breaking"
	MarkWorking  = "working limit"
	MarkUnknown  = "unknown"
)

// Chain is the gear of a hang from the limb down to the seat, in order.
type Chain struct {
	ID    string `json:"id"`
	Parts []Part `json:"parts"`
}

// Part is one link of a chain.
type Part struct {
	Name string `json:"name"`
	// Item is its id in a register of gear, Despite the reason why it is used
	// although something stands against that: a date that is past, a mark that
	// cannot be read. The reason never makes it stronger.
	Item     string `json:"item,omitempty"`
	Despite  string `json:"despite,omitempty"`
	Kind     string `json:"kind"`     // sling, rope, connector, swivel, seat, ring
	Material string `json:"material"` // textile or metal
	Mark     *Mark  `json:"mark,omitempty"`
	Standard string `json:"standard,omitempty"` // a row of the gear table, in place of a mark
	// Ends are the knots or sewn eyes in it, by the names of the knot table.
	Ends []string `json:"ends,omitempty"`
	// Hitch is how it holds the limb: straight, basket, choker or girth.
	Hitch      string       `json:"hitch,omitempty"`
	ChokeAngle *ChosenAngle `json:"choke_angle,omitempty"`
	LegAngle   *ChosenAngle `json:"leg_angle,omitempty"` // of each of two legs, from the horizontal
	// BendOver is the diameter of what the part bends over, Thickness its own.
	BendOver  *MeasuredLength `json:"bend_over,omitempty"`
	Thickness *MeasuredLength `json:"thickness,omitempty"`
	Width     *MeasuredLength `json:"width,omitempty"`
	Length    *MeasuredLength `json:"length,omitempty"`
	// AxialStiffness is the force for a stretch of its own length (EA).
	AxialStiffness *ChosenForce `json:"axial_stiffness,omitempty"`
	InServiceSince Date         `json:"in_service_since,omitzero"`
	Condition      string       `json:"condition,omitempty"` // good, worn, retired or unknown
}

// Mark is the number on a piece of gear, with the kind of strength it stands
// for.
type Mark struct {
	Strength ChosenForce `json:"strength"`
	Kind     string      `json:"kind"`
}
