package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/swing"
	"boughline/quantity"
)

type pendSlackjerkInputs struct {
	pendLine
	// Vertical drop.
	Drop         *float64 `json:"drop_h"`
	DampingRatio *float64 `json:"zeta"`
	DropDamping  *float64 `json:"c_Ns_m"`
	// Oblique drop inside the circle of the line.
	Angle    *float64     `json:"start_angle_deg"`
	Share    *float64     `json:"start_distance_fraction_of_L"`
	X        *float64     `json:"x0"`
	Depth    *float64     `json:"depth0"`
	Velocity pendVelocity `json:"velocity0"`
	End      *float64     `json:"t_end"`
}

// pendSlackjerk is a rider falling into a slack line, straight down or aside.
func pendSlackjerk(inputs json.RawMessage) (any, error) {
	in, err := read[pendSlackjerkInputs](inputs)
	if err != nil {
		return nil, err
	}
	s, err := in.swing()
	if err != nil {
		return nil, err
	}
	if in.Drop != nil {
		return in.vertical(s)
	}
	return in.oblique(s)
}

type verticalDropResults struct {
	Peak      float64  `json:"peak_force_N"`
	Extension float64  `json:"max_extension_m"`
	Speed     float64  `json:"speed_at_taut_m_s"`
	Ratio     float64  `json:"ratio_to_weight"`
	Formula   *float64 `json:"peak_force_formula_N,omitempty"`
}

// vertical follows the rider from the moment at which the line comes tight.
func (in pendSlackjerkInputs) vertical(s swing.ElasticSwing) (any, error) {
	g, k := gravity(in.Gravity), float64(s.Stiffness)
	if *in.Drop < 0 {
		return nil, fmt.Errorf("inputs.drop_h: %v m; expected 0 or more", *in.Drop)
	}
	ratio := or(in.DampingRatio, 0)
	s.Damping = swing.Damping(or(in.DropDamping, or(in.Damping, 2*ratio*math.Sqrt(k*in.Mass))))
	speed := math.Sqrt(2 * g * *in.Drop)
	window := quantity.Time(1.5 * math.Pi * math.Sqrt(in.Mass/k))
	spans, err := s.Move(swing.PlanarState{Depth: s.Length, VDepth: quantity.Speed(speed)}, window)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	results := verticalDropResults{
		Peak: float64(spans[0].PeakPull.Value), Extension: float64(spans[0].GreatestRadius.Value - s.Length),
		Speed: speed, Ratio: float64(spans[0].PeakPull.Value) / in.weight(),
	}
	if s.Damping == 0 {
		formula := float64(swing.Jerk(quantity.Force(in.weight()), s.Stiffness, quantity.Length(*in.Drop)))
		results.Formula = &formula
	}
	return results, nil
}

type obliqueDropResults struct {
	FreeFall *float64 `json:"free_fall_m"`
	TautTime *float64 `json:"t_taut_s"`
	Peak     float64  `json:"peak_force_N"`
	PeakTime float64  `json:"t_peak_s"`
	Lowest   float64  `json:"lowest_below_pivot_m"`
	Ratio    float64  `json:"ratio_to_weight"`
}

// oblique follows the rider from the start. Where the line never comes tight,
// the fall and its time are left empty.
func (in pendSlackjerkInputs) oblique(s swing.ElasticSwing) (any, error) {
	start, err := in.start(s)
	if err != nil {
		return nil, err
	}
	end := quantity.Time(or(in.End, float64(smallPeriod(in.Length, in.Gravity))))
	spans, err := s.Move(start, end)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	all := spans[0]
	results := obliqueDropResults{
		Peak: float64(all.PeakPull.Value), PeakTime: float64(all.PeakPull.At),
		Lowest: float64(all.LowestDepth.Value), Ratio: float64(all.PeakPull.Value) / in.weight(),
	}
	if all.Taut.Met {
		fall, at := float64(all.Taut.State.Depth-start.Depth), float64(all.Taut.At)
		results.FreeFall, results.TautTime = &fall, &at
	}
	return results, nil
}

func (in pendSlackjerkInputs) start(s swing.ElasticSwing) (swing.PlanarState, error) {
	if in.X != nil && in.Depth != nil {
		return in.Velocity.add(swing.PlanarState{X: quantity.Length(*in.X), Depth: quantity.Length(*in.Depth)}), nil
	}
	if in.Angle == nil {
		return swing.PlanarState{}, fmt.Errorf("inputs.drop_h: missing; expected it, or x0 and depth0, or start_angle_deg")
	}
	distance := s.Length * quantity.Length(or(in.Share, 1))
	return in.Velocity.add(swing.AtRest(quantity.Angle(*in.Angle)*quantity.Degree, distance)), nil
}
