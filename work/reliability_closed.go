package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/chance"
)

type closedInputs struct {
	G           float64 `json:"g"`
	MORMean     float64 `json:"MOR_mean_Pa"`
	MORCoV      float64 `json:"MOR_cov"`
	DMean       float64 `json:"d_mean_m"`
	DCoV        float64 `json:"d_cov"`
	DLaw        string  `json:"d_dist"`
	MassMean    float64 `json:"m_mean_kg"`
	MassCoV     float64 `json:"m_cov"`
	DynamicMean float64 `json:"DAF_mean"`
	DynamicCoV  float64 `json:"DAF_cov"`
	ThetaDeg    float64 `json:"theta_deg"`
	Arm         float64 `json:"a_m"`
}

type closedResults struct {
	Beta float64 `json:"beta"`
	Pf   float64 `json:"Pf"`
}

// reliabilityClosed gives the chance that a round limb breaks under a rider,
// every variable lognormal or fixed: resistance MOR pi d^3/32, load the bottom pull
// of the swing times a dynamic factor and the arm.
func reliabilityClosed(raw json.RawMessage) (any, error) {
	in, err := read[closedInputs](raw)
	if err != nil {
		return nil, err
	}
	if in.DLaw != "lognormal" {
		return nil, fmt.Errorf("d_dist is %q; expected lognormal", in.DLaw)
	}
	pull := in.G * (3 - 2*math.Cos(in.ThetaDeg*math.Pi/180)) * in.Arm
	if !(pull > 0) {
		return nil, fmt.Errorf("g %v, theta_deg %v, a_m %v give no load; expected a pull and an arm more than 0", in.G, in.ThetaDeg, in.Arm)
	}
	var laws [4]chance.Lognormal
	for i, v := range []struct {
		name      string
		mean, cov float64
	}{
		{"MOR", in.MORMean, in.MORCoV}, {"d", in.DMean, in.DCoV},
		{"m", in.MassMean, in.MassCoV}, {"DAF", in.DynamicMean, in.DynamicCoV},
	} {
		if laws[i], err = chance.LognormalOf(v.mean, v.cov); err != nil {
			return nil, fmt.Errorf("%s: %w", v.name, err)
		}
	}
	resistance := chance.Product(laws[0], laws[1].Power(3)).Scale(math.Pi / 32)
	load := chance.Product(laws[2], laws[3]).Scale(pull)
	figure := chance.Shortfall(resistance, load)
	return closedResults{Beta: figure.Beta, Pf: figure.Probability}, nil
}
