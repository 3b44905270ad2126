package work

import (
	"encoding/json"

	"boughline/engine/chance"
)

type reliabilityResults struct {
	BetaFORM   float64    `json:"beta_FORM"`
	PfFORM     float64    `json:"Pf_FORM"`
	PfSORM     *float64   `json:"Pf_SORM_Breitung,omitempty"`
	Alpha      []float64  `json:"alpha_MOR_d_m_theta_DAF_a"`
	UStar      []float64  `json:"u_star"`
	PfIS       float64    `json:"Pf_IS"`
	PfISCI     [2]float64 `json:"Pf_IS_ci95"`
	BetaIS     *float64   `json:"beta_equiv_IS,omitempty"`
	ISSamples  int        `json:"IS_samples"`
	PfMC       float64    `json:"Pf_MC"`
	PfMCCI     [2]float64 `json:"Pf_MC_ci95"`
	MCFailures int        `json:"MC_failures"`
	MCSamples  int        `json:"MC_samples"`
	LeavesOut  string     `json:"leaves_out"`
}

// chanceLeavesOut goes with every probability.
const chanceLeavesOut = "defects nobody saw, misuse, damage to gear: the probability covers the modelled loads and strengths only"

// A fixed seed: the same document gives the same figures.
const workSeed = 1

// reliability gives the chance that a limb breaks in bending under a rider by
// first order, importance sampling about the design point, and plain Monte Carlo.
func reliability(raw json.RawMessage) (any, error) {
	problem, err := readProblem(raw)
	if err != nil {
		return nil, err
	}
	point, err := problem.FirstOrder(nil)
	if err != nil {
		return nil, err
	}
	weighted, err := problem.ImportanceSampling(chance.Sampling{Samples: 1 << 20, Seed: workSeed}, point.U)
	if err != nil {
		return nil, err
	}
	plain, err := problem.MonteCarlo(chance.Sampling{Samples: 1 << 22, Seed: workSeed})
	if err != nil {
		return nil, err
	}
	results := reliabilityResults{
		BetaFORM: point.Beta, PfFORM: point.Probability, Alpha: point.Importance, UStar: point.U,
		PfIS: weighted.Probability, PfISCI: [2]float64{weighted.Low, weighted.High},
		BetaIS: finite(weighted.Beta), ISSamples: weighted.Samples,
		PfMC: plain.Probability, PfMCCI: [2]float64{plain.Low, plain.High},
		MCFailures: plain.Failures, MCSamples: plain.Samples, LeavesOut: chanceLeavesOut,
	}
	if point.SecondOrder != nil {
		results.PfSORM = &point.SecondOrder.Probability
	}
	return results, nil
}
