package signs

import "boughline/source"

// Season is a condition without which a sign cannot show.
type Season string

// The conditions. AnyTime is the zero value.
const (
	AnyTime      Season = ""
	InWind       Season = "wind"
	InLeaf       Season = "leaf"
	FungusSeason Season = "fungus season"
)

// Sign is something the inspection looks for, with what it does where.
type Sign struct {
	ID         string
	Zone       Zone
	Name       string
	LookFor    string
	MayMean    string
	WorseIf    string
	CloserLook string   // the look or measurement that tells more
	Concerns   []string // load_path, falling_from_above, tree_health, people_health, law, habitat
	Urgency    Urgency
	Scope      Scope

	OnLoadPath  Effect
	AbovePeople Effect
	Elsewhere   Effect
	// Departure is the reason why the three effects differ from the default
	// of the urgency and scope; empty where they don't.
	Departure string

	// ShowsIn is the condition without which the sign cannot show, and
	// StandIns are the signs to look for instead on a day without it.
	ShowsIn  Season
	StandIns []string

	Refs             []source.Ref // the governing one first
	FromMemory       bool         // nothing of it was read in a source
	PartlyFromMemory bool         // some of it was not read in a source
}
