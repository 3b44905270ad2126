package work

import (
	"encoding/json"

	"boughline/engine/chance"
)

type sobolResults struct {
	First         []float64 `json:"S1"`
	Total         []float64 `json:"ST"`
	MeanMargin    float64   `json:"mean_g"`
	Variance      float64   `json:"var_g"`
	FirstSaltelli []float64 `json:"S1_saltelli"`
	TotalSaltelli []float64 `json:"ST_saltelli"`
	FirstHalf     []float64 `json:"S1_ci95_halfwidth"`
	TotalHalf     []float64 `json:"ST_ci95_halfwidth"`
}

const (
	sobolPoints  = 9 // for each of six inputs
	sobolSamples = 1 << 16
)

// sobol gives the shares of the variance of the bending margin of a limb that
// come from each input, by quadrature and, as a check, by sampling.
func sobol(raw json.RawMessage) (any, error) {
	problem, err := readProblem(raw)
	if err != nil {
		return nil, err
	}
	exact, err := problem.Sobol(sobolPoints)
	if err != nil {
		return nil, err
	}
	sampled, err := problem.SampleSobol(chance.Sampling{Samples: sobolSamples, Seed: workSeed})
	if err != nil {
		return nil, err
	}
	return sobolResults{
		First: exact.First, Total: exact.Total, MeanMargin: exact.Mean, Variance: exact.Variance,
		FirstSaltelli: sampled.First, TotalSaltelli: sampled.Total,
		FirstHalf: sampled.FirstHalf, TotalHalf: sampled.TotalHalf,
	}, nil
}
