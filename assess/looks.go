package assess

import (
	"slices"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/survey"
)

// lookReasons names every look that bears on this hang and is missing, out of
// date, or could not show what it was for, and what stands in for that.
func (i *inspection) lookReasons() []Reason {
	var list []Reason
	for _, zone := range signs.Zones() {
		for _, part := range i.parts[zone] {
			list = append(list, i.lookAt(string(zone), part)...)
		}
	}
	return append(list, i.stoodForReasons()...)
}

// partsOf lists the members that a look at a zone must cover: the limbs of the
// load path and those above the people, the unions of the load path. Other
// zones are looked at as a whole.
func (r *rig) partsOf(zone string, people space.People) []string {
	if zone != string(signs.Limb) && zone != string(signs.Union) {
		return []string{""}
	}
	var parts []string
	for _, part := range r.limbs {
		parts = append(parts, part.on.member.ID)
	}
	if zone == string(signs.Limb) {
		for _, s := range r.limbsAbove(people) {
			parts = append(parts, s.member.ID)
		}
	}
	return parts
}

// lookAt judges the newest look at one zone and part.
func (i *inspection) lookAt(zone, part string) []Reason {
	look, index := i.newestLook(zone, part)
	reason := Reason{Code: LookMissing, Outcome: Unfinished, Zone: zone, Text: part, Path: i.path + ".looks", Change: Change{Code: ChangeLook}}
	if look == nil {
		return []Reason{reason}
	}
	reason.Path = element(i.path+".looks", index)
	switch {
	case look.State == survey.LookNotDone:
	case look.State == survey.LookBlocked:
		reason.Code = LookBlocked
	case i.lapsed(look):
		reason.Code = LookOld
	default:
		return i.notVisible(zone, part, look, index)
	}
	return []Reason{reason}
}

// newestLook returns the newest look that covers a part; of two on one day the
// later in the list.
func (t *tree) newestLook(zone, part string) (newest *survey.Look, index int) {
	for i := range t.s.Looks {
		look := &t.s.Looks[i]
		if !covers(look, zone, part) {
			continue
		}
		if newest == nil || !t.dayOf(newest).After(t.dayOf(look)) {
			newest, index = look, i
		}
	}
	return newest, index
}

// covers reports whether a look was at a zone, and at a part of it where one is
// asked for. A look at some members is none at the whole zone.
func covers(look *survey.Look, zone, part string) bool {
	return look.Zone == zone && (len(look.Members) == 0 || part != "" && slices.Contains(look.Members, part))
}

// dayOf is the day of a look; one without a day was made on the day of the
// survey.
func (t *tree) dayOf(look *survey.Look) survey.Date {
	if look.On.IsZero() {
		return t.survey.Day
	}
	return look.On
}

// lapsed reports whether a look no longer counts, or does not count yet.
func (t *tree) lapsed(look *survey.Look) bool {
	on := t.dayOf(look)
	return on.After(t.survey.Day) || t.tooOld(on)
}

// tooOld reports whether what was seen on a day has lapsed.
func (t *tree) tooOld(on survey.Date) bool {
	return t.survey.Day.After(on.AddMonths(int(t.rules.lookMonths.Value)))
}
