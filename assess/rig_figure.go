package assess

import (
	"boughline/engine/gear"
	"boughline/engine/swing"
	"boughline/quantity"
	"boughline/survey"
)

// LinkFigure is one part of the rig with what it bears and what is asked of
// it, at the use asked for.
type LinkFigure struct {
	Part *survey.Part
	// Known is false where the strength is not known; then nothing below
	// counts.
	Known              bool
	Strength, Required quantity.Force
	Margin             float64
	Weakest            bool // the least margin of those known
	Reductions         []gear.Reduction
}

// Rig works out every link of the chain, from the limb down.
func (h HangFigure) Rig() ([]LinkFigure, error) {
	r := h.rig
	links := make([]LinkFigure, len(r.gear.Parts))
	for i := range links {
		links[i].Part = &r.gear.Parts[i]
	}
	mass := r.asked.mass + r.riders.seat
	result, err := r.links().Check(mass.Weight(), swing.PeakPull(mass, angle(r.rules.designAmplitude)), r.factors())
	if err != nil {
		return links, err
	}
	for i, checked := range result.Links {
		links[i].Reductions, links[i].Weakest = checked.Reductions, i == result.Weakest
		if b := checked.Bearing; b != nil {
			links[i].Known, links[i].Strength, links[i].Required, links[i].Margin = true, b.Strength, b.Required, b.Margin
		}
	}
	return links, nil
}
