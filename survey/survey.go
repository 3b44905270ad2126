package survey

import "boughline/quantity"

// Version is the version of the document that this program writes.
const Version = 2

// Short names for the values of the document. Measured values carry their
// uncertainty and how they were got; chosen ones were decided.
type (
	MeasuredLength = quantity.Measured[quantity.Length]
	MeasuredAngle  = quantity.Measured[quantity.Angle]
	MeasuredMass   = quantity.Measured[quantity.Mass]
	MeasuredSpeed  = quantity.Measured[quantity.Speed]
	ChosenLength   = quantity.Chosen[quantity.Length]
	ChosenAngle    = quantity.Chosen[quantity.Angle]
	ChosenForce    = quantity.Chosen[quantity.Force]
)

// Survey is one site with its trees. A nil pointer means not observed or not
// decided, never 0.
type Survey struct {
	Version  int      `json:"boughline"`
	Site     string   `json:"site"`
	Place    *Place   `json:"place,omitempty"`
	Day      Date     `json:"day"` // the day for which the site is judged
	Surveyor string   `json:"surveyor,omitempty"`
	Note     string   `json:"note,omitempty"`
	Wind     *Wind    `json:"wind,omitempty"`
	Riders   []Riders `json:"riders,omitempty"`
	Chains   []Chain  `json:"chains,omitempty"`
	Hazards  []Hazard `json:"hazards,omitempty"` // of the site, not of a tree
	Trees    []Tree   `json:"trees"`
	Lines    []Line   `json:"lines,omitempty"` // other hangs: between trees, or down from a limb
}

// Place is where the site lies, in WGS 84 decimal degrees.
type Place struct {
	Latitude  float64 `json:"latitude"`
	Longitude float64 `json:"longitude"`
	WayIn     string  `json:"way_in,omitempty"`
	// Access is the way in for an ambulance, MeetingPoint where somebody meets it.
	Access       string `json:"access,omitempty"`
	MeetingPoint string `json:"meeting_point,omitempty"`
}

// Wind is how open the site lies and what the site itself allows.
type Wind struct {
	// Terrain is the category 0, I, II, III or IV of EN 1991-1-4 Table 4.1.
	Terrain string `json:"terrain"`
	// InLeaf says whether the crowns bear leaves on the day.
	InLeaf *bool `json:"in_leaf,omitempty"`
	// StopBeaufort is the site's own stop rule, a 10-minute mean in the open
	// at 10 m.
	StopBeaufort *int `json:"stop_beaufort,omitempty"`
}

// Tree is one tree. Its position is relative to the site's own origin.
type Tree struct {
	ID       string          `json:"id"`
	Name     string          `json:"name,omitempty"`
	Species  string          `json:"species"`         // scientific or common name
	Group    string          `json:"group,omitempty"` // broadleaf or conifer, for a species without data
	East     *MeasuredLength `json:"east,omitempty"`
	North    *MeasuredLength `json:"north,omitempty"`
	Height   *MeasuredLength `json:"height,omitempty"`
	Crown    *Crown          `json:"crown,omitempty"`
	Members  []Member        `json:"members"`
	Unions   []Union         `json:"unions,omitempty"`
	Looks    []Look          `json:"looks,omitempty"`
	Findings []Finding       `json:"findings,omitempty"`
	Stood    []Gust          `json:"stood,omitempty"`
	// Ground, Obstacles and WayIn hold for every hang of the tree.
	Ground    *Lie       `json:"ground,omitempty"`
	Obstacles []Obstacle `json:"obstacles,omitempty"`
	WayIn     []Spot     `json:"way_in,omitempty"`
	Hangs     []Hang     `json:"hangs,omitempty"`
	// LoadTests are those of the hangs; each speaks for its own day alone.
	LoadTests []LoadTest `json:"load_tests,omitempty"`
	Note      string     `json:"note,omitempty"`
}

// Crown is the outline of the crown, an ellipse in elevation.
type Crown struct {
	BaseHeight *MeasuredLength `json:"base_height,omitempty"` // lowest foliage
	Width      *MeasuredLength `json:"width,omitempty"`       // across, mean of two
}

// Gust is a gust that the tree is known to have stood, 3 s mean in the open
// at 10 m.
type Gust struct {
	Speed  MeasuredSpeed `json:"speed"`
	On     Date          `json:"on"`
	InLeaf bool          `json:"in_leaf"`
	Source string        `json:"source"`
	Void   string        `json:"void,omitempty"` // why it no longer counts: root work, wetter soil
}
