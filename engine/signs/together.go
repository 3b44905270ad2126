package signs

import (
	"cmp"
	"slices"

	"boughline/source"
)

// Quantity names a measured value of a member or a tree that a rule may ask
// for, each at its unfavourable end.
type Quantity string

// The quantities.
const (
	LimbLength  Quantity = "limb_length_m"    // along the limb from union to tip
	Slenderness Quantity = "limb_slenderness" // length over diameter at its foot
	AspectRatio Quantity = "aspect_ratio"     // limb over parent
	StemLean    Quantity = "stem_lean_deg"    // from the plumb line
)

// Quantities lists the quantities.
func Quantities() []Quantity { return []Quantity{LimbLength, Slenderness, AspectRatio, StemLean} }

// Spot says how near to one another the signs of a rule must stand.
type Spot string

const (
	// AnywhereOnTree: the whole tree is spoken of.
	AnywhereOnTree Spot = "tree"
	// OnOneMember: on the same limb or the stem. A sign without a member of
	// its own, or of the whole tree, counts on each.
	OnOneMember Spot = "member"
)

// Spots lists the spots.
func Spots() []Spot { return []Spot{AnywhereOnTree, OnOneMember} }

// Clause is one half of a rule: any of some signs, or a quantity above a value.
type Clause struct {
	AnyOf    []string
	Quantity Quantity
	Above    float64
}

// Rule says what signs mean together that each does not mean alone.
type Rule struct {
	ID      string
	Name    string
	Means   string
	All     []Clause // each must hold
	Spot    Spot
	Urgency Urgency
	ByPlacement

	Refs             []source.Ref
	FromMemory       bool
	PartlyFromMemory bool
}

// Seen is one finding as it stands on the tree, judged by itself.
type Seen struct {
	Finding   string
	Sign      Sign
	Member    string // empty where no member is named
	Placement Placement
	Judged    Judgement
}

// Part is a member of the tree with what was measured on it.
type Part struct {
	Member     string
	Placement  Placement
	Quantities map[Quantity]float64
}

// Match is a rule that holds.
type Match struct {
	Rule      Rule
	Member    string // that of the rule's spot; empty for the whole tree
	Seen      []Seen
	Placement Placement
	Effect    Effect // never below that of any of the signs by itself
}

// Together returns the rules that hold for what was seen, in the order of
// their ids and members. The order of rules, findings and parts does not
// matter. What was cleared away or looked at closer and found clear is not
// there to be counted.
func Together(rules []Rule, seen []Seen, parts []Part) []Match {
	seen = slices.DeleteFunc(slices.Clone(seen), func(s Seen) bool { return s.Judged.Why == WhyCleared || s.Judged.Why == WhyLookClear })
	slices.SortFunc(seen, bySeen)
	var list []Match
	for i := range rules {
		list = append(list, rules[i].matches(seen, parts)...)
	}
	slices.SortFunc(list, func(a, b Match) int {
		return cmp.Or(cmp.Compare(a.Rule.ID, b.Rule.ID), cmp.Compare(a.Member, b.Member))
	})
	return list
}

func bySeen(a, b Seen) int {
	return cmp.Or(cmp.Compare(a.Finding, b.Finding), cmp.Compare(a.Sign.ID, b.Sign.ID), cmp.Compare(a.Member, b.Member))
}

// matches holds the rule against the tree, or against each of its members.
func (r *Rule) matches(seen []Seen, parts []Part) []Match {
	if r.Spot == AnywhereOnTree {
		if m, ok := r.match(seen, parts); ok {
			return []Match{m}
		}
		return nil
	}
	var list []Match
	for i := range parts {
		here := seenAt(seen, parts[i].Member)
		m, ok := r.match(here, parts[i:i+1])
		if !ok {
			continue
		}
		m.Member = parts[i].Member
		list = append(list, m)
	}
	return list
}

// seenAt lists what counts on a member: what stands on it, and what has no
// member of its own.
func seenAt(seen []Seen, member string) []Seen {
	var here []Seen
	for _, s := range seen {
		if s.Member == member || s.Member == "" || s.Sign.Scope != Member {
			here = append(here, s)
		}
	}
	return here
}

// match reports whether every clause holds. A rule of the whole tree stands
// where any of its signs does. That of a member stands where its signs on that
// member do; where each half can be met by what has no place of its own, also
// where the member does.
func (r *Rule) match(seen []Seen, parts []Part) (Match, bool) {
	m := Match{Rule: *r}
	unplaced := true
	for _, c := range r.All {
		found, free := c.among(seen), c.measured(parts)
		if len(found) == 0 && !free {
			return Match{}, false
		}
		for _, s := range found {
			placed := r.Spot == AnywhereOnTree || s.Member != "" && s.Member == parts[0].Member
			if placed {
				m.Placement = m.Placement.or(s.Placement)
			}
			free = free || !placed
			m.Effect = max(m.Effect, s.Judged.Effect)
		}
		unplaced = unplaced && free
		m.Seen = append(m.Seen, found...)
	}
	if unplaced && len(parts) > 0 {
		m.Placement = m.Placement.or(parts[0].Placement)
	}
	m.Effect = max(m.Effect, r.at(m.Placement))
	return m, true
}

func (c Clause) among(seen []Seen) []Seen {
	var found []Seen
	for _, s := range seen {
		if slices.Contains(c.AnyOf, s.Sign.ID) {
			found = append(found, s)
		}
	}
	return found
}

func (c Clause) measured(parts []Part) bool {
	return c.Quantity != "" && slices.ContainsFunc(parts, func(p Part) bool { return p.Quantities[c.Quantity] > c.Above })
}

// at returns the effect in a placement.
func (e ByPlacement) at(p Placement) Effect {
	worst := e.Elsewhere
	if p.OnLoadPath {
		worst = max(worst, e.OnLoadPath)
	}
	if p.AbovePeople {
		worst = max(worst, e.AbovePeople)
	}
	return worst
}

func (p Placement) or(q Placement) Placement {
	return Placement{OnLoadPath: p.OnLoadPath || q.OnLoadPath, AbovePeople: p.AbovePeople || q.AbovePeople}
}
