package assess

import (
	"boughline/engine/signs"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// Format is the version of the JSON form of an Assessment. It may gain
// fields; readers ignore those they do not know.
const Format = 1

// Assessment is what follows for every hang of a site.
type Assessment struct {
	Format int         `json:"assessment"`
	Site   string      `json:"site"`
	Day    survey.Date `json:"day"`
	Hangs  []Hang      `json:"hangs"`
	Lines  []Line      `json:"lines,omitempty"`
}

// Hang is what follows for one hang.
type Hang struct {
	ID       string  `json:"id"`
	Tree     string  `json:"tree"`
	TreeName string  `json:"tree_name,omitempty"`
	Species  string  `json:"species"`
	Member   string  `json:"member"`
	Asked    Use     `json:"asked"`
	Outcome  Outcome `json:"outcome"`
	// Chance is nil where the hang cannot be worked out.
	Chance  *LimbChances `json:"chance,omitempty"`
	Limits  *Limits      `json:"limits,omitempty"` // for a rideable outcome
	Reasons []Reason     `json:"reasons"`          // the governing one first
	Checks  []Check      `json:"checks"`           // the least margin first
}

// LimbChances is how likely the limb breaks in a year of outings at the use asked
// for, given that it carries its own weight and passes the planned load test: the likelier of
// the chance checks. It leaves out what LeftOut names, and wind, jerk, stem and roots.
type LimbChances struct {
	Probability float64   `json:"probability"`
	Index       float64   `json:"index"` // of reliability, from 0 (it hardly bears its test) to 8
	Target      float64   `json:"target_index"`
	LeftOut     []LeftOut `json:"leaves_out"`
}

// Use is how a hang is to be used.
type Use struct {
	Riders    int             `json:"riders"`
	Mass      quantity.Mass   `json:"riders_kg"` // all riders together
	Seat      quantity.Mass   `json:"seat_kg"`   // seat, line and connectors
	Amplitude quantity.Angle  `json:"amplitude_rad"`
	Line      quantity.Length `json:"line_m"`
	// Gust is a 3 s gust in the open at 10 m.
	Gust quantity.Speed `json:"gust_m_s"`
}

// Limits is the greatest use at which every check holds, found by computation.
type Limits struct {
	Use
	// MassEach is the mass left for each rider.
	MassEach quantity.Mass `json:"each_kg"`
	// Beaufort is the mean wind whose gusts reach Gust, and SeenInTrees what
	// tells it; 0 below the table.
	Beaufort    int    `json:"beaufort,omitempty"`
	SeenInTrees string `json:"seen_in_trees,omitempty"`
	// KeptClear is the length to keep free of people on either side of the
	// plumb line, along the swing line.
	KeptClear quantity.Length `json:"kept_clear_m"`
	// StandardClear and LetGo are the figures that KeptClear is the larger of:
	// the standard's for level ground, and the farthest that a rider who lets
	// go at the worst moment lands on this ground.
	StandardClear quantity.Length `json:"kept_clear_standard_m"`
	LetGo         quantity.Length `json:"let_go_m"`
	// KeptClearArea is the outline of the ground to keep free of people, east
	// and north of the stem, m.
	KeptClearArea [][2]float64    `json:"kept_clear_area_m"`
	FallFrom      quantity.Length `json:"fall_m"` // greatest height of fall
	// StandardFall is the standard's figure for level ground: half the line
	// and the height of the seat at rest.
	StandardFall quantity.Length `json:"fall_standard_m"`
	// TestMass is the dead mass to hang in the load test before anyone rides: weighed
	// with the doubt of a scale, it counts as the whole test.
	TestMass quantity.Mass `json:"load_test_kg"`
	// Departures are stated departures that the person in charge signs for.
	Departures []string `json:"departures,omitempty"`
}

// Check is one comparison of demand and capacity, at the unfavourable 5 %
// value of every measurement.
type Check struct {
	Code     Code    `json:"code"`
	Demand   float64 `json:"demand"`
	Capacity float64 `json:"capacity"`
	Unit     string  `json:"unit"`
	// Margin is capacity over demand; Best is the same at the favourable 5 %
	// values. Between them lie nine cases in ten.
	Margin float64 `json:"margin"`
	Best   float64 `json:"margin_best"`
	Where  Where   `json:"where"`
	Terms  []Term  `json:"terms"`
	// Alone is the outcome that this check by itself leads to.
	Alone Outcome `json:"alone"`
}

// Where names the part of the tree and the load case that govern a check.
type Where struct {
	End    string          `json:"end,omitempty"` // of a line: the tree that it is at
	Part   string          `json:"part,omitempty"`
	Along  quantity.Length `json:"along_m,omitempty"`
	Case   string          `json:"case,omitempty"`
	AtRad  quantity.Angle  `json:"swing_angle_rad,omitempty"`
	Detail string          `json:"detail,omitempty"`
}

// Term is one number that went into a check or a reason.
type Term struct {
	Symbol string       `json:"symbol"`
	Name   string       `json:"name"`
	Value  float64      `json:"value"`
	Unit   string       `json:"unit"`
	Sd     float64      `json:"sd,omitempty"`
	How    quantity.How `json:"how,omitempty"`  // how it was measured
	Path   string       `json:"path,omitempty"` // where in the survey it stands
	Refs   []source.Ref `json:"refs,omitempty"`
	Note   string       `json:"note,omitempty"`
}

// Reason is one cause of an outcome, or a remark. Words are made from its
// code by package assess/wording.
type Reason struct {
	Code    Code    `json:"code"`
	Outcome Outcome `json:"outcome"`
	// Remark tells a reason that changes nothing.
	Remark     bool            `json:"remark,omitempty"`
	Check      *Check          `json:"check,omitempty"`
	Sign       *signs.Sign     `json:"-"`
	SignID     string          `json:"sign,omitempty"`
	Others     []*signs.Sign   `json:"-"` // further signs that the reason speaks of
	SignIDs    []string        `json:"signs,omitempty"`
	StandIns   []*signs.Sign   `json:"-"` // looked for instead, and clear
	StandInIDs []string        `json:"stand_ins,omitempty"`
	Rule       *signs.Rule     `json:"-"` // what signs mean together
	RuleID     string          `json:"rule,omitempty"`
	Findings   []string        `json:"findings,omitempty"` // those that meet in the rule
	Hazard     *signs.Hazard   `json:"-"`
	HazardID   string          `json:"hazard,omitempty"`
	Covers     []string        `json:"in_the_way,omitempty"` // what lay in the way of a look
	Finding    string          `json:"finding,omitempty"`
	End        string          `json:"end,omitempty"`     // of a line: the tree that it is at
	OnTree     string          `json:"on_tree,omitempty"` // a finding on a neighbour
	Placement  signs.Placement `json:"placement,omitzero"`
	Why        signs.Why       `json:"why,omitempty"`
	Effect     signs.Effect    `json:"-"`
	Fungus     string          `json:"fungus,omitempty"` // what the fungus means
	Zone       string          `json:"zone,omitempty"`
	Path       string          `json:"path,omitempty"`
	Terms      []Term          `json:"terms,omitempty"`
	Change     Change          `json:"change,omitzero"`
	Refs       []source.Ref    `json:"refs,omitempty"`
	Text       string          `json:"text,omitempty"` // what the surveyor wrote
}

// Change is the smallest change that would alter the outcome of a reason.
type Change struct {
	Code  string  `json:"code"`
	Value float64 `json:"value,omitempty"`
	Unit  string  `json:"unit,omitempty"`
}
