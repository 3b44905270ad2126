package assess

import (
	"math"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/quantity"
)

// inspectionReasons judges what was found, by itself and together, and what
// could not be looked at.
func (r *rig) inspectionReasons(people space.People) []Reason {
	findings := r.findingReasons(people)
	list := append(findings, r.ruleReasons(findings, people)...)
	return append(list, r.inspect(people, findings).lookReasons()...)
}

// ruleReasons names what findings mean together that each does not mean alone.
func (r *rig) ruleReasons(findings []Reason, people space.People) []Reason {
	seen, paths := r.seen(findings)
	if len(seen) == 0 {
		return nil
	}
	var list []Reason
	for _, m := range signs.Together(r.rules.signRules, seen, r.signParts(people)) {
		outcome, remark := outcomeOf(m.Effect)
		reason := Reason{Code: SignsTogether, Outcome: outcome, Remark: remark, Rule: &m.Rule, RuleID: m.Rule.ID, Effect: m.Effect,
			Placement: m.Placement, Refs: m.Rule.Refs, Text: m.Member, Change: r.ruleChange(m)}
		for _, s := range m.Seen {
			reason.Others = append(reason.Others, r.rules.sign[s.Sign.ID])
			reason.SignIDs = append(reason.SignIDs, s.Sign.ID)
			reason.Findings = append(reason.Findings, s.Finding)
		}
		if len(m.Seen) > 0 {
			reason.Path = paths[m.Seen[0].Finding]
		}
		list = append(list, reason)
	}
	return list
}

func (r *rig) ruleChange(m signs.Match) Change {
	scope := signs.Member
	if m.Rule.Spot == signs.AnywhereOnTree {
		scope = signs.Tree
	}
	return changeOf(m.Effect, signs.Sign{Scope: scope}, m.Placement)
}

// seen takes the findings out of their reasons, with the place of each in the
// document.
func (r *rig) seen(findings []Reason) (seen []signs.Seen, paths map[string]string) {
	members := map[string]string{}
	for i := range r.s.Findings {
		members[r.s.Findings[i].ID] = r.s.Findings[i].Member
	}
	paths = map[string]string{}
	for _, f := range findings {
		if f.Code != SignFound {
			continue
		}
		paths[f.Finding] = f.Path
		seen = append(seen, signs.Seen{Finding: f.Finding, Sign: *f.Sign, Member: members[f.Finding], Placement: f.Placement,
			Judged: signs.Judgement{Effect: f.Effect, Why: f.Why}})
	}
	return seen, paths
}

// signParts lists the members with what rules ask for, each value at its
// unfavourable end.
func (r *rig) signParts(people space.People) []signs.Part {
	var list []signs.Part
	for _, s := range r.order {
		list = append(list, signs.Part{
			Member: s.member.ID, Placement: signs.Placement{OnLoadPath: r.carriesHang(s), AbovePeople: s.parent != nil && r.overhangs(s, 0, people)},
			Quantities: r.signQuantities(s),
		})
	}
	return list
}

func (r *rig) signQuantities(s *shape) map[signs.Quantity]float64 {
	if s.parent == nil {
		return map[signs.Quantity]float64{signs.StemLean: r.lean(s)}
	}
	long := s.length()
	if s.member.Length != nil {
		long = math.Max(long, float64(resolve(r.k, *s.member.Length).High()))
	}
	thick := math.Max(float64(leastWood), float64(s.diameter(0).across.Low()))
	return map[signs.Quantity]float64{
		signs.LimbLength: long, signs.Slenderness: long / thick, signs.AspectRatio: r.aspect(s, unfavourable),
	}
}

// lean is the angle of the stem from the plumb line, deg; one that leans more
// than it was measured to is as likely as the other.
func (r *rig) lean(s *shape) float64 {
	up := s.points[len(s.points)-1].Sub(s.points[0]).Unit()
	lean := quantity.Angle(math.Acos(math.Min(1, math.Max(-1, up.Z))))
	if i := s.member.Inclination; i != nil && lean > 0 {
		lean += quantity.Angle(quantity.Tail * float64(resolve(r.k, *i).Sd))
	}
	return lean.Degrees()
}
