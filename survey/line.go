package survey

// Kinds of a line.
const (
	HammockLine  = "hammock"  // a body on straps between two anchors
	TraverseLine = "traverse" // a low line that people walk along
	ClimbingLine = "climbing" // a line that a trained climber hangs on
)

// Where a climbing line is made fast.
const (
	FixedAtLimb  = "at the limb" // one leg, held by the anchor
	FixedDoubled = "doubled"     // both legs carry the climber, who holds both
	FixedAtBase  = "at the base" // over the limb, its other leg made fast at the foot
)

// Line is another hang of the site: a line between two anchors, or one down
// from a limb that may be led over a second one.
type Line struct {
	ID   string    `json:"id"`
	Kind string    `json:"kind"`
	Ends []LineEnd `json:"ends"` // two; a climbing line has one
	// Span is level from the first anchor to the second; left out, it follows
	// from the places of the trees. Rise is how much higher the second one is.
	Span *MeasuredLength `json:"span,omitempty"`
	Rise *MeasuredLength `json:"rise,omitempty"`
	// Azimuth leads from the first end to the second, for trees whose places
	// on the site are not known.
	Azimuth *ChosenAngle `json:"azimuth,omitempty"`
	// Sag is wanted, below the straight line between the anchors with the
	// riders at rest in the middle; Pretension is that of the empty line.
	Sag        *MeasuredLength `json:"sag,omitempty"`
	Pretension *ChosenForce    `json:"pretension,omitempty"`
	Body       *ChosenLength   `json:"body,omitempty"` // of a hammock, between its straps
	Riders     string          `json:"riders"`
	Chain      string          `json:"chain"`
	Fixed      string          `json:"fixed,omitempty"` // of a climbing line
	Redirect   *Redirect       `json:"redirect,omitempty"`
	// Ground lies below the line: At is counted from the first end towards the
	// second, Height from the ground below the first end.
	Ground *Ground `json:"ground,omitempty"`
	Sleeve string  `json:"sleeve,omitempty"` // none, hose, strap or pad
	Note   string  `json:"note,omitempty"`
}

// LineEnd is an anchor of a line on a stem or a limb.
type LineEnd struct {
	Tree   string         `json:"tree"`
	Member string         `json:"member"`
	At     MeasuredLength `json:"at"` // along the member: on a stem the height
	// Height is that of the anchor above the ground below it; left out, it
	// follows from the shape of the tree.
	Height *MeasuredLength `json:"height,omitempty"`
	Anchor string          `json:"anchor,omitempty"` // the part of the chain that holds here
}

// Redirect is a second limb, of the tree of the first end, that a climbing line
// is led over on its way down.
type Redirect struct {
	Member string         `json:"member"`
	At     MeasuredLength `json:"at"`
	// Angle is that between the two legs of the line there; left out, it
	// follows from the shape of the tree.
	Angle  *MeasuredAngle `json:"angle,omitempty"`
	Anchor string         `json:"anchor,omitempty"`
}
