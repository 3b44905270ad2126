package signs

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"pgregory.net/rapid"
)

var (
	stopsTree   = ByPlacement{Bars, Bars, Bars}
	stopsMember = ByPlacement{Bars, Bars, Remark}
	heaveLean   = Rule{ID: "heave-lean", All: []Clause{{AnyOf: []string{"heave", "gap"}}, {AnyOf: []string{"lean"}}}, Spot: AnywhereOnTree, ByPlacement: stopsTree}
	longHoles   = Rule{ID: "long-holes", All: []Clause{{AnyOf: []string{"holes"}}, {Quantity: LimbLength, Above: 8}}, Spot: OnOneMember, ByPlacement: stopsMember}
	shelterGone = Rule{ID: "shelter-long", All: []Clause{{AnyOf: []string{"shelter"}}, {Quantity: LimbLength, Above: 8}}, Spot: OnOneMember, ByPlacement: stopsMember}
	scorchHoles = Rule{ID: "scorch-holes", All: []Clause{{AnyOf: []string{"scorch"}}, {AnyOf: []string{"holes"}}}, Spot: OnOneMember, ByPlacement: stopsMember}
)

func seenOn(member, id string, p Placement) Seen {
	scope := Member
	if member == "" {
		scope = Tree
	}
	return Seen{Finding: id + " on " + member, Sign: Sign{ID: id, Scope: scope}, Member: member, Placement: p, Judged: Judgement{Effect: Remark, Why: WhyElsewhere}}
}

func limbOf(member string, length float64, p Placement) Part {
	return Part{Member: member, Placement: p, Quantities: map[Quantity]float64{LimbLength: length}}
}

func TestTogether(t *testing.T) {
	rules := []Rule{heaveLean, longHoles, shelterGone, scorchHoles}
	used, far := limbOf("used", 9, onPath), limbOf("far", 9, elsewhere)
	parts := []Part{used, far}
	cleared := seenOn("used", "holes", onPath)
	cleared.Judged.Why = WhyLookClear
	for _, c := range []struct {
		name  string
		seen  []Seen
		parts []Part
		want  string
	}{
		{"nothing", nil, parts, ""},
		{"heave alone", []Seen{seenOn("", "heave", onPath)}, parts, ""},
		{"lean alone", []Seen{seenOn("", "lean", onPath)}, parts, ""},
		{"heave with lean", []Seen{seenOn("", "heave", onPath), seenOn("", "lean", onPath)}, parts, "heave-lean  bars;"},
		{"either way of the first half", []Seen{seenOn("", "gap", elsewhere), seenOn("", "lean", elsewhere)}, parts, "heave-lean  bars;"},
		{"holes in the long limb in use", []Seen{seenOn("used", "holes", onPath)}, parts, "long-holes used bars;"},
		{"holes beyond the hang point", []Seen{seenOn("used", "holes", elsewhere)}, parts, "long-holes used remark;"},
		{"holes in a short limb", []Seen{seenOn("used", "holes", onPath)}, []Part{limbOf("used", 8, onPath)}, ""},
		{"holes in the far limb", []Seen{seenOn("far", "holes", elsewhere)}, parts, "long-holes far remark;"},
		{"holes looked at and clear", []Seen{cleared}, parts, ""},
		{"the shelter of both limbs", []Seen{seenOn("", "shelter", overhead)}, parts, "shelter-long far remark;shelter-long used bars;"},
		{"two signs on two limbs", []Seen{seenOn("used", "scorch", onPath), seenOn("far", "holes", elsewhere)}, []Part{limbOf("used", 5, onPath), limbOf("far", 5, elsewhere)}, ""},
		{"two signs on one limb", []Seen{seenOn("used", "scorch", elsewhere), seenOn("used", "holes", onPath)}, []Part{limbOf("used", 5, onPath)}, "scorch-holes used bars;"},
	} {
		got := ""
		for _, m := range Together(rules, c.seen, c.parts) {
			got += fmt.Sprintf("%s %s %v;", m.Rule.ID, m.Member, m.Effect)
		}
		if got != c.want {
			t.Errorf("%s: got %q, want %q", c.name, got, c.want)
		}
	}
}

func drawSeen(t *rapid.T) []Seen {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Seen {
		s := seenOn(rapid.SampledFrom([]string{"", "used", "far"}).Draw(t, "member"), rapid.SampledFrom([]string{"heave", "gap", "lean", "holes", "shelter", "scorch"}).Draw(t, "sign"),
			rapid.SampledFrom([]Placement{onPath, overhead, both, elsewhere}).Draw(t, "placement"))
		s.Judged.Effect = rapid.SampledFrom(Effects()).Draw(t, "effect")
		s.Finding = rapid.StringN(1, 3, 3).Draw(t, "finding")
		return s
	}), 0, 6).Draw(t, "seen")
}

// The order of rules, findings and members does not matter.
func TestTogetherInAnyOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rules, seen := []Rule{heaveLean, longHoles, shelterGone, scorchHoles}, drawSeen(t)
		parts := []Part{limbOf("used", 9, onPath), limbOf("far", 7, elsewhere)}
		want := codesOf(Together(rules, seen, parts))
		turn := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1))
		turn.Shuffle(len(rules), reflect.Swapper(rules))
		turn.Shuffle(len(seen), reflect.Swapper(seen))
		turn.Shuffle(len(parts), reflect.Swapper(parts))
		if got := codesOf(Together(rules, seen, parts)); got != want {
			t.Fatalf("in another order %s, at first %s", got, want)
		}
	})
}

func codesOf(list []Match) string {
	text := ""
	for _, m := range list {
		text += fmt.Sprint(m.Rule.ID, m.Member, m.Effect, m.Placement, len(m.Seen), ";")
	}
	return text
}

// A rule never weighs less than any of its signs by itself, and one more
// finding never makes it weigh less or takes it away.
func TestTogetherOnlyRaises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rules, seen := []Rule{heaveLean, longHoles, shelterGone, scorchHoles}, drawSeen(t)
		parts := []Part{limbOf("used", 9, onPath), limbOf("far", 9, elsewhere)}
		before := map[string]Effect{}
		for _, m := range Together(rules, seen, parts) {
			for _, s := range m.Seen {
				if s.Judged.Effect > m.Effect {
					t.Fatalf("%s weighs %v, one of its signs %v", m.Rule.ID, m.Effect, s.Judged.Effect)
				}
			}
			before[m.Rule.ID] = max(before[m.Rule.ID], m.Effect)
		}
		more := Together(rules, append(seen, drawSeen(t)...), parts)
		for id, effect := range before {
			after := None
			for _, m := range more {
				if m.Rule.ID == id {
					after = max(after, m.Effect)
				}
			}
			if after < effect {
				t.Fatalf("%s weighs %v, with more found %v", id, effect, after)
			}
		}
	})
}
