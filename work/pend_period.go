package work

import (
	"encoding/json"
	"fmt"
	"strconv"

	"boughline/engine/swing"
	"boughline/quantity"
)

type pendPeriodInputs struct {
	Gravity    *float64  `json:"g"`
	Length     float64   `json:"L"`
	Mass       float64   `json:"m"`
	Amplitudes []float64 `json:"amplitude_deg"`
}

type pendPeriodResults struct {
	SmallPeriod  float64            `json:"T_small_s"`
	Ratios       []float64          `json:"period_ratio"`
	Periods      []float64          `json:"period_s"`
	PeakPull     map[string]float64 `json:"peak_tension_over_mg"`
	PullAtAngles [][2]any           `json:"tension_over_mg_at_angle"`
}

// pendPeriod is the swing on a rigid rod: period and pull at each amplitude,
// and the pull on the way at every 15 degrees.
func pendPeriod(inputs json.RawMessage) (any, error) {
	in, err := read[pendPeriodInputs](inputs)
	if err != nil {
		return nil, err
	}
	small := float64(swing.SmallPeriod(quantity.Length(in.Length))) * slower(in.Gravity)
	results := pendPeriodResults{SmallPeriod: small, PeakPull: map[string]float64{}, PullAtAngles: pullTable()}
	for i, degrees := range in.Amplitudes {
		amplitude := quantity.Angle(degrees) * quantity.Degree
		period, err := swing.RodPeriod(quantity.Length(in.Length), amplitude)
		if err != nil {
			return nil, fmt.Errorf("inputs.amplitude_deg[%d]: %w", i, err)
		}
		results.Ratios = append(results.Ratios, float64(swing.PeriodRatio(amplitude)))
		results.Periods = append(results.Periods, float64(period)*slower(in.Gravity))
		results.PeakPull[strconv.FormatFloat(degrees, 'g', -1, 64)] = pullOverWeight(amplitude, 0)
	}
	return results, nil
}

// pullTable is the pull over the weight on the way of swings of 15 to 90
// degrees, from the bottom to the end.
func pullTable() [][2]any {
	var table [][2]any
	for end := 15; end <= 90; end += 15 {
		var row [][2]float64
		for at := 0; at <= end; at += 15 {
			row = append(row, [2]float64{float64(at), pullOverWeight(quantity.Angle(end)*quantity.Degree, quantity.Angle(at)*quantity.Degree)})
		}
		table = append(table, [2]any{end, row})
	}
	return table
}

func pullOverWeight(amplitude, at quantity.Angle) float64 {
	const mass = quantity.Mass(1)
	return float64(swing.Pull(mass, amplitude, at) / mass.Weight())
}
