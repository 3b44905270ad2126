package survey

// Hang is a hang point on a limb with a line length, a swing direction and
// riders: the use that is asked for.
type Hang struct {
	ID     string         `json:"id"`
	Member string         `json:"member"`
	At     MeasuredLength `json:"at"` // along the limb from the face of its parent
	// Line is the length from the limb to the seat, unloaded.
	Line ChosenLength `json:"line"`
	// SwingAzimuth is one of the two directions in which it swings; left out,
	// it swings square to the limb.
	SwingAzimuth *ChosenAngle `json:"swing_azimuth,omitempty"`
	Amplitude    ChosenAngle  `json:"amplitude"`
	Riders       string       `json:"riders"`
	Chain        string       `json:"chain"`
	// Height is that of the limb's underside above the ground below it.
	Height    *MeasuredLength `json:"height,omitempty"`
	Ground    *Ground         `json:"ground,omitempty"`
	Waiting   []Spot          `json:"waiting,omitempty"` // where people wait
	WayIn     []Spot          `json:"way_in,omitempty"`  // points along the way in
	Obstacles []Obstacle      `json:"obstacles,omitempty"`
	Sleeve    string          `json:"sleeve,omitempty"` // none, hose, strap or pad
	Slack     *ChosenLength   `json:"slack,omitempty"`  // most slack at mounting
	Note      string          `json:"note,omitempty"`
}

// Ground is the lie of the land below a hang.
type Ground struct {
	// Along holds points on the swing line: At is counted from the plumb line
	// towards SwingAzimuth, Height from the ground at the plumb line.
	Along []GroundPoint `json:"along"`
	// Across holds points on the line square to it, counted to the right of
	// SwingAzimuth.
	Across []GroundPoint `json:"across,omitempty"`
	// Surface is a row of the surface table: turf, soil, wood chips...
	Surface string `json:"surface"`
	// DepthLoose is the depth of loose fill, where there is any.
	DepthLoose *MeasuredLength `json:"depth_loose,omitempty"`
}

// GroundPoint is one point of a ground profile.
type GroundPoint struct {
	At     ChosenLength   `json:"at"`
	Height MeasuredLength `json:"height"`
}

// Spot is a place on the ground, seen from the foot of the stem.
type Spot struct {
	Azimuth  ChosenAngle  `json:"azimuth"`
	Distance ChosenLength `json:"distance"`
}

// What an obstacle is to the people of a hang.
const (
	Solid = "solid" // a stump, a rock, a fence: nobody may be thrown against it
	Water = "water" // nobody may land in it
	Path  = "path"  // other people walk there: it stays outside the kept-clear ground
)

// Obstacle is a thing on the ground that riders must not meet, seen from the
// foot of the stem: a disc; with Corners a line from there through them, such
// as a fence; an area, such as a pond, where Area is set.
type Obstacle struct {
	What     string         `json:"what"`
	Kind     string         `json:"kind,omitempty"` // Solid where left out
	Azimuth  MeasuredAngle  `json:"azimuth"`
	Distance MeasuredLength `json:"distance"`
	// Radius is that of the disc, or half the thickness of the line.
	Radius  MeasuredLength `json:"radius"`
	Corners []Spot         `json:"corners,omitempty"`
	Area    bool           `json:"area,omitempty"`
}

// Lie is the lie of the land about a tree: spot heights that are joined into
// triangles. It serves every hang that has no ground of its own.
type Lie struct {
	Spots      []SpotHeight    `json:"spots"`
	Surface    string          `json:"surface"`
	DepthLoose *MeasuredLength `json:"depth_loose,omitempty"`
}

// SpotHeight is the height of the ground at one place, counted from the ground
// at the foot of the stem.
type SpotHeight struct {
	Azimuth  ChosenAngle    `json:"azimuth"`
	Distance ChosenLength   `json:"distance"`
	Height   MeasuredLength `json:"height"`
}

// Postures of a rider.
const (
	Seated    = "seated"
	Straddled = "straddled" // on a button or bar between the legs
	Standing  = "standing"
)

// Riders is a group that may ride together.
type Riders struct {
	ID    string        `json:"id"`
	Count int           `json:"count"`
	Ages  *Ages         `json:"ages,omitempty"`
	Each  *MeasuredMass `json:"each,omitempty"` // the heaviest of them
	// Standard takes the masses of EN 1176-1 Annex A instead.
	Standard bool          `json:"standard,omitempty"`
	Seat     *MeasuredMass `json:"seat,omitempty"` // seat, line and connectors
	Posture  string        `json:"posture,omitempty"`
}

// Ages is a range of whole years.
type Ages struct {
	From int `json:"from"`
	To   int `json:"to"`
}
