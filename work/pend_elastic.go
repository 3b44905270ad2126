package work

import (
	"encoding/json"
	"fmt"
	"strings"

	"boughline/engine/swing"
	"boughline/quantity"
)

// pendLine is a stretching line with its rider, as the files give it.
type pendLine struct {
	Gravity     *float64 `json:"g"`
	Length      float64  `json:"L_natural"`
	Mass        float64  `json:"m"`
	EA          *float64 `json:"EA"`
	Stiffness   *float64 `json:"k"`
	TensionOnly *bool    `json:"tension_only"`
	Damping     *float64 `json:"damping"`
}

func (in pendLine) swing() (swing.ElasticSwing, error) {
	if !or(in.TensionOnly, true) {
		return swing.ElasticSwing{}, fmt.Errorf("inputs.tension_only: false; expected true, a line does not push")
	}
	if in.Stiffness == nil && in.EA == nil {
		return swing.ElasticSwing{}, fmt.Errorf("inputs.k: missing; expected it, or EA")
	}
	return swing.ElasticSwing{
		Length: quantity.Length(in.Length), Mass: quantity.Mass(in.Mass),
		Stiffness: quantity.Stiffness(or(in.Stiffness, or(in.EA, 0)/in.Length)),
		Damping:   swing.Damping(or(in.Damping, 0)), Gravity: swing.Acceleration(gravity(in.Gravity)),
	}, nil
}

func (in pendLine) weight() float64 { return in.Mass * gravity(in.Gravity) }

// pendVelocity is a velocity at the start: 0, or its parts sideways and down.
type pendVelocity [2]float64

// UnmarshalJSON implements json.Unmarshaler.
func (v *pendVelocity) UnmarshalJSON(data []byte) error {
	var speed float64
	if json.Unmarshal(data, &speed) == nil && speed == 0 {
		return nil
	}
	var parts []float64
	if json.Unmarshal(data, &parts) == nil && len(parts) == 2 {
		copy(v[:], parts)
		return nil
	}
	return fmt.Errorf("velocity0 is %s; expected 0, or its parts sideways and down", data)
}

func (v pendVelocity) add(state swing.PlanarState) swing.PlanarState {
	state.VX, state.VDepth = quantity.Speed(v[0]), quantity.Speed(v[1])
	return state
}

type pendElasticInputs struct {
	pendLine
	Angle    float64      `json:"theta0_deg"`
	Distance *float64     `json:"r_initial"`
	Initial  string       `json:"initial"`
	Velocity pendVelocity `json:"velocity0"`
	End      *float64     `json:"t_end"`
}

type pendElasticResults struct {
	FirstWindow    float64 `json:"first_pass_window_s"`
	FirstPeak      float64 `json:"peak_rope_force_first_pass_N"`
	FirstPeakTime  float64 `json:"t_peak_first_pass_s"`
	Peak           float64 `json:"peak_rope_force_N"`
	PeakTime       float64 `json:"t_peak_s"`
	PeakRatio      float64 `json:"ratio_to_rigid_2mg"`
	Lowest         float64 `json:"lowest_point_below_pivot_m"`
	LowestTime     float64 `json:"t_lowest_s"`
	LowestX        float64 `json:"lowest_x_m"`
	GreatestRadius float64 `json:"max_radius_m"`
	LeastForce     float64 `json:"min_force_N"`
}

// pendElastic is the swing on a line that stretches: the first pass in half a
// small period, and all that happens to the end.
func pendElastic(inputs json.RawMessage) (any, error) {
	in, err := read[pendElasticInputs](inputs)
	if err != nil {
		return nil, err
	}
	s, err := in.swing()
	if err != nil {
		return nil, err
	}
	small := smallPeriod(in.Length, in.Gravity)
	end := quantity.Time(or(in.End, 1.25*float64(small)))
	spans, err := s.Move(in.start(s), rising(small/2, end)...)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	first, all := spans[0], spans[len(spans)-1]
	return pendElasticResults{
		FirstWindow: float64(min(small/2, end)),
		FirstPeak:   float64(first.PeakPull.Value), FirstPeakTime: float64(first.PeakPull.At),
		Peak: float64(all.PeakPull.Value), PeakTime: float64(all.PeakPull.At),
		PeakRatio: float64(all.PeakPull.Value) / (2 * in.weight()),
		Lowest:    float64(all.LowestDepth.Value), LowestTime: float64(all.LowestDepth.At), LowestX: float64(all.LowestX),
		GreatestRadius: float64(all.GreatestRadius.Value), LeastForce: float64(all.LeastPull.Value),
	}, nil
}

func (in pendElasticInputs) start(s swing.ElasticSwing) swing.PlanarState {
	angle := quantity.Angle(in.Angle) * quantity.Degree
	distance := s.Balanced(angle)
	if strings.Contains(in.Initial, "natural") {
		distance = s.Length
	}
	return in.Velocity.add(swing.AtRest(angle, quantity.Length(or(in.Distance, float64(distance)))))
}

// rising is the two windows in order, or the second alone where it comes first.
func rising(first, end quantity.Time) []quantity.Time {
	if end <= first {
		return []quantity.Time{end}
	}
	return []quantity.Time{first, end}
}
