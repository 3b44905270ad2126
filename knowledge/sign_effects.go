package knowledge

import "boughline/engine/signs"

// loadSignEffects reads the default effects of an urgency for a sign of one
// member. They are house values.
func loadSignEffects(l *loader) map[signs.Urgency]signs.ByPlacement {
	all := map[signs.Urgency]signs.ByPlacement{}
	for _, r := range l.read("sign_effects") {
		all[signs.Urgency(r.text("urgency"))] = signs.ByPlacement{
			OnLoadPath: r.effect("on_load_path"), AbovePeople: r.effect("above_people"), Elsewhere: r.effect("elsewhere"),
		}
	}
	return all
}

// DefaultEffects returns what a sign of the urgency and scope does in each
// placement unless its own row departs from it with a reason.
func (b *Base) DefaultEffects(u signs.Urgency, scope signs.Scope) signs.ByPlacement {
	return b.signEffects[u].Widen(scope)
}
