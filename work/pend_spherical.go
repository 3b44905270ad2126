package work

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"

	"boughline/engine/swing"
	"boughline/quantity"
)

type pendSphericalInputs struct {
	Gravity    *float64    `json:"g"`
	Length     float64     `json:"L"`
	Mass       float64     `json:"m"`
	Angle      float64     `json:"theta0_deg"`
	Velocity   *[3]float64 `json:"velocity0"`
	StemX      *float64    `json:"stem_axis_x"`
	StemY      *float64    `json:"stem_axis_y"`
	StemRadius *float64    `json:"stem_radius"`
	Period     *float64    `json:"T_ref_s"`
	Windows    []float64   `json:"windows"`
}

type pendSphericalResults struct {
	LeastRadius    float64                `json:"horizontal_radius_min_m"`
	GreatestRadius float64                `json:"horizontal_radius_max_m"`
	PeakPull       float64                `json:"peak_tension_N"`
	LeastPull      float64                `json:"min_tension_N"`
	Windows        map[string]driftWindow `json:"windows"`
}

type driftWindow struct {
	GreatestAbsX float64  `json:"max_abs_x_m"`
	LeastX       float64  `json:"min_x_m"`
	Closest      *float64 `json:"closest_to_stem_surface_m,omitempty"`
}

// defaultWindows are the ends of the windows, in periods.
var defaultWindows = []float64{1, 2, 5, 10}

// pendSpherical is the swing launched sideways, limb along x and rider on the
// y side.
func pendSpherical(inputs json.RawMessage) (any, error) {
	in, err := read[pendSphericalInputs](inputs)
	if err != nil {
		return nil, err
	}
	s := swing.DriftingSwing{Length: quantity.Length(in.Length), Mass: quantity.Mass(in.Mass), Gravity: swing.Acceleration(gravity(in.Gravity))}
	bounds, err := s.Bounds(in.start())
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	windows, err := in.windows(s)
	if err != nil {
		return nil, err
	}
	return pendSphericalResults{
		LeastRadius: float64(bounds.LeastRadius), GreatestRadius: float64(bounds.GreatestRadius),
		PeakPull: float64(bounds.PeakPull), LeastPull: float64(bounds.LeastPull), Windows: windows,
	}, nil
}

func (in pendSphericalInputs) start() swing.SpatialState {
	sin, cos := math.Sincos(in.Angle * math.Pi / 180)
	v := or(in.Velocity, [3]float64{})
	return swing.SpatialState{
		Position: quantity.Vec3{Y: in.Length * sin, Z: -in.Length * cos},
		Velocity: quantity.Vec3{X: v[0], Y: v[1], Z: v[2]},
	}
}

func (in pendSphericalInputs) windows(s swing.DriftingSwing) (map[string]driftWindow, error) {
	counts := in.Windows
	if len(counts) == 0 {
		counts = defaultWindows
	}
	period, err := in.period()
	if err != nil {
		return nil, err
	}
	ends := make([]quantity.Time, len(counts))
	for i, n := range counts {
		ends[i] = quantity.Time(n * period)
	}
	stem := swing.StemAt{X: quantity.Length(or(in.StemX, 0)), Y: quantity.Length(or(in.StemY, 0)), Radius: quantity.Length(or(in.StemRadius, 0))}
	spans, err := s.Move(in.start(), stem, ends...)
	if err != nil {
		return nil, fmt.Errorf("inputs: %w", err)
	}
	windows := map[string]driftWindow{}
	for i, span := range spans {
		w := driftWindow{
			GreatestAbsX: math.Max(float64(span.GreatestX.Value), -float64(span.LeastX.Value)),
			LeastX:       float64(span.LeastX.Value),
		}
		if closest := float64(span.Closest.Value); in.StemX != nil {
			w.Closest = &closest
		}
		windows[strconv.FormatFloat(counts[i], 'g', -1, 64)] = w
	}
	return windows, nil
}

// period is the one the windows are counted in: that of the planar swing.
func (in pendSphericalInputs) period() (float64, error) {
	if in.Period != nil {
		return *in.Period, nil
	}
	period, err := swing.Period(quantity.Length(in.Length), quantity.Angle(in.Angle)*quantity.Degree)
	if err != nil {
		return 0, fmt.Errorf("inputs.theta0_deg: %w", err)
	}
	return float64(period) * slower(in.Gravity), nil
}
