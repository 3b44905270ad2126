package signs

import "boughline/source"

// Sign is something the inspection looks for, with what it does where.
type Sign struct {
	ID         string
	Zone       Zone
	Name       string
	LookFor    string
	MayMean    string
	WorseIf    string
	CloserLook string   // the look or measurement that tells more
	Methods    []Method // how and with what that look is made
	Concerns   []string // load_path, falling_from_above, tree_health, people_health, law, habitat
	Urgency    Urgency
	Scope      Scope

	OnLoadPath  Effect
	AbovePeople Effect
	Elsewhere   Effect
	// Departure is the reason why the three effects differ from the default
	// of the urgency and scope; empty where they don't.
	Departure string

	// Needs is what it takes for the sign to show, HiddenBy what may lie in
	// its way. StandIns are signs that, looked for and clear, complete a look
	// at which this one could not show; Instead says what else would.
	Needs    Need
	HiddenBy []Cover
	StandIns []string
	Instead  string
	Hosts    []string // genera on which alone it occurs; none means any

	Refs             []source.Ref // the governing one first
	FromMemory       bool         // nothing of it was read in a source
	PartlyFromMemory bool         // some of it was not read in a source
}
