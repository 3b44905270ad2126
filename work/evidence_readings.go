package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/chance"
	"boughline/quantity"
)

type readingsInputs struct {
	PriorMean   float64   `json:"prior_k_mean"`
	PriorSD     float64   `json:"prior_k_sd"`
	Loads       []float64 `json:"loads_N"`
	Sags        []float64 `json:"sags_m"`
	SagSD       float64   `json:"sag_sd_m"`
	PredictLoad float64   `json:"predict_load_N"`
}

type readingsResults struct {
	A stiffnessResults  `json:"a"`
	B complianceResults `json:"b"`
}

type stiffnessResults struct {
	Readings    []float64 `json:"k_readings"`
	ReadingSDs  []float64 `json:"k_reading_sds"`
	Mean        float64   `json:"posterior_k_mean"`
	SD          float64   `json:"posterior_k_sd"`
	PriorWeight float64   `json:"weight_of_prior"`
}

type complianceResults struct {
	Mean           float64 `json:"posterior_c_mean"`
	SD             float64 `json:"posterior_c_sd"`
	Stiffness      float64 `json:"k_from_mean_c"`
	StiffnessSD    float64 `json:"k_sd_first_order"`
	PredictedSag   float64 `json:"predicted_sag_m"`
	PredictedSagSD float64 `json:"predicted_sag_sd_m"`
}

// sagReadings gives the stiffness of a limb after readings of its sag, from
// readings of stiffness (a) and of compliance (b).
func sagReadings(raw json.RawMessage) (any, error) {
	in, err := read[readingsInputs](raw)
	if err != nil {
		return nil, err
	}
	readings, err := in.readings()
	if err != nil {
		return nil, err
	}
	prior := chance.Normal{Mean: in.PriorMean, SD: in.PriorSD}
	var r readingsResults
	if r.A, err = stiffnessAfter(prior, readings); err != nil {
		return nil, err
	}
	r.B, err = complianceAfter(prior, readings, in.PredictLoad, in.SagSD)
	return r, err
}

func (in readingsInputs) readings() ([]chance.SagReading, error) {
	if !(in.PriorMean > 0 && in.PriorSD > 0) {
		return nil, fmt.Errorf("prior_k_mean %v, prior_k_sd %v; expected both more than 0", in.PriorMean, in.PriorSD)
	}
	if len(in.Loads) != len(in.Sags) {
		return nil, fmt.Errorf("%d loads_N, %d sags_m; expected as many of each", len(in.Loads), len(in.Sags))
	}
	if !(in.SagSD > 0) {
		return nil, fmt.Errorf("sag_sd_m is %v; expected more than 0", in.SagSD)
	}
	var readings []chance.SagReading
	for i, load := range in.Loads {
		if !(load > 0 && in.Sags[i] > 0) {
			return nil, fmt.Errorf("loads_N %v with sags_m %v; expected both more than 0", load, in.Sags[i])
		}
		readings = append(readings, chance.SagReading{
			Force: quantity.Force(load), Sag: quantity.Length(in.Sags[i]), SD: quantity.Length(in.SagSD),
		})
	}
	return readings, nil
}

func stiffnessAfter(prior chance.Normal, readings []chance.SagReading) (r stiffnessResults, err error) {
	var of []chance.Normal
	for _, reading := range readings {
		k := reading.Stiffness()
		of = append(of, k)
		r.Readings = append(r.Readings, k.Mean)
		r.ReadingSDs = append(r.ReadingSDs, k.SD)
	}
	after, err := prior.Update(of...)
	r.Mean, r.SD = after.Mean, after.SD
	r.PriorWeight = after.SD * after.SD / (prior.SD * prior.SD)
	return r, err
}

func complianceAfter(prior chance.Normal, readings []chance.SagReading, load, sagSD float64) (complianceResults, error) {
	var of []chance.Normal
	for _, reading := range readings {
		of = append(of, reading.Compliance())
	}
	after, err := prior.Inverse().Update(of...)
	stiffness := after.Inverse()
	return complianceResults{
		Mean: after.Mean, SD: after.SD, Stiffness: stiffness.Mean, StiffnessSD: stiffness.SD,
		PredictedSag: load * after.Mean, PredictedSagSD: math.Hypot(load*after.SD, sagSD),
	}, err
}
