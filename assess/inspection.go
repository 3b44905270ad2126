package assess

import (
	"slices"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/survey"
)

// inspection is the looks at a tree as they bear on one hang.
type inspection struct {
	*rig
	parts map[signs.Zone][]string // what a look at each zone must cover
	found map[string]bool         // signs that were found and weigh more than a remark here
	clear map[string]bool         // stand-ins judged so far
	stood map[string]*Reason      // signs that could not show and are stood for, by the cause
}

func (r *rig) inspect(people space.People, findings []Reason) *inspection {
	i := &inspection{rig: r, parts: map[signs.Zone][]string{}, found: map[string]bool{}, clear: map[string]bool{}, stood: map[string]*Reason{}}
	for _, zone := range signs.Zones() {
		i.parts[zone] = r.partsOf(string(zone), people)
	}
	for _, f := range findings {
		if f.Effect > signs.Remark {
			i.found[f.SignID] = true
		}
	}
	return i
}

// notVisible judges the signs that could not show at a look: a stand-in that
// was looked at and clear, or an earlier look that could show them, completes
// it. What lay in the way of many signs is told once.
func (i *inspection) notVisible(zone, part string, look *survey.Look, index int) []Reason {
	var list []Reason
	covered := Reason{Code: LookCovered, Outcome: Unfinished, Zone: zone, Text: part, Covers: look.InTheWay,
		Path: element(i.path+".looks", index), Change: Change{Code: ChangeLook}}
	for _, h := range i.hiddenAt(look) {
		reason := Reason{Code: SignNotVisible, Outcome: Unfinished, Zone: zone, Sign: h.sign, SignID: h.sign.ID, Others: i.standInsOf(h.sign),
			Path: covered.Path, Text: part, Refs: h.sign.Refs, Change: Change{Code: ChangeLook}}
		what, stated, clear := standIn(look, h.sign.ID)
		switch {
		case clear:
			reason.Code, reason.Outcome, reason.Remark, reason.Change, reason.Text = StandIn, MayHang, true, Change{}, what
		case i.shown(zone, part, h.sign):
			i.stand(h, nil)
			continue
		case !stated && i.stoodFor(h.sign):
			i.stand(h, reason.Others)
			continue
		case h.cause == causeCover:
			covered.Others = append(covered.Others, h.sign)
			covered.SignIDs = append(covered.SignIDs, h.sign.ID)
			continue
		}
		list = append(list, reason)
	}
	if len(covered.SignIDs) > 0 {
		list = append(list, covered)
	}
	return list
}

// standIn returns what the surveyor looked at instead of a sign.
func standIn(look *survey.Look, sign string) (what string, stated, clear bool) {
	for _, s := range look.StandIns {
		if s.Sign != sign {
			continue
		}
		if stated = true; s.Clear {
			return s.What, true, true
		}
	}
	return "", stated, false
}

// stand notes a sign that could not show, with the signs that stand for it; none
// where a dated look does.
func (i *inspection) stand(h hidden, by []*signs.Sign) {
	r, begun := i.stood[h.cause]
	if !begun {
		r = &Reason{Code: StoodFor, Remark: true, Path: i.path + ".looks", Text: h.cause}
		i.stood[h.cause] = r
	}
	if slices.Contains(r.SignIDs, h.sign.ID) {
		return
	}
	r.Others, r.SignIDs = append(r.Others, h.sign), append(r.SignIDs, h.sign.ID)
	for _, s := range by {
		if !slices.Contains(r.StandInIDs, s.ID) {
			r.StandIns, r.StandInIDs = append(r.StandIns, s), append(r.StandInIDs, s.ID)
		}
	}
}

// shown reports whether any look at a part that still counts could show the
// sign.
func (t *tree) shown(zone, part string, sign *signs.Sign) bool {
	for j := range t.s.Looks {
		if look := &t.s.Looks[j]; covers(look, zone, part) && t.couldShow(look, sign) {
			return true
		}
	}
	return false
}

// stoodFor reports whether all that stands in for a sign was looked for, could
// show, and was not found, or only where it does not matter for this hang.
func (i *inspection) stoodFor(sign *signs.Sign) bool {
	for _, id := range sign.StandIns {
		if !i.isClear(id) {
			return false
		}
	}
	return len(sign.StandIns) > 0
}

func (i *inspection) isClear(id string) bool {
	if known, ok := i.clear[id]; ok {
		return known
	}
	sign, ok := i.rules.sign[id]
	if !ok {
		return false
	}
	clear := !i.found[id]
	for _, part := range i.parts[sign.Zone] {
		clear = clear && i.shown(string(sign.Zone), part, sign)
	}
	i.clear[id] = clear
	return clear
}

// standInsOf lists the signs that stand in for a sign.
func (t *tree) standInsOf(sign *signs.Sign) []*signs.Sign {
	var list []*signs.Sign
	for _, id := range sign.StandIns {
		if s, ok := t.rules.sign[id]; ok {
			list = append(list, s)
		}
	}
	return list
}

// stoodForReasons remarks, once for each cause, on what could not show and is
// stood for.
func (i *inspection) stoodForReasons() []Reason {
	var list []Reason
	for _, cause := range []string{string(signs.NeedsLeaves), string(signs.NeedsBareCrown), string(signs.NeedsWind), string(signs.NeedsToadstool), causeCover, causeStated} {
		if r, ok := i.stood[cause]; ok {
			list = append(list, *r)
		}
	}
	return list
}
