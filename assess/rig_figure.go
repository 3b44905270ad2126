package assess

import (
	"boughline/engine/gear"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// LinkFigure is one part of the rig with what it bears and what is asked of
// it, at the use asked for.
type LinkFigure struct {
	Part *survey.Part
	Path string // of the part in the document
	// Known is false where the strength is not known; then nothing below
	// counts.
	Known              bool
	Strength, Required quantity.Force
	Margin             float64
	Weakest            bool // the least margin of those known
	Reductions         []gear.Reduction
	Marked             gear.Mark
	MarkRef            *source.Ref // of a mark that a standard stands in for
	// Steps are the reductions one after the other, with what is left.
	Steps []StrengthStep
	Rule  gear.Rule // the demand that governs
	// PartPull is the pull in one of the parts side by side for each unit on the
	// chain, 1 for a single one.
	PartPull float64
}

// StrengthStep is one cause for which a part keeps only a share, and the
// strength that is left after it.
type StrengthStep struct {
	gear.Reduction
	Left quantity.Force
	Ref  source.Ref
}

// Rig works out every link of the chain, from the limb down.
func (h HangFigure) Rig() ([]LinkFigure, error) {
	r := h.rig
	links := make([]LinkFigure, len(r.gear.Parts))
	for i := range links {
		links[i].Part, links[i].Path = &r.gear.Parts[i], element(r.gearAt+".parts", i)
	}
	mass := r.asked.mass + r.riders.seat
	chain := r.links()
	result, err := chain.Check(mass.Weight(), swing.PeakPull(mass, angle(r.rules.designAmplitude)), r.factors())
	if err != nil {
		return links, err
	}
	for i, checked := range result.Links {
		l := &links[i]
		l.Reductions, l.Weakest, l.Marked = checked.Reductions, i == result.Weakest, chain[i].Mark
		l.MarkRef, l.PartPull = r.markRef(l.Part), max(chain[i].PartPull, 0)
		if l.PartPull == 0 {
			l.PartPull = 1
		}
		if b := checked.Bearing; b != nil {
			l.Known, l.Strength, l.Required, l.Margin, l.Rule = true, b.Strength, b.Required, b.Margin, b.Rule
			l.Steps = r.strengthSteps(chain[i].Mark.Value, checked.Reductions, chain[i])
		}
	}
	return links, nil
}

// markRef is the standard whose least strength stands in for a mark.
func (r *rig) markRef(p *survey.Part) *source.Ref {
	if g, ok := r.k.Gear(p.Standard); ok && p.Mark == nil {
		return &g.Least.Ref
	}
	return nil
}

func (r *rig) strengthSteps(left quantity.Force, reductions []gear.Reduction, l gear.Link) []StrengthStep {
	var steps []StrengthStep
	for _, reduction := range reductions {
		left *= quantity.Force(reduction.Share)
		steps = append(steps, StrengthStep{reduction, left, r.reductionRef(reduction, l)})
	}
	return steps
}

// reductionRef is where a share is from: the table, or the ceiling that every
// knot is held to which nobody has tested.
func (r *rig) reductionRef(reduction gear.Reduction, l gear.Link) source.Ref {
	ceiling := r.k.Parameter(knowledge.KnotShare)
	if k, ok := r.k.Knot(reduction.Cause); ok && float64(reduction.Share) < ceiling.Value {
		return k.Share.Ref
	} else if ok && isSplice(k.Name) {
		return k.Share.Ref
	}
	if h, ok := r.k.Hitch(reduction.Cause); ok {
		return h.Share.Ref
	}
	switch reduction.Cause {
	case "choke angle":
		share, _ := r.k.ChokeAngle(l.ChokeAngle)
		return share.Ref
	case "bend":
		return r.k.Parameter(knowledge.BendLossCoefficient).Ref
	}
	return ceiling.Ref
}
