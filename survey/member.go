package survey

// Member is the stem or a limb. The stem has no parent; a limb grows from its
// parent at RisesAt. Its shape is either simple (azimuth, inclination, length)
// or a Path.
type Member struct {
	ID          string          `json:"id"`
	Parent      string          `json:"parent,omitempty"`
	RisesAt     *MeasuredLength `json:"rises_at,omitempty"`    // along the parent from its foot
	Azimuth     *MeasuredAngle  `json:"azimuth,omitempty"`     // clockwise from north
	Inclination *MeasuredAngle  `json:"inclination,omitempty"` // above the horizontal; the stem 90 deg
	Length      *MeasuredLength `json:"length,omitempty"`
	Path        []Point         `json:"path,omitempty"`
	Stations    []Station       `json:"stations"`
	Tip         *MeasuredLength `json:"tip,omitempty"`  // diameter at the end
	Bark        *MeasuredLength `json:"bark,omitempty"` // thickness on one side
}

// Point is one corner of a polyline, relative to the foot of the member. The
// line begins at the foot itself, which need not be written.
type Point struct {
	East  ChosenLength `json:"east"`
	North ChosenLength `json:"north"`
	Up    ChosenLength `json:"up"`
}

// Station is a place along the member where its thickness was measured: by
// its girth, by one diameter, or by two (upright and across), over bark.
type Station struct {
	At       ChosenLength    `json:"at"`
	Girth    *MeasuredLength `json:"girth,omitempty"`
	Diameter *MeasuredLength `json:"diameter,omitempty"`
	Upright  *MeasuredLength `json:"upright,omitempty"`
	Across   *MeasuredLength `json:"across,omitempty"`
}

// Forms of a union and of the bark in it.
const (
	FormU       = "U"
	FormV       = "V"
	NotSeen     = "not seen"
	BarkRidge   = "ridge"    // raised bark ridge, no bark turned in
	BarkInclude = "included" // bark turned in between the two
)

// Union is where a member joins its parent.
type Union struct {
	Member string          `json:"member"`
	Form   string          `json:"form"`             // U, V or not seen
	Bark   string          `json:"bark"`             // ridge, included or not seen
	Parent *MeasuredLength `json:"parent,omitempty"` // diameter of the parent just above
}
