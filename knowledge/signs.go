package knowledge

import (
	"slices"

	"boughline/engine/signs"
)

func loadSigns(l *loader) []signs.Sign {
	var all []signs.Sign
	for _, r := range l.read("signs") {
		s := signs.Sign{
			ID: r.text("id"), Zone: signs.Zone(r.text("zone")), Name: r.text("name"), LookFor: r.text("look_for"),
			MayMean: r.text("may_mean"), WorseIf: r.text("worse_if"), CloserLook: r.text("closer_look"),
			Concerns: r.list("concerns"), Urgency: signs.Urgency(r.text("urgency")), Scope: signs.Scope(r.text("scope")),
			OnLoadPath: r.effect("on_load_path"), AbovePeople: r.effect("above_people"), Elsewhere: r.effect("elsewhere"),
			Departure: r.text("departure"), ShowsIn: signs.Season(r.text("shows_in")), StandIns: r.list("stand_ins"),
			Refs: r.refs,
		}
		s.FromMemory, s.PartlyFromMemory = r.memory()
		if !slices.Contains(signs.Zones(), s.Zone) {
			r.problem("the zone %q is not known", s.Zone)
		}
		if !slices.Contains(signs.Urgencies(), s.Urgency) {
			r.problem("the urgency %q is not known", s.Urgency)
		}
		if !slices.Contains(signs.Scopes(), s.Scope) {
			r.problem("the scope %q is not known", s.Scope)
		}
		all = append(all, s)
	}
	return all
}

func (r row) effect(column string) signs.Effect {
	e, err := signs.ParseEffect(r.text(column))
	if err != nil {
		r.problem("%s: %v", column, err)
	}
	return e
}

// Signs lists the signs from the crown down.
func (b *Base) Signs() []signs.Sign { return slices.Clone(b.signs) }

// Sign returns the sign with the id.
func (b *Base) Sign(id string) (signs.Sign, bool) {
	i := slices.IndexFunc(b.signs, func(s signs.Sign) bool { return s.ID == id })
	if i < 0 {
		return signs.Sign{}, false
	}
	return b.signs[i], true
}
