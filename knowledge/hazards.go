package knowledge

import (
	"slices"

	"boughline/engine/signs"
	"boughline/quantity"
)

// hazardGroups are the headings of the table of hazards.
var hazardGroups = []string{"things", "wildlife", "law", "insects", "plants"}

func loadHazards(l *loader) []signs.Hazard {
	var all []signs.Hazard
	for _, r := range l.read("hazards") {
		h := signs.Hazard{
			ID: r.text("id"), Group: word(r, "group", hazardGroups), Name: r.text("name"), LookFor: r.text("look_for"), Means: r.text("means"),
			From: r.whole("month_from"), To: r.whole("month_to"), Reach: quantity.Length(r.number("reach_m")),
			Near: r.effect("near"), Beyond: r.effect("beyond"), Do: r.text("do"), CheckWith: r.text("check_with"), Sign: r.text("sign"),
			Refs: r.refs,
		}
		h.FromMemory, h.PartlyFromMemory = r.memory()
		if h.From < 0 || h.From > 12 || h.To < 0 || h.To > 12 || (h.From == 0) != (h.To == 0) {
			r.problem("months from %d to %d; expected 1 to 12, or 0 for both", h.From, h.To)
		}
		all = append(all, h)
	}
	return all
}

// Hazards lists what at a site can hurt people or must not be harmed.
func (b *Base) Hazards() []signs.Hazard { return slices.Clone(b.hazards) }

// Hazard returns the hazard with the id.
func (b *Base) Hazard(id string) (signs.Hazard, bool) {
	i := slices.IndexFunc(b.hazards, func(h signs.Hazard) bool { return h.ID == id })
	if i < 0 {
		return signs.Hazard{}, false
	}
	return b.hazards[i], true
}
