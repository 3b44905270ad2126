package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/swing"
	"boughline/quantity"
)

type pendDragInputs struct {
	Gravity    *float64 `json:"g"`
	Length     float64  `json:"L"`
	Mass       float64  `json:"m"`
	DragArea   float64  `json:"CdA"`
	AirDensity *float64 `json:"rho_air"`
	Amplitude  float64  `json:"theta0_deg"`
	HalfSwings *int     `json:"half_swings"`
}

// Used where a file leaves them out: air at 15 degrees C and sea level (ISO
// 2533:1975, from memory), and ten half swings.
const (
	standardAir       = 1.225 // kg/m3
	defaultHalfSwings = 10
)

// pendDrag is the swing of a rider on a rigid line against air drag.
func pendDrag(inputs json.RawMessage) (any, error) {
	in, err := read[pendDragInputs](inputs)
	if err != nil {
		return nil, err
	}
	count := or(in.HalfSwings, defaultHalfSwings)
	if count < 1 {
		return nil, fmt.Errorf("inputs.half_swings: %d; expected 1 or more", count)
	}
	halves, err := swing.PlanarSwing{
		Length: quantity.Length(in.Length), Mass: quantity.Mass(in.Mass),
		DragArea: quantity.Area(in.DragArea), AirDensity: quantity.Density(or(in.AirDensity, standardAir)),
		Amplitude: quantity.Angle(in.Amplitude) * quantity.Degree, Gravity: swing.Acceleration(gravity(in.Gravity)),
	}.HalfSwings(count)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	var amplitudes []float64
	for _, half := range halves {
		amplitudes = append(amplitudes, half.Amplitude.Degrees())
	}
	return map[string]any{
		"amplitude_deg_after_half_swing":                  amplitudes,
		fmt.Sprintf("time_after_%d_half_swings_s", count): float64(halves[count-1].End),
		"peak_tension_N_first_half_swing":                 float64(halves[0].PeakPull.Value),
		"speed_at_bottom_first_m_s":                       float64(halves[0].BottomSpeed),
	}, nil
}
