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

// Obstacle is a thing on the ground that a rider must not meet, a disc in
// plan, seen from the foot of the stem.
type Obstacle struct {
	What     string         `json:"what"`
	Azimuth  MeasuredAngle  `json:"azimuth"`
	Distance MeasuredLength `json:"distance"`
	Radius   MeasuredLength `json:"radius"`
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
