package knowledge

import (
	"slices"
	"testing"

	"boughline/engine/signs"
	"boughline/source"
)

// onOne is a finding of a sign on the load path of one limb.
func onOne(t *testing.T, b *Base, id string) signs.Seen {
	t.Helper()
	s, ok := b.Sign(id)
	if !ok {
		t.Fatalf("no sign %s", id)
	}
	p := signs.Placement{OnLoadPath: true}
	return signs.Seen{Finding: id, Sign: s, Member: "limb", Placement: p, Judged: signs.Judge(s, p, signs.Open)}
}

// partWith is that limb with the quantities of some clauses just above, or just
// at, what they ask for.
func partWith(clauses []signs.Clause, above float64) []signs.Part {
	q := map[signs.Quantity]float64{}
	for _, c := range clauses {
		if c.Quantity != "" {
			q[c.Quantity] = c.Above + above
		}
	}
	return []signs.Part{{Member: "limb", Placement: signs.Placement{OnLoadPath: true}, Quantities: q}}
}

func fires(rule signs.Rule, seen []signs.Seen, parts []signs.Part) (signs.Effect, bool) {
	for _, m := range signs.Together([]signs.Rule{rule}, seen, parts) {
		return m.Effect, true
	}
	return signs.None, false
}

// Every rule holds for each choice of its signs, and for none of them with one
// half missing.
func TestEveryRuleFiresAndDoesNot(t *testing.T) {
	b := base(t)
	for _, rule := range b.SignRules() {
		var first []signs.Seen
		for _, c := range rule.All {
			for _, id := range c.AnyOf {
				var seen []signs.Seen
				for _, other := range rule.All {
					if !slices.Contains(other.AnyOf, id) && other.Quantity == "" {
						seen = append(seen, onOne(t, b, other.AnyOf[0]))
					}
				}
				seen = append(seen, onOne(t, b, id))
				effect, ok := fires(rule, seen, partWith(rule.All, 0.01))
				if !ok || effect < rule.OnLoadPath {
					t.Errorf("%s with %s: fires %v with %v, want %v at least", rule.ID, id, ok, effect, rule.OnLoadPath)
				}
				first = seen
			}
		}
		for i, c := range rule.All {
			if c.Quantity != "" {
				if _, ok := fires(rule, first, partWith(rule.All, 0)); ok {
					t.Errorf("%s fires at %s of just %g", rule.ID, c.Quantity, c.Above)
				}
				continue
			}
			less := slices.DeleteFunc(slices.Clone(first), func(s signs.Seen) bool { return slices.Contains(c.AnyOf, s.Sign.ID) })
			if _, ok := fires(rule, less, partWith(rule.All, 0.01)); ok {
				t.Errorf("%s fires without its half %d", rule.ID, i+1)
			}
		}
	}
}

// The rules that must be there. NA-FR-01-96 (USDA Forest Service 1996) names
// moving soil with a lean, a crack that meets another fault, and a thin top as
// a mark of lost roots; the others are common practice, no published source.
func TestTheRulesOfTheTrade(t *testing.T) {
	b := base(t)
	for id, want := range map[string]struct {
		effect signs.Effect
		source string
	}{
		"heave-with-lean":             {signs.Bars, "usfs-hazard-1996"},
		"ridge-with-hollow-sound":     {signs.Bars, "horttrades-2002"},
		"dead-top-with-root-damage":   {signs.Bars, "usfs-hazard-1996"},
		"crack-with-decay":            {signs.Bars, "usfs-hazard-1996"},
		"shelter-gone-with-long-limb": {signs.Bars, "practice"},
		"lean-with-wet-ground":        {signs.Bars, "practice"},
		"ivy-over-a-thin-top":         {signs.Arborist, "practice"},
	} {
		i := slices.IndexFunc(b.SignRules(), func(r signs.Rule) bool { return r.ID == id })
		if i < 0 {
			t.Errorf("no rule %s", id)
			continue
		}
		if r := b.SignRules()[i]; r.OnLoadPath != want.effect || r.Refs[0].Source.Key != want.source {
			t.Errorf("%s: %v by %s, want %v by %s", id, r.OnLoadPath, r.Refs[0].Source.Key, want.effect, want.source)
		}
	}
}

// A rule says more than its signs: some choice of them weighs less by itself.
func TestRulesRaise(t *testing.T) {
	b := base(t)
	if n := len(b.SignRules()); n < 14 {
		t.Errorf("only %d rules", n)
	}
	for _, rule := range b.SignRules() {
		least := signs.Bars
		for _, c := range rule.All {
			for _, id := range c.AnyOf {
				s, _ := b.Sign(id)
				least = min(least, s.OnLoadPath)
			}
		}
		if least >= rule.OnLoadPath {
			t.Errorf("%s weighs %v, and so does each of its signs", rule.ID, rule.OnLoadPath)
		}
		if len(rule.Refs) == 0 || rule.Means == "" {
			t.Errorf("%s has no source or says nothing", rule.ID)
		}
		if kind := rule.Refs[0].Source.Kind; rule.FromMemory != (kind == source.Memory || kind == source.Practice || kind == source.House) && !rule.PartlyFromMemory {
			t.Errorf("%s: from memory is %v, its source is of kind %s", rule.ID, rule.FromMemory, kind)
		}
	}
}
