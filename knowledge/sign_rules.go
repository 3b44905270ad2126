package knowledge

import (
	"slices"
	"strconv"
	"strings"

	"boughline/engine/signs"
)

// loadSignRules reads what signs mean together. The effects of a rule follow
// from its urgency as those of a sign do.
func loadSignRules(l *loader, b *Base) []signs.Rule {
	var all []signs.Rule
	for _, r := range l.read("sign_rules") {
		rule := signs.Rule{
			ID: r.text("id"), Name: r.text("name"), Means: r.text("means"),
			Spot: word(r, "spot", signs.Spots()), Urgency: word(r, "urgency", signs.Urgencies()), Refs: r.refs,
		}
		scope := signs.Member
		if rule.Spot == signs.AnywhereOnTree {
			scope = signs.Tree
		}
		rule.ByPlacement = b.DefaultEffects(rule.Urgency, scope)
		for _, column := range []string{"first", "second", "third"} {
			if c, given := r.clause(column, b); given {
				rule.All = append(rule.All, c)
			}
		}
		rule.FromMemory, rule.PartlyFromMemory = r.memory()
		if len(rule.All) < 2 || len(rule.All[0].AnyOf) == 0 {
			r.problem("a rule takes two halves at least, and a sign in the first")
		}
		all = append(all, rule)
	}
	return all
}

// clause reads one half of a rule: a list of signs, or a quantity above a
// value, as in limb_length_m>8.
func (r row) clause(column string, b *Base) (c signs.Clause, given bool) {
	text := r.text(column)
	name, value, measured := strings.Cut(text, ">")
	if measured {
		c.Quantity = signs.Quantity(name)
		above, err := strconv.ParseFloat(value, 64)
		if err != nil || !slices.Contains(signs.Quantities(), c.Quantity) {
			r.problem("%s is %q, expected one of %q above a number", column, text, signs.Quantities())
		}
		c.Above = above
		return c, true
	}
	c.AnyOf = r.list(column)
	for _, id := range c.AnyOf {
		if _, known := b.signByID[id]; !known {
			r.problem("%s names %q, which is no sign", column, id)
		}
	}
	return c, len(c.AnyOf) > 0
}

// SignRules lists what signs mean together.
func (b *Base) SignRules() []signs.Rule { return slices.Clone(b.signRules) }
