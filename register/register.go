package register

import "boughline/survey"

// Version is the version of the document that this program writes.
const Version = 1

// Register is the gear of one person or group. A nil pointer, an empty text
// and no day mean that nothing was written down.
type Register struct {
	Version int    `json:"register"`
	Owner   string `json:"owner"` // whose gear it is
	// LOLER says whether the Lifting Operations and Lifting Equipment
	// Regulations 1998 (Great Britain) apply. Where nobody has said, it counts
	// as if they did.
	LOLER *bool  `json:"loler,omitempty"`
	Note  string `json:"note,omitempty"`
	Items []Item `json:"items,omitempty"`
	Uses  []Use  `json:"uses,omitempty"`
}

// Kinds of item. Those that a chain has are named as there.
const (
	Sling     = "sling"
	Rope      = "rope"
	Connector = "connector"
	Swivel    = "swivel"
	Seat      = "seat"
	Ring      = "ring"
	Sleeve    = "sleeve" // between line and bark
	Other     = "other"
)

// Materials of items.
const (
	Textile = "textile"
	Metal   = "metal"
)

// Item is one piece of gear.
type Item struct {
	ID       string `json:"id"` // what is written on it
	Name     string `json:"name"`
	Kind     string `json:"kind"`
	Material string `json:"material"`
	Standard string `json:"standard,omitempty"` // the one printed on it
	// Mark is the number printed on it and what that stands for.
	Mark      *survey.Mark           `json:"mark,omitempty"`
	Serial    string                 `json:"serial,omitempty"` // the maker's own number
	Length    *survey.MeasuredLength `json:"length,omitempty"`
	Thickness *survey.MeasuredLength `json:"thickness,omitempty"` // diameter or thickness
	Width     *survey.MeasuredLength `json:"width,omitempty"`
	Made      survey.Date            `json:"made,omitzero"`
	// InServiceSince is the first day of use. Without it a life counts from the
	// first use that is recorded, and what ages has no known history.
	InServiceSince survey.Date `json:"in_service_since,omitzero"`
	// LifeYears is the life that the maker gives it from first use.
	LifeYears *int `json:"life_years,omitempty"`
	// UseBy is the last day on which the maker allows its use, whatever use it
	// had.
	UseBy        survey.Date   `json:"use_by,omitzero"`
	Examinations []Examination `json:"examinations,omitempty"`
	Retired      *Retirement   `json:"retired,omitempty"`
	Note         string        `json:"note,omitempty"`
}

// What a thorough examination found.
const (
	Fit   = "fit"   // may stay in use
	Unfit = "unfit" // may not be used until an examination finds it fit
)

// Examination is a thorough examination by a competent person, not the look
// before use.
type Examination struct {
	On    survey.Date `json:"on"`
	By    string      `json:"by"`
	Found string      `json:"found"`
	// Next is the day by which that person wants the next one.
	Next survey.Date `json:"next,omitzero"`
	Note string      `json:"note,omitempty"`
}

// Retirement takes an item out of use for good.
type Retirement struct {
	On  survey.Date `json:"on"`
	Why string      `json:"why"`
}

// Use is one day on which items were in use.
type Use struct {
	Date   survey.Date `json:"date"`
	Outing string      `json:"outing,omitempty"` // id of the outing
	Items  []string    `json:"items"`            // ids of items
	Wet    bool        `json:"wet,omitempty"`    // they became wet
	Shock  bool        `json:"shock_loaded,omitempty"`
	Cycles int         `json:"cycles,omitempty"` // rides or swings counted, 0 for not counted
	Note   string      `json:"note,omitempty"`
}
