package knowledge

import (
	"slices"

	"boughline/quantity"
	"boughline/source"
)

// Effort is how long it takes to measure one thing better, or to look at one
// zone, with the way to do it.
type Effort struct {
	What    string
	How     quantity.How
	Minutes source.Fact
}

// Things that can be measured better. A look at a zone is LookEffort and the
// name of the zone.
const (
	LimbDiameterEffort   = "limb-diameter"
	LimbGirthsEffort     = "limb-girths"
	StemDiameterEffort   = "stem-diameter"
	ParentDiameterEffort = "parent-diameter"
	ArmEffort            = "arm"
	LimbBarkEffort       = "limb-bark"
	RidersEffort         = "riders"
	LookEffort           = "look-"
)

func loadEfforts(l *loader) []Effort {
	var all []Effort
	for _, r := range l.read("effort") {
		e := Effort{What: r.text("what"), How: quantity.How(r.text("how")), Minutes: r.factOf(r.number("minutes"), r.number("low"), r.number("high"), "min")}
		if !slices.Contains(quantity.Hows(), e.How) {
			r.problem("%q is no way of measuring", e.How)
		}
		if !(e.Minutes.Low > 0) {
			r.problem("it takes %v minutes; expected more than 0", e.Minutes.Low)
		}
		all = append(all, e)
	}
	return all
}

// Effort returns how long one thing takes; false if the table does not hold it.
func (b *Base) Effort(what string) (Effort, bool) {
	i := slices.IndexFunc(b.efforts, func(e Effort) bool { return e.What == what })
	if i < 0 {
		return Effort{}, false
	}
	return b.efforts[i], true
}
