package work

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"boughline/engine/gear"
	"boughline/quantity"
)

type chainInputs struct {
	Load         float64     `json:"load_F_N"`
	DesignFactor float64     `json:"design_factor"`
	Links        []chainLink `json:"links"`
}

type chainLink struct {
	Name           string   `json:"name"`
	Strength       float64  `json:"strength_N"`
	Pull           float64  `json:"tension_per_unit_load"`
	KnotFactor     float64  `json:"knot_factor"`
	AngleFactor    float64  `json:"angle_factor"`
	BendOver       *float64 `json:"bend_D"`
	Thickness      *float64 `json:"rope_d"`
	Count          int      `json:"count"`
	Length         float64  `json:"length_m"`
	AxialStiffness *float64 `json:"EA_N"`
}

type chainLinkResult struct {
	Name        string  `json:"name"`
	BendShare   float64 `json:"Dd_factor"`
	Effective   float64 `json:"effective_strength_N"`
	WorkingLoad float64 `json:"working_load_of_chain_N"`
	Tension     float64 `json:"tension_at_F_N"`
	Utilisation float64 `json:"utilisation_at_F"`
}

// link describes the part to the engine. One without a stiffness counts as
// metal, which may be rigid; the demand is the same for both here.
func (l chainLink) link() gear.Link {
	link := gear.Link{
		Name:     l.Name,
		Mark:     gear.Mark{Kind: gear.Breaking, Value: quantity.Force(l.Strength)},
		Parts:    l.Count,
		PartPull: l.Pull,
		Knots:    []gear.Knot{{Name: "knot", Share: quantity.Proportion(l.KnotFactor), Tested: true}},
		Wear:     []gear.Reduction{{Cause: "angle", Share: quantity.Proportion(l.AngleFactor)}},
		Length:   quantity.Length(l.Length),
		Material: gear.Metal,
	}
	if l.BendOver != nil && l.Thickness != nil {
		link.BendOver, link.Thickness = quantity.Length(*l.BendOver), quantity.Length(*l.Thickness)
	}
	if l.AxialStiffness != nil {
		link.Material, link.AxialStiffness = gear.Textile, quantity.Force(*l.AxialStiffness)
	}
	return link
}

func chain(inputs json.RawMessage) (any, error) {
	in, err := read[chainInputs](inputs)
	if err != nil {
		return nil, err
	}
	if len(in.Links) == 0 {
		return nil, fmt.Errorf("inputs.links: there are none; expected one or more")
	}
	var links gear.Chain
	for _, l := range in.Links {
		links = append(links, l.link())
	}
	demand := gear.Demand{OnPeak: in.DesignFactor}
	result, err := links.Check(0, quantity.Force(in.Load), gear.Factors{TextileBreaking: demand, MetalBreaking: demand})
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	each, total, err := links.Stretch(quantity.Force(in.Load))
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	margin := result.Links[result.Weakest].Bearing.Margin
	return chainFigures(in, result, map[string]any{
		"weakest":                   result.Links[result.Weakest].Name,
		"working_load_N":            margin * in.Load,
		"holds_F":                   margin >= 1,
		"stretch_each_m":            each,
		"stretch_total_m":           total,
		"stretch_at_working_load_m": float64(total) * margin,
		"energy_at_F_J":             in.Load * float64(total) / 2,
		"chain_stiffness_N_per_m":   finite(in.Load / float64(total)),
	}), nil
}

// chainFigures adds what is known link by link.
func chainFigures(in chainInputs, result gear.Result, figures map[string]any) map[string]any {
	var rows []chainLinkResult
	var margins []float64
	for i, checked := range result.Links {
		bend := 1.0
		for _, r := range checked.Reductions {
			if r.Cause == "bend" {
				bend = float64(r.Share)
			}
		}
		margin := checked.Bearing.Margin
		margins = append(margins, margin)
		rows = append(rows, chainLinkResult{
			Name:        checked.Name,
			BendShare:   bend,
			Effective:   float64(checked.Bearing.Strength),
			WorkingLoad: margin * in.Load,
			Tension:     in.Links[i].Pull * in.Load,
			Utilisation: 1 / margin,
		})
	}
	figures["links"] = rows
	if slices.Sort(margins); len(margins) > 1 {
		figures["second_weakest_over_weakest"] = margins[1] / margins[0]
	}
	return figures
}

// finite returns nil, which is written as null, for what JSON cannot hold.
func finite(x float64) *float64 {
	if math.IsInf(x, 0) || math.IsNaN(x) {
		return nil
	}
	return &x
}
