package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/place"
	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/quantity"
)

// placeInputs is a search on one level limb, in metres, kg, Pa and degrees.
type placeInputs struct {
	Gravity float64 `json:"g"`
	Limb    struct {
		Height  float64 `json:"axis_height_above_ground_at_s0_x0"`
		Length  float64 `json:"length"`
		Base    float64 `json:"d_base"`
		Tip     float64 `json:"d_tip"`
		Density float64 `json:"density"`
	} `json:"limb"`
	Ground        [][2]float64 `json:"ground_x_y"`
	RiseAlong     float64      `json:"ground_slope_along_limb"`
	Rider         float64      `json:"rider_mass"`
	LoadAmplitude float64      `json:"load_amplitude_deg"`
	ArcAmplitude  float64      `json:"arc_amplitude_deg"`
	FootReach     float64      `json:"foot_extension_f"`
	Stem          struct {
		Factor   float64 `json:"factor"`
		Constant float64 `json:"constant"`
	} `json:"stem_clearance"`
	Limits struct {
		Stress float64 `json:"stress_allow_Pa"`
		Foot   float64 `json:"foot_clearance_min"`
		Fall   float64 `json:"fall_height_max"`
	} `json:"constraints"`
	Grid struct {
		AlongFrom float64 `json:"s_min"`
		AlongTo   float64 `json:"s_max"`
		LineFrom  float64 `json:"L_min"`
		LineTo    float64 `json:"L_max"`
		Step      float64 `json:"step"`
	} `json:"grid"`
	Aims struct {
		LowestFallFrom float64 `json:"lowest_fall_L_min"`
	} `json:"aims"`
	Bands []float64 `json:"band_L"`
}

// placeSearch is the engine's view of the inputs.
type placeSearch struct {
	limb    place.Limb
	room    place.Room
	stem    space.LinearRule
	pull    quantity.Force
	allowed quantity.Stress
	problem place.Problem
}

func placeFigure(raw json.RawMessage) (any, error) {
	in, err := read[placeInputs](raw)
	if err != nil {
		return nil, err
	}
	if in.Gravity <= 0 {
		return nil, fmt.Errorf("inputs.g: %v; expected an acceleration above 0 in m/s2", in.Gravity)
	}
	search := in.model()
	if search.problem, err = search.define(in); err != nil {
		return nil, err
	}
	found, err := place.Refine(search.problem)
	if err != nil {
		return nil, err
	}
	return search.results(found), nil
}

// model scales masses where the gravity of the inputs is not the standard one.
func (in placeInputs) model() placeSearch {
	scale := in.Gravity / quantity.StandardGravity
	var ground space.Ground
	for _, p := range in.Ground {
		ground.Stations = append(ground.Stations, space.Point{Along: quantity.Length(p[0]), Height: quantity.Length(p[1])})
	}
	return placeSearch{
		limb: place.Limb{
			Length: quantity.Length(in.Limb.Length), Base: quantity.Length(in.Limb.Base), Tip: quantity.Length(in.Limb.Tip),
			Density: quantity.Density(in.Limb.Density * scale),
		},
		room: place.Room{
			Ground: ground, HangHeight: quantity.Length(in.Limb.Height), RiseAlong: quantity.Proportion(in.RiseAlong),
			Amplitude: angle(in.ArcAmplitude), FootReach: quantity.Length(in.FootReach),
		},
		stem:    space.LinearRule{PerLine: in.Stem.Factor, Constant: quantity.Length(in.Stem.Constant)},
		pull:    swing.PeakPull(quantity.Mass(in.Rider*scale), angle(in.LoadAmplitude)),
		allowed: quantity.Stress(in.Limits.Stress),
	}
}

func (s placeSearch) define(in placeInputs) (place.Problem, error) {
	step := quantity.Length(in.Grid.Step)
	p := place.Problem{
		Grid: place.Grid{
			Along: place.Axis{From: quantity.Length(in.Grid.AlongFrom), To: quantity.Length(in.Grid.AlongTo), Step: step},
			Line:  place.Axis{From: quantity.Length(in.Grid.LineFrom), To: quantity.Length(in.Grid.LineTo), Step: step},
		},
		Aims:   []place.Aim{place.LongestLine(), s.room.LowestFall(quantity.Length(in.Aims.LowestFallFrom)), place.MostInHand()},
		Counts: true,
	}
	for _, line := range in.Bands {
		p.Bands = append(p.Bands, quantity.Length(line))
	}
	stress, err := s.limb.StressConstraint(s.pull, s.allowed)
	if err != nil {
		return p, err
	}
	foot, err := s.room.FootConstraint(quantity.Length(in.Limits.Foot))
	if err != nil {
		return p, err
	}
	stem, err := place.StemConstraint(s.stem)
	if err != nil {
		return p, err
	}
	fall, err := s.room.FallConstraint(quantity.Length(in.Limits.Fall))
	p.Constraints = []place.Constraint{stress, foot, stem, fall}
	return p, err
}
