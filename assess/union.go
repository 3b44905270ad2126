package assess

import (
	"boughline/engine/union"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// unionOf returns the record of the union at the foot of a member and its path
// in the document, nil where there is none.
func (t *tree) unionOf(s *shape) (*survey.Union, string) {
	for i := range t.s.Unions {
		if t.s.Unions[i].Member == s.member.ID {
			return &t.s.Unions[i], element(t.path+".unions", i)
		}
	}
	return nil, ""
}

// aspect is the diameter of the limb beyond its collar over that of its parent
// just above the union.
func (t *tree) aspect(s *shape, side scenario) float64 {
	limb := s.diameter(0).across
	parent := t.parentDiameter(s)
	a, err := union.Aspect(limb.High(), max(leastWood, parent.Low()))
	if side == favourable {
		a, err = union.Aspect(max(leastWood, limb.Low()), parent.High())
	}
	if err != nil { // a diameter of 0 was refused when the survey was read
		return 1
	}
	return a
}

func (t *tree) parentDiameter(s *shape) quantity.Measured[quantity.Length] {
	if u, _ := t.unionOf(s); u != nil && u.Parent != nil {
		return resolve(t.k, *u.Parent)
	}
	return s.parent.diameter(s.rises).across
}

// barkIncluded reports whether bark is turned into the union. A V counts as
// included until seen otherwise.
func (t *tree) barkIncluded(s *shape) bool {
	u, _ := t.unionOf(s)
	if u == nil {
		return false
	}
	return u.Bark == survey.BarkInclude || u.Form == survey.FormV && u.Bark != survey.BarkRidge
}

// formFactor is the share of the limb's strength that its union has.
func (t *tree) formFactor(s *shape, side scenario) float64 {
	k, err := t.rules.form.Factor(t.aspect(s, side))
	if err != nil { // the curve is checked by a test of the tables
		return 0
	}
	if t.barkIncluded(s) {
		k *= t.rules.includedFactor.Value
	}
	return k
}

func (t *tree) unionTerms(part *limbPart) []Term {
	_, path := t.unionOf(part.on)
	parent := t.parentDiameter(part.on)
	list := []Term{
		{Symbol: "D_p", Name: "diameter of the parent just above", Value: float64(parent.Value), Unit: "m", Sd: float64(parent.Sd), How: parent.How, Path: path},
		{Symbol: "a_r", Name: "aspect ratio, limb over parent", Value: t.aspect(part.on, unfavourable), Unit: "1"},
		{Symbol: "k_form", Name: "share of strength by aspect ratio", Value: t.formFactor(part.on, unfavourable), Unit: "1",
			Refs: []source.Ref{t.rules.formFirst.Ref, t.rules.formLast.Ref}},
	}
	if t.barkIncluded(part.on) {
		list = append(list, factTerm("k_bark", "share of strength with bark turned in", t.rules.includedFactor))
	}
	return list
}

// unionReasons judges the unions of the load path by their look.
func (r *rig) unionReasons() []Reason {
	var list []Reason
	for i := range r.limbs {
		list = append(list, r.unionReason(r.limbs[i].on))
	}
	return list
}

func (r *rig) unionReason(s *shape) Reason {
	u, path := r.unionOf(s)
	aspect := r.aspect(s, unfavourable)
	terms := []Term{
		{Symbol: "a_r", Name: "aspect ratio, limb over parent", Value: aspect, Unit: "1"},
		factTerm("a_max", "aspect ratio above which an arborist is asked", r.rules.expertAspect),
	}
	switch {
	case u == nil:
		return Reason{Code: UnionNotDescribed, Outcome: Unfinished, Zone: "union", Path: r.path + ".unions", Text: s.member.ID, Change: Change{Code: ChangeDescribe}}
	case r.barkIncluded(s):
		reason := Reason{Code: BarkIncluded, Outcome: Leave, Zone: "union", Path: path, Text: s.member.ID, Change: Change{Code: ChangeOtherLimb},
			Terms: []Term{factTerm("k_bark", "share of strength with bark turned in", r.rules.includedFactor)}}
		if u.Bark != survey.BarkInclude {
			reason.Code, reason.Change = UnionIsV, Change{Code: ChangeLook}
		}
		return reason
	case u.Form == survey.NotSeen || u.Bark == survey.NotSeen:
		return Reason{Code: UnionNotSeen, Outcome: Unfinished, Zone: "union", Path: path, Text: s.member.ID, Change: Change{Code: ChangeLook}}
	case aspect > r.rules.expertAspect.Value:
		return Reason{Code: AspectHigh, Outcome: AskArborist, Zone: "union", Path: path, Text: s.member.ID, Terms: terms, Change: Change{Code: ChangeArborist}}
	}
	return Reason{Code: GoodUnion, Remark: true, Zone: "union", Path: path, Text: s.member.ID, Terms: terms[:1]}
}
