package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/swing"
	"boughline/quantity"
)

type flexlimbInputs struct {
	Gravity             *float64 `json:"g"`
	Length              float64  `json:"L"`
	Mass                float64  `json:"m"`
	LimbMass            float64  `json:"limb_eff_mass_M"`
	DampingRatio        *float64 `json:"zeta"`
	VerticalFrequency   *float64 `json:"f_vertical_Hz"`
	VerticalStiffness   *float64 `json:"k_vertical"`
	VerticalDamping     *float64 `json:"c_vertical"`
	BothWays            bool     `json:"two_dof"`
	HorizontalFrequency *float64 `json:"f_horizontal_Hz"`
	HorizontalStiffness *float64 `json:"k_horizontal"`
	HorizontalDamping   *float64 `json:"c_horizontal"`
	Angle               float64  `json:"theta0_deg"`
	Initial             struct {
		Angle *float64 `json:"theta0_deg"`
		X     *float64 `json:"X0"`
		Y     *float64 `json:"Y0"`
	} `json:"initial"`
	End *float64 `json:"t_end"`
}

type flexlimbResults struct {
	FirstWindow        float64  `json:"first_pass_window_s"`
	FirstVertical      float64  `json:"peak_vertical_limb_force_first_pass_N"`
	FirstVerticalTime  float64  `json:"t_peak_vertical_first_pass_s"`
	PeakPull           float64  `json:"peak_rope_tension_N"`
	PeakVertical       float64  `json:"peak_vertical_limb_force_N"`
	PeakVerticalSpring float64  `json:"peak_vertical_spring_force_N"`
	PeakHorizontal     *float64 `json:"peak_horizontal_limb_force_N"`
	RigidPeak          float64  `json:"rigid_support_peak_N"`
	PullRatio          float64  `json:"ratio_tension_to_rigid"`
	ForceRatio         float64  `json:"ratio_limb_force_to_rigid"`
	PeakVerticalTime   float64  `json:"t_peak_vertical_limb_force_s"`
	GreatestSag        float64  `json:"max_pivot_sag_m"`
	LeastPull          float64  `json:"min_rope_tension_N"`
}

// flexlimb is the swing on a limb that gives way: the first pass in half a
// small period, and all that happens to the end.
func flexlimb(inputs json.RawMessage) (any, error) {
	in, err := read[flexlimbInputs](inputs)
	if err != nil {
		return nil, err
	}
	s, err := in.swing()
	if err != nil {
		return nil, err
	}
	small := smallPeriod(in.Length, in.Gravity)
	end := quantity.Time(or(in.End, 2*float64(small)))
	spans, err := s.Move(in.start(s), rising(small/2, end)...)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	rigid := in.Mass * gravity(in.Gravity) * pullOverWeight(quantity.Angle(in.Angle)*quantity.Degree, 0)
	first, all := spans[0], spans[len(spans)-1]
	results := flexlimbResults{
		FirstWindow:   float64(min(small/2, end)),
		FirstVertical: float64(first.PeakVertical.Value), FirstVerticalTime: float64(first.PeakVertical.At),
		PeakPull: float64(all.PeakPull.Value), LeastPull: float64(all.LeastPull.Value),
		PeakVertical: float64(all.PeakVertical.Value), PeakVerticalTime: float64(all.PeakVertical.At),
		PeakVerticalSpring: float64(all.PeakSpring.Value), GreatestSag: float64(all.GreatestSag.Value),
		RigidPeak: rigid, PullRatio: float64(all.PeakPull.Value) / rigid, ForceRatio: float64(all.PeakVertical.Value) / rigid,
	}
	if in.BothWays {
		sideways := float64(all.PeakHorizontal.Value)
		results.PeakHorizontal = &sideways
	}
	return results, nil
}

func (in flexlimbInputs) swing() (swing.YieldingSwing, error) {
	s := swing.YieldingSwing{
		Length: quantity.Length(in.Length), Mass: quantity.Mass(in.Mass), LimbMass: quantity.Mass(in.LimbMass),
		Gravity: swing.Acceleration(gravity(in.Gravity)),
	}
	var err error
	if s.Vertical, err = in.support("vertical", in.VerticalFrequency, in.VerticalStiffness, in.VerticalDamping); err != nil {
		return s, err
	}
	if in.BothWays {
		horizontal, err := in.support("horizontal", in.HorizontalFrequency, in.HorizontalStiffness, in.HorizontalDamping)
		if err != nil {
			return s, err
		}
		s.Horizontal = &horizontal
	}
	return s, nil
}

// support takes stiffness and damping where they are given, and else from the
// frequency and the damping ratio.
func (in flexlimbInputs) support(way string, frequency, stiffness, damping *float64) (swing.Support, error) {
	if stiffness == nil && frequency == nil {
		return swing.Support{}, fmt.Errorf("inputs.k_%s: missing; expected it, or f_%s_Hz", way, way)
	}
	mass, ratio := quantity.Mass(in.LimbMass), quantity.Proportion(or(in.DampingRatio, 0))
	support := swing.SupportOf(mass, quantity.Frequency(or(frequency, 0)), ratio)
	if stiffness != nil {
		support = swing.SupportBy(mass, quantity.Stiffness(*stiffness), ratio)
	}
	support.Damping = swing.Damping(or(damping, float64(support.Damping)))
	return support, nil
}

// start takes what is given and else the limb at rest under the pull at release.
func (in flexlimbInputs) start(s swing.YieldingSwing) swing.YieldingState {
	state := s.Held(quantity.Angle(or(in.Initial.Angle, in.Angle)) * quantity.Degree)
	state.X = quantity.Length(or(in.Initial.X, float64(state.X)))
	state.Y = quantity.Length(or(in.Initial.Y, float64(state.Y)))
	return state
}
