package assess

import (
	"slices"
	"strings"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/knowledge"
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

// conditionsOf is the state of tree, air, season and ground at a look, as far
// as it is known.
func (t *tree) conditionsOf(look *survey.Look) signs.Conditions {
	c := signs.Conditions{Leaves: signs.Leaves(look.Leaves), Air: signs.Air(look.Air), Toadstools: t.toadstools(t.dayOf(look))}
	for _, cover := range look.InTheWay {
		c.InTheWay = append(c.InTheWay, signs.Cover(cover))
	}
	if c.Leaves == "" && t.evergreen() {
		c.Leaves = signs.InLeaf
	}
	near := !t.survey.Day.After(t.dayOf(look).AddMonths(int(t.rules.leafMonths.Value)))
	if w := t.survey.Wind; c.Leaves == "" && near && w != nil && w.InLeaf != nil {
		c.Leaves = signs.BareCrown
		if *w.InLeaf {
			c.Leaves = signs.InLeaf
		}
	}
	return c
}

// deciduousConifers shed their needles in autumn.
var deciduousConifers = []string{"Larix", "Taxodium", "Metasequoia", "Pseudolarix", "Glyptostrobus"}

// evergreen reports whether the tree is known to bear its leaves all year.
func (t *tree) evergreen() bool {
	genus, _, _ := strings.Cut(t.species.Scientific, " ")
	return t.species.Known && t.species.Group == knowledge.Conifer && !slices.Contains(deciduousConifers, genus)
}

// toadstools reports whether the fungi of one summer stand on a day. South of
// the equator the year is turned by half.
func (t *tree) toadstools(day survey.Date) bool {
	month := t.northernMonth(day)
	return int(t.rules.toadstoolsFrom.Value) <= month && month <= int(t.rules.toadstoolsTo.Value)
}

// northernMonth is the month of the same season north of the equator.
func (t *tree) northernMonth(day survey.Date) int {
	if p := t.survey.Place; p != nil && p.Latitude < 0 {
		return (day.Month()+5)%12 + 1
	}
	return day.Month()
}

// hidden is a sign that could not show at a look, and why.
type hidden struct {
	sign  *signs.Sign
	cause string
}

// Causes other than a need of the sign.
const (
	causeStated = "stated" // the surveyor says so
	causeCover  = "cover"  // something lay in the way
)

// hiddenAt lists the signs that could not show at a look and would count.
func (t *tree) hiddenAt(look *survey.Look) []hidden {
	var list []hidden
	c := t.conditionsOf(look)
	for _, sign := range t.rules.lookedFor[signs.Zone(look.Zone)] {
		cause := ""
		switch {
		case slices.Contains(look.NotVisible, sign.ID):
			cause = causeStated
		case !sign.GrowsOn(t.species.Scientific):
		case len(sign.CoveredBy(c)) > 0:
			cause = causeCover
		case !sign.CouldShow(c):
			cause = string(sign.Needs)
		}
		if cause != "" {
			list = append(list, hidden{sign, cause})
		}
	}
	return list
}

func signsByID(all []signs.Sign) map[string]*signs.Sign {
	byID := make(map[string]*signs.Sign, len(all))
	for i := range all {
		byID[all[i].ID] = &all[i]
	}
	return byID
}

// lookedFor lists the signs of each zone that would count if they were found.
func lookedFor(all []signs.Sign) map[signs.Zone][]*signs.Sign {
	byZone := map[signs.Zone][]*signs.Sign{}
	for i := range all {
		if s := &all[i]; max(s.OnLoadPath, s.AbovePeople, s.Elsewhere) >= signs.CloserLook {
			byZone[s.Zone] = append(byZone[s.Zone], s)
		}
	}
	return byZone
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

// couldShow reports whether a look was made, still counts, and could show the
// sign.
func (t *tree) couldShow(look *survey.Look, sign *signs.Sign) bool {
	return look.State == survey.LookDone && !t.lapsed(look) && !slices.Contains(look.NotVisible, sign.ID) && sign.CouldShow(t.conditionsOf(look))
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
