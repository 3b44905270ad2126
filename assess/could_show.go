package assess

import (
	"slices"
	"strings"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

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

// couldShow reports whether a look was made, still counts, and could show the
// sign.
func (t *tree) couldShow(look *survey.Look, sign *signs.Sign) bool {
	return look.State == survey.LookDone && !t.lapsed(look) && !slices.Contains(look.NotVisible, sign.ID) && sign.CouldShow(t.conditionsOf(look))
}
