package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/gear"
	"boughline/quantity"
)

func catenary(inputs json.RawMessage) (any, error) {
	in, err := read[struct {
		Span     float64 `json:"span_m"`
		RightY   float64 `json:"right_support_y"`
		LoadX    float64 `json:"load_x"`
		LoadDrop float64 `json:"load_drop_below_left_support"`
		Weight   float64 `json:"weight_N_per_m"`
		Load     float64 `json:"point_load_N"`
	}](inputs)
	if err != nil {
		return nil, err
	}
	t, err := gear.TraverseLine{
		Right:  spot([2]float64{in.Span, in.RightY}),
		Load:   spot([2]float64{in.LoadX, -in.LoadDrop}),
		Weight: quantity.Force(in.Weight),
		Point:  quantity.Force(in.Load),
	}.Solve()
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	return map[string]any{
		"H_N":                        t.Horizontal,
		"T_left_support_N":           t.Left.Pull,
		"T_right_support_N":          t.Right.Pull,
		"T_left_of_load_N":           t.PullLeftOfLoad,
		"T_right_of_load_N":          t.PullRightOfLoad,
		"V_left_support_N":           t.Left.Vertical,
		"V_right_support_N":          t.Right.Vertical,
		"angle_left_support_deg":     t.Left.Below.Degrees(),
		"angle_right_support_deg":    t.Right.Below.Degrees(),
		"length_left_m":              t.LengthLeft,
		"length_right_m":             t.LengthRight,
		"length_total_m":             t.LengthLeft + t.LengthRight,
		"drop_of_load_below_chord_m": t.DropBelowChord,
		"weightless_H_N":             t.WeightlessHorizontal,
		"same_length_no_load": map[string]any{
			"H_N":                         t.Empty.Horizontal,
			"T_left_support_N":            t.Empty.PullLeft,
			"T_right_support_N":           t.Empty.PullRight,
			"greatest_drop_below_chord_m": t.Empty.DropBelowChord,
			"at_x_m":                      t.Empty.At,
		},
	}, nil
}

func hammock(inputs json.RawMessage) (any, error) {
	in, err := read[struct {
		Span        float64 `json:"span_m"`
		RightY      float64 `json:"right_anchor_y"`
		LeftStrap   float64 `json:"left_strap_m"`
		Body        float64 `json:"body_chord_m"`
		RightStrap  float64 `json:"right_strap_m"`
		LoadLeft    float64 `json:"load_left_N"`
		LoadRight   float64 `json:"load_right_N"`
		HeightLeft  float64 `json:"anchor_height_left_m"`
		HeightRight float64 `json:"anchor_height_right_m"`
	}](inputs)
	if err != nil {
		return nil, err
	}
	p, err := gear.Hammock{
		RightAnchor: spot([2]float64{in.Span, in.RightY}),
		LeftStrap:   quantity.Length(in.LeftStrap),
		Body:        quantity.Length(in.Body),
		RightStrap:  quantity.Length(in.RightStrap),
		LoadLeft:    quantity.Force(in.LoadLeft),
		LoadRight:   quantity.Force(in.LoadRight),
	}.Solve()
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	return map[string]any{
		"H_N":                              p.Horizontal,
		"T_left_N":                         p.Left.Pull,
		"T_body_N":                         p.BodyPull,
		"T_right_N":                        p.Right.Pull,
		"angle_left_below_horizontal_deg":  p.Left.Below.Degrees(),
		"angle_body_deg":                   p.BodyRise.Degrees(),
		"angle_right_below_horizontal_deg": p.Right.Below.Degrees(),
		"left_point":                       [2]quantity.Length{p.LeftOfBody.X, p.LeftOfBody.Y},
		"right_point":                      [2]quantity.Length{p.RightOfBody.X, p.RightOfBody.Y},
		"V_left_N":                         p.Left.Vertical,
		"V_right_N":                        p.Right.Vertical,
		"moment_at_left_stem_base_Nm":      float64(p.Horizontal) * in.HeightLeft,
		"moment_at_right_stem_base_Nm":     float64(p.Horizontal) * in.HeightRight,
		"T_left_over_total_weight":         float64(p.Left.Pull) / (in.LoadLeft + in.LoadRight),
	}, nil
}
