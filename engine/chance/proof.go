package chance

import (
	"fmt"
	"math"
	"slices"
)

// Proof is a load effect that a limb stood, in the unit of the strength, known
// with a normal error; SD 0 is known for certain. A stood gust counts at its low side.
type Proof struct{ Load, SD float64 }

// Proved is a lognormal strength after proofs: its density times the chance of
// standing each, scaled to 1.
type Proved struct {
	Prior Lognormal
	// Survival is the chance, by the prior, of standing them all.
	Survival float64
	proofs   []Proof
}

// Prove returns the law of a strength after independent proofs. Without any it is
// the prior, and no proof raises the chance of any load breaking the limb.
// Errors: a prior without scatter; a load or deviation that is negative or not
// finite; proofs that the strength by its law could hardly stand, chance below 1e-9.
// Source: Ditlevsen & Madsen, 1996, Structural Reliability Methods, on proof loading (from memory).
func Prove(prior Lognormal, proofs ...Proof) (Proved, error) {
	if !(prior.Sigma > 0) {
		return Proved{}, fmt.Errorf("proof loads: strength without scatter (sigma %v); expected more than 0", prior.Sigma)
	}
	for i, p := range proofs {
		if !(p.Load >= 0 && p.SD >= 0) || math.IsInf(p.Load, 1) || math.IsInf(p.SD, 1) {
			return Proved{}, fmt.Errorf("proof %d: load %v with standard deviation %v; expected finite, 0 or more", i+1, p.Load, p.SD)
		}
	}
	p := Proved{Prior: prior, proofs: proofs}
	p.Survival = p.integrate(math.Inf(1), nil, func(float64) float64 { return 1 })
	if !(p.Survival > leastCarried) {
		return Proved{}, fmt.Errorf("proof loads: by its law the strength could hardly stand %v; expected a chance above %v", proofs, leastCarried)
	}
	return p, nil
}

// CDF returns the probability that the strength is less than r.
func (p Proved) CDF(r float64) float64 {
	if !(r > 0) {
		return 0
	}
	return math.Min(1, p.integrate(r, nil, func(float64) float64 { return 1 })/p.Survival)
}

// Moments returns mean and standard deviation.
func (p Proved) Moments() (mean, sd float64) {
	all := math.Inf(1)
	mean = p.integrate(all, nil, func(r float64) float64 { return r }) / p.Survival
	square := p.integrate(all, nil, func(r float64) float64 { return (r - mean) * (r - mean) }) / p.Survival
	return mean, math.Sqrt(square)
}

// Fails returns the chance that a normal load effect exceeds the strength.
func (p Proved) Fails(load Normal) Figure {
	exceeds := func(r float64) float64 { return cdf(rise(load.Mean-r, load.SD)) }
	marks := []Proof{{Load: load.Mean, SD: load.SD}}
	return FigureOf(math.Min(1, p.integrate(math.Inf(1), marks, exceeds)/p.Survival))
}

// rise is the deviate of a margin with a normal error; infinite for none.
func rise(margin, sd float64) float64 {
	if sd == 0 {
		return math.Copysign(math.Inf(1), margin)
	}
	return margin / sd
}

// integrate returns the mean of f over strengths below the bound, each weighted
// by the chance of standing the proofs, by Gauss-Legendre over the deviate of the strength.
func (p Proved) integrate(bound float64, marks []Proof, f func(r float64) float64) float64 {
	breaks := p.breaks(bound, marks)
	sum := 0.0
	for i, high := range breaks[1:] {
		middle, half := (breaks[i]+high)/2, (high-breaks[i])/2
		for j, x := range gauss.x {
			z := middle + half*x
			r := p.Prior.At(z)
			sum += half * gauss.weight[j] * phi(z) * p.stands(r) * f(r)
		}
	}
	return sum
}

// breaks cuts the deviates below that of the bound into pieces of a half, and
// finer where a proof or one of the marks changes: each half of its deviation, up to twelve of
// them, beyond which nothing is left.
func (p Proved) breaks(bound float64, marks []Proof) []float64 {
	const reach = 12.0 // the density there is 1e-32
	last := reach
	if !math.IsInf(bound, 1) {
		last = math.Min(reach, p.Prior.Deviate(bound))
	}
	breaks := []float64{last}
	for z := -reach; z < last; z += 0.5 {
		breaks = append(breaks, z)
	}
	for _, m := range slices.Concat(p.proofs, marks) {
		for k := -12.0; k <= 12; k += 0.5 {
			z := p.Prior.Deviate(math.Max(0, m.Load+k*m.SD)) // -Inf for 0
			if z > -reach && z < last {
				breaks = append(breaks, z)
			}
		}
	}
	slices.Sort(breaks)
	return breaks
}

// stands returns the chance that a strength stands all proofs.
func (p Proved) stands(r float64) float64 {
	chance := 1.0
	for _, proof := range p.proofs {
		chance *= cdf(rise(r-proof.Load, proof.SD))
	}
	return chance
}
