package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/gear"
	"boughline/quantity"
)

// rope works out one of several kinds of question about lines and gear.
func rope(inputs json.RawMessage) (any, error) {
	in, err := read[struct {
		Kind string `json:"kind"`
	}](inputs)
	if err != nil {
		return nil, err
	}
	switch in.Kind {
	case "capstan":
		return capstan(inputs)
	case "two_leg":
		return twoLeg(inputs)
	case "chain":
		return chain(inputs)
	case "catenary":
		return catenary(inputs)
	case "hammock":
		return hammock(inputs)
	}
	return nil, fmt.Errorf("inputs.kind: %q; expected capstan, two_leg, chain, catenary or hammock", in.Kind)
}

func capstan(inputs json.RawMessage) (any, error) {
	in, err := read[struct {
		Load     float64 `json:"load_N"`
		Surfaces []struct {
			Friction float64 `json:"mu"`
			Turns    float64 `json:"turns"`
		} `json:"surfaces_from_load"`
		Hold float64 `json:"hold_available_N"`
	}](inputs)
	if err != nil {
		return nil, err
	}
	if len(in.Surfaces) == 0 {
		return nil, fmt.Errorf("inputs.surfaces_from_load: there are none; expected one or more")
	}
	between, whole := []float64{}, 1.0
	for i, s := range in.Surfaces {
		ratio, err := gear.CapstanRatio(s.Friction, turns(s.Turns))
		if err != nil {
			return nil, fmt.Errorf("inputs.surfaces_from_load[%d]: %w", i, err)
		}
		whole *= ratio
		if i < len(in.Surfaces)-1 {
			between = append(between, in.Load/whole)
		}
	}
	results := map[string]any{
		"least_hold_N":    in.Load / whole,
		"greatest_hold_N": in.Load * whole,
	}
	if len(between) == 1 {
		results["tension_between_N"] = between[0]
	} else {
		results["tension_between_N"] = between
	}
	if len(in.Surfaces) > 1 {
		wrap, err := gear.WrapToHold(quantity.Force(in.Load), quantity.Force(in.Hold), in.Surfaces[1].Friction)
		if err != nil {
			return nil, fmt.Errorf("inputs: %w", err)
		}
		needed := float64(wrap / turns(1))
		results["turns_needed_second_alone"] = needed
		results["half_turns_rounded_up"] = math.Ceil(2 * needed)
	}
	return results, nil
}

func turns(n float64) quantity.Angle { return quantity.Angle(2 * math.Pi * n) }

func twoLeg(inputs json.RawMessage) (any, error) {
	in, err := read[struct {
		Load         float64      `json:"load_N"`
		Left         [2]float64   `json:"anchor_left"`
		Right        [2]float64   `json:"anchor_right"`
		LegLeft      float64      `json:"leg_left_m"`
		LegRight     float64      `json:"leg_right_m"`
		ChokeAngles  []float64    `json:"choke_angle_list_deg"`
		ChokeTable   [][2]float64 `json:"choke_table_angle_from_factor"`
		WorkingLimit float64      `json:"sling_WLL_N"`
		ChokerBase   float64      `json:"choke_base_factor"`
	}](inputs)
	if err != nil {
		return nil, err
	}
	hang, err := gear.HangBetween(spot(in.Left), spot(in.Right),
		quantity.Length(in.LegLeft), quantity.Length(in.LegRight), quantity.Force(in.Load))
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	table := make([]gear.ChokeStep, len(in.ChokeTable))
	for i, row := range in.ChokeTable {
		table[i] = gear.ChokeStep{From: quantity.Angle(row[0]) * quantity.Degree, Share: quantity.Proportion(row[1])}
	}
	factors, limits, used := []float64{}, []float64{}, []float64{}
	for i, angle := range in.ChokeAngles {
		share, err := gear.ChokeShare(quantity.Angle(angle)*quantity.Degree, table)
		if err != nil {
			return nil, fmt.Errorf("inputs.choke_angle_list_deg[%d]: %w", i, err)
		}
		limit := in.WorkingLimit * in.ChokerBase * float64(share)
		factors, limits = append(factors, float64(share)), append(limits, limit)
		used = append(used, float64(max(hang.PullLeft, hang.PullRight))/limit)
	}
	return map[string]any{
		"node_x":                        hang.Node.X,
		"node_y":                        hang.Node.Y,
		"T_left_N":                      hang.PullLeft,
		"T_right_N":                     hang.PullRight,
		"angle_left_from_vertical_deg":  hang.Left.Degrees(),
		"angle_right_from_vertical_deg": hang.Right.Degrees(),
		"horizontal_N":                  hang.Horizontal,
		"choke_factors":                 factors,
		"choke_working_load_N":          limits,
		"choke_utilisation":             used,
	}, nil
}

func spot(xy [2]float64) gear.Spot {
	return gear.Spot{X: quantity.Length(xy[0]), Y: quantity.Length(xy[1])}
}
