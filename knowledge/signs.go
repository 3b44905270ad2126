package knowledge

import (
	"slices"

	"boughline/engine/signs"
)

func loadSigns(l *loader) []signs.Sign {
	var all []signs.Sign
	for _, r := range l.read("signs") {
		s := signs.Sign{
			ID: r.text("id"), Zone: word(r, "zone", signs.Zones()), Name: r.text("name"), LookFor: r.text("look_for"),
			MayMean: r.text("may_mean"), WorseIf: r.text("worse_if"),
			CloserLook: r.text("closer_look"), Methods: wordList(r, "methods", signs.Methods()),
			Concerns: r.list("concerns"), Urgency: word(r, "urgency", signs.Urgencies()), Scope: word(r, "scope", signs.Scopes()),
			OnLoadPath: r.effect("on_load_path"), AbovePeople: r.effect("above_people"), Elsewhere: r.effect("elsewhere"),
			Departure: r.text("departure"),
			Needs:     word(r, "needs", append(signs.Needs(), signs.NeedsNothing)), HiddenBy: wordList(r, "hidden_by", signs.Covers()),
			StandIns: r.list("stand_ins"), Instead: r.text("instead"), Hosts: r.list("hosts"),
			Refs: r.refs,
		}
		s.FromMemory, s.PartlyFromMemory = r.memory()
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

// indexSigns maps the id of each sign to its place in the list.
func indexSigns(all []signs.Sign) map[string]int {
	index := make(map[string]int, len(all))
	for i := range all {
		index[all[i].ID] = i
	}
	return index
}

// Signs lists the signs from the crown down.
func (b *Base) Signs() []signs.Sign { return slices.Clone(b.signs) }

// Sign returns the sign with the id.
func (b *Base) Sign(id string) (signs.Sign, bool) {
	i, ok := b.signByID[id]
	if !ok {
		return signs.Sign{}, false
	}
	return b.signs[i], true
}
