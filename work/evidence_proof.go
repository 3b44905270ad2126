package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/chance"
)

type proofInputs struct {
	PriorMean float64   `json:"prior_mean"`
	PriorCoV  float64   `json:"prior_cov"`
	Strengths []float64 `json:"r_list"`
	Load      float64   `json:"proof_P"`
	LoadMean  float64   `json:"load_mean"`
	LoadSD    float64   `json:"load_sd"`
	Proofs    []struct {
		Load float64 `json:"P"`
		SD   float64 `json:"sd"`
	} `json:"proofs"`
}

func (in proofInputs) prior() (chance.Lognormal, error) {
	law, err := chance.LognormalOf(in.PriorMean, in.PriorCoV)
	if err == nil && in.PriorCoV == 0 {
		err = fmt.Errorf("no scatter; expected prior_cov more than 0")
	}
	if err != nil {
		return law, fmt.Errorf("prior_mean, prior_cov: %w", err)
	}
	return law, nil
}

type truncationResults struct {
	Mu            float64   `json:"mu"`
	Sigma         float64   `json:"sigma"`
	Survive       float64   `json:"prob_survive"`
	PosteriorMean float64   `json:"posterior_mean"`
	PosteriorSD   float64   `json:"posterior_sd"`
	PosteriorCoV  float64   `json:"posterior_cov"`
	PriorCDF      []float64 `json:"prior_cdf"`
	PosteriorCDF  []float64 `json:"posterior_cdf"`
	PriorQ05      float64   `json:"prior_q05"`
	PosteriorQ05  float64   `json:"posterior_q05"`
}

// proofTruncation gives a lognormal strength after a proof load known for certain.
func proofTruncation(raw json.RawMessage) (any, error) {
	in, err := read[proofInputs](raw)
	if err != nil {
		return nil, err
	}
	prior, err := in.prior()
	if err != nil {
		return nil, err
	}
	if !(in.Load > 0) {
		return nil, fmt.Errorf("proof_P is %v; expected more than 0", in.Load)
	}
	after := chance.Above{Lognormal: prior, Load: in.Load}
	r := truncationResults{Mu: prior.Mu, Sigma: prior.Sigma, Survive: after.Survival()}
	if !(r.Survive > 0) {
		return nil, fmt.Errorf("proof_P is %v; expected one that the strength can stand", in.Load)
	}
	r.PosteriorMean, r.PosteriorSD = after.Moments()
	r.PosteriorCoV = r.PosteriorSD / r.PosteriorMean
	for _, strength := range in.Strengths {
		r.PriorCDF = append(r.PriorCDF, chance.Probability(-prior.Deviate(strength)))
		r.PosteriorCDF = append(r.PosteriorCDF, after.CDF(strength))
	}
	r.PriorQ05, r.PosteriorQ05 = prior.At(-chance.Beta(0.05)), after.Quantile(0.05)
	return r, nil
}

type uncertainResults struct {
	Survive       float64   `json:"prob_survive_all"`
	PosteriorMean float64   `json:"posterior_mean"`
	PosteriorSD   float64   `json:"posterior_sd"`
	PfBefore      float64   `json:"pf_before"`
	PfAfter       float64   `json:"pf_after"`
	Ratio         *float64  `json:"ratio,omitempty"`
	PosteriorCDF  []float64 `json:"posterior_cdf"`
	BetaBefore    *float64  `json:"beta_before,omitempty"`
	BetaAfter     *float64  `json:"beta_after,omitempty"`
}

// proofUncertain gives a lognormal strength after proof loads known with error,
// and the chance that a normal load exceeds it.
func proofUncertain(raw json.RawMessage) (any, error) {
	in, err := read[proofInputs](raw)
	if err != nil {
		return nil, err
	}
	prior, err := in.prior()
	if err != nil {
		return nil, err
	}
	load, err := chance.NormalOf(in.LoadMean, in.LoadSD)
	if err != nil {
		return nil, fmt.Errorf("load_mean, load_sd: %w", err)
	}
	var proofs []chance.Proof
	for _, p := range in.Proofs {
		proofs = append(proofs, chance.Proof{Load: p.Load, SD: p.SD})
	}
	unproved, err := chance.Prove(prior)
	if err != nil {
		return nil, err
	}
	proved, err := chance.Prove(prior, proofs...)
	if err != nil {
		return nil, err
	}
	before, after := unproved.Fails(load), proved.Fails(load)
	r := uncertainResults{
		Survive:  proved.Survival,
		PfBefore: before.Probability, PfAfter: after.Probability, Ratio: finite(after.Probability / before.Probability),
		BetaBefore: finite(before.Beta), BetaAfter: finite(after.Beta),
	}
	r.PosteriorMean, r.PosteriorSD = proved.Moments()
	for _, strength := range in.Strengths {
		r.PosteriorCDF = append(r.PosteriorCDF, proved.CDF(strength))
	}
	return r, nil
}
