package assess

import (
	"slices"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/survey"
)

// lookReasons names every look that bears on this hang and is missing, out of
// date, or could not show what it was for.
func (r *rig) lookReasons(people space.People) []Reason {
	var list []Reason
	for _, zone := range survey.Zones {
		for _, part := range r.partsOf(zone, people) {
			list = append(list, r.lookAt(zone, part)...)
		}
	}
	return list
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
func (r *rig) lookAt(zone, part string) []Reason {
	look, index := r.newestLook(zone, part)
	reason := Reason{Outcome: Unfinished, Zone: zone, Text: part, Path: r.path + ".looks", Change: Change{Code: ChangeLook}}
	switch {
	case look == nil:
		reason.Code = LookMissing
		return []Reason{reason}
	case look.State == survey.LookNotDone:
		reason.Code, reason.Path = LookMissing, element(r.path+".looks", index)
		return []Reason{reason}
	case look.State == survey.LookBlocked:
		reason.Code, reason.Path = LookBlocked, element(r.path+".looks", index)
		return []Reason{reason}
	case r.lapsed(look):
		reason.Code, reason.Path = LookOld, element(r.path+".looks", index)
		return []Reason{reason}
	}
	return r.notVisible(zone, part, look, index)
}

// newestLook returns the newest look that covers a part; of two on one day the
// later in the list.
func (r *rig) newestLook(zone, part string) (newest *survey.Look, index int) {
	for i := range r.s.Looks {
		look := &r.s.Looks[i]
		if !covers(look, zone, part) {
			continue
		}
		if newest == nil || !r.dayOf(newest).After(r.dayOf(look)) {
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
func (r *rig) dayOf(look *survey.Look) survey.Date {
	if look.On.IsZero() {
		return r.survey.Day
	}
	return look.On
}

// lapsed reports whether a look no longer counts, or does not count yet.
func (r *rig) lapsed(look *survey.Look) bool {
	on := r.dayOf(look)
	return on.After(r.survey.Day) || r.tooOld(on)
}

// tooOld reports whether what was seen on a day has lapsed.
func (t *tree) tooOld(on survey.Date) bool {
	return t.survey.Day.After(on.AddMonths(int(t.rules.lookMonths.Value)))
}

// notVisible judges the signs that could not show on the day of a look: a
// stand-in that was clear, or an earlier look that could show them, completes
// the look.
func (r *rig) notVisible(zone, part string, look *survey.Look, index int) []Reason {
	var list []Reason
	for _, id := range r.hiddenAt(look) {
		sign, ok := r.k.Sign(id)
		if !ok || max(sign.OnLoadPath, sign.AbovePeople, sign.Elsewhere) < signs.CloserLook {
			continue
		}
		reason := Reason{Code: SignNotVisible, Outcome: Unfinished, Zone: zone, Sign: &sign, SignID: id,
			Path: element(r.path+".looks", index), Text: part, Refs: sign.Refs, Change: Change{Code: ChangeLook}}
		if what, clear := standIn(look, id); clear || r.shownEarlier(zone, part, id, look) {
			reason.Code, reason.Outcome, reason.Remark, reason.Change = StandIn, MayHang, true, Change{}
			reason.Text = what
		}
		list = append(list, reason)
	}
	return list
}

// hiddenAt lists the signs that could not show at a look: those that the
// surveyor names, and unless the crowns are said to be in leaf those that only
// leaves show.
func (r *rig) hiddenAt(look *survey.Look) []string {
	hidden := slices.Clone(look.NotVisible)
	if w := r.survey.Wind; w != nil && w.InLeaf != nil && *w.InLeaf {
		return hidden
	}
	for _, sign := range r.k.Signs() {
		if string(sign.Zone) == look.Zone && sign.ShowsIn == signs.InLeaf && !slices.Contains(hidden, sign.ID) {
			hidden = append(hidden, sign.ID)
		}
	}
	return hidden
}

func standIn(look *survey.Look, sign string) (what string, clear bool) {
	for _, s := range look.StandIns {
		if s.Sign == sign && s.Clear {
			return s.What, true
		}
	}
	return "", false
}

// shownEarlier reports whether a look that still counts could show the sign.
func (r *rig) shownEarlier(zone, part, sign string, newest *survey.Look) bool {
	for i := range r.s.Looks {
		look := &r.s.Looks[i]
		if look != newest && covers(look, zone, part) && look.State == survey.LookDone && !r.lapsed(look) && !slices.Contains(look.NotVisible, sign) {
			return true
		}
	}
	return false
}
