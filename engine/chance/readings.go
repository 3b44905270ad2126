package chance

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Update returns the law of a quantity after independent readings of it with
// normal errors: means weighted by 1/SD^2. Without readings it is the prior. A prior that is
// fixed stays; readings with an SD of 0 are refused.
// Source: conjugate normal law, elementary; as in Gelman et al., Bayesian Data Analysis,
// chapter 2 (from memory).
func (n Normal) Update(readings ...Normal) (Normal, error) {
	if n.SD == 0 || len(readings) == 0 {
		return n, nil
	}
	precision := 1 / (n.SD * n.SD)
	mean := n.Mean
	for i, r := range readings {
		if !(r.SD > 0) || math.IsInf(r.SD, 1) || math.IsNaN(r.Mean) || math.IsInf(r.Mean, 0) {
			return Normal{}, fmt.Errorf("reading %d of %v with standard deviation %v; expected finite ones, the latter more than 0", i+1, r.Mean, r.SD)
		}
		weight := 1 / (r.SD * r.SD)
		precision += weight
		mean += (r.Mean - mean) * weight / precision
	}
	return Normal{Mean: mean, SD: 1 / math.Sqrt(precision)}, nil
}

// SagReading is how far a limb went down under a known force, and the standard
// deviation with which the sag was read.
type SagReading struct {
	Force   quantity.Force
	Sag, SD quantity.Length
}

// Stiffness returns what the reading says of force per sag, N/m. The error is of
// first order, and with many readings leans to stiff: each weighs by its own error.
func (r SagReading) Stiffness() Normal {
	k := float64(r.Force) / float64(r.Sag)
	return Normal{Mean: k, SD: k * float64(r.SD) / float64(r.Sag)}
}

// Compliance returns what the reading says of sag per force, m/N; exact for a
// normal error of the sag.
func (r SagReading) Compliance() Normal {
	return Normal{Mean: float64(r.Sag) / float64(r.Force), SD: float64(r.SD) / float64(r.Force)}
}

// Inverse returns the law of 1 over the variable by its mean and, to first
// order, its deviation.
func (n Normal) Inverse() Normal {
	return Normal{Mean: 1 / n.Mean, SD: n.SD / (n.Mean * n.Mean)}
}
