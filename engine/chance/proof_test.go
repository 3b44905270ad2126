package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func drawStrength(t *rapid.T) Lognormal {
	l, err := LognormalOf(rapid.Float64Range(20e6, 60e6).Draw(t, "mean"), rapid.Float64Range(0.1, 0.5).Draw(t, "cov"))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func mustProve(t rapid.TB, prior Lognormal, proofs ...Proof) Proved {
	t.Helper()
	p, err := Prove(prior, proofs...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// Without evidence the prior returns.
func TestNoEvidenceReturnsThePrior(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawStrength(t)
		for name, p := range map[string]Proved{"none": mustProve(t, prior), "nothing": mustProve(t, prior, Proof{Load: 0, SD: 0})} {
			near(t, name+": survival", p.Survival, 1, 1e-10)
			mean, sd := p.Moments()
			near(t, name+": mean", mean, prior.Mean(), 1e-9)
			near(t, name+": sd", sd, prior.Mean()*prior.CoV(), 1e-9)
			r := prior.At(rapid.Float64Range(-5, 3).Draw(t, "deviate"))
			near(t, name+": distribution", p.CDF(r), cdf(prior.Deviate(r)), 1e-9)
		}
		after, err := (Normal{3, 0.4}).Update()
		if err != nil || after != (Normal{3, 0.4}) {
			t.Errorf("no readings: %v, %v", after, err)
		}
	})
}

// A proof known for certain cuts the law off: quadrature and closed form.
func TestCertainProofIsTruncation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawStrength(t)
		load := prior.At(rapid.Float64Range(-3, 2.5).Draw(t, "load"))
		cut, p := Above{prior, load}, mustProve(t, prior, Proof{Load: load})
		near(t, "survival", p.Survival, cut.Survival(), 1e-9)
		mean, sd := p.Moments()
		wantMean, wantSD := cut.Moments()
		near(t, "mean", mean, wantMean, 1e-9)
		near(t, "sd", sd, wantSD, 1e-6)
		share := rapid.Float64Range(0.001, 0.999).Draw(t, "share")
		r := cut.Quantile(share)
		near(t, "quantile", cut.CDF(r), share, 1e-8)
		near(t, "distribution", p.CDF(r), share, 1e-7)
		if cut.CDF(load) != 0 || p.CDF(load*0.99) != 0 {
			t.Error("a chance below the proof")
		}
	})
}

// A sharper or heavier certain proof, or one more of any kind, never raises the
// chance.
func TestMoreProofNeverRaisesTheChance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawStrength(t)
		draw := func(name string) Proof {
			load := prior.At(rapid.Float64Range(-3, 1).Draw(t, name))
			return Proof{Load: load, SD: load * rapid.Float64Range(0, 0.3).Draw(t, name+" sd")}
		}
		first, second := draw("first"), draw("second")
		mean := prior.At(rapid.Float64Range(-4, 0).Draw(t, "load"))
		load := Normal{mean, mean * rapid.Float64Range(0.02, 0.4).Draw(t, "load sd")}
		before := mustProve(t, prior).Fails(load).Probability
		one := mustProve(t, prior, first).Fails(load).Probability
		two := mustProve(t, prior, first, second).Fails(load).Probability
		heavier := Proof{Load: first.Load * rapid.Float64Range(1, 1.5).Draw(t, "heavier"), SD: first.SD}
		more := mustProve(t, prior, heavier).Fails(load).Probability
		const rounding, nothing = 1 + 1e-8, 1e-30
		if one > before*rounding+nothing || two > one*rounding+nothing || more > one*rounding+nothing {
			t.Errorf("chance %v, after a proof %v, after two %v, after a heavier one %v", before, one, two, more)
		}
	})
}

// A lognormal strength and a fixed load: the prior distribution function there.
func TestFixedLoadFailsByTheDistribution(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		prior := drawStrength(t)
		load := prior.At(rapid.Float64Range(-5, 2).Draw(t, "load"))
		near(t, "fails", mustProve(t, prior).Fails(Normal{Mean: load}).Probability, cdf(prior.Deviate(load)), 1e-9)
	})
}

func TestProveRefuses(t *testing.T) {
	prior := Lognormal{17, 0.25}
	for name, proof := range map[string]Proof{
		"negative": {-1, 0}, "negative deviation": {1, -1}, "no number": {math.NaN(), 0},
		"infinite": {math.Inf(1), 0}, "beyond all strength": {prior.At(8), 0},
	} {
		if _, err := Prove(prior, proof); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := Prove(Lognormal{17, 0}); err == nil {
		t.Error("strength without scatter: no error")
	}
}
