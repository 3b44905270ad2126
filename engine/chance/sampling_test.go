package chance

import (
	"math"
	"math/rand/v2"
	"runtime"
	"testing"

	"boughline/quantity"
)

func mustSample(t *testing.T, p Problem, s Sampling, centres ...[]float64) Estimate {
	t.Helper()
	sample := func() (Estimate, error) {
		if len(centres) == 0 {
			return p.MonteCarlo(s)
		}
		return p.ImportanceSampling(s, centres...)
	}
	got, err := sample()
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// widened is an estimate's interval of 95 % at 99.99 %, for tests that make many comparisons.
func widened(e Estimate) (low, high float64) {
	const wider = 3.8906 / confidence
	return e.Probability - wider*(e.Probability-e.Low), e.Probability + wider*(e.High-e.Probability)
}

func contains(t *testing.T, what string, e Estimate, want float64) {
	t.Helper()
	if low, high := widened(e); !(low <= want && want <= high) {
		t.Errorf("%s: %v (%v to %v), want %v", what, e.Probability, e.Low, e.High, want)
	}
}

// Phi(-beta) of a normal resistance and load, by hand.
func TestSamplingOfNormalResistanceAndLoad(t *testing.T) {
	p := problemOf(t, []Law{Normal{50, 6}, Normal{30, 4}}, func(x []float64) float64 { return x[0] - x[1] })
	point, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	want := Probability(20 / math.Sqrt(52))
	s := Sampling{Samples: 300_000, Seed: 5}
	contains(t, "Monte Carlo", mustSample(t, p, s), want)
	contains(t, "importance sampling", mustSample(t, p, s, point.U), want)
	contains(t, "about two points", mustSample(t, p, s, point.U, []float64{1, -1}), want)
}

// Ten drawn limbs: plain and importance sampling agree within their intervals,
// first order within the curvature, which the second order takes in.
func TestThreeWaysAgreeOnDrawnLimbs(t *testing.T) {
	random := rand.New(rand.NewPCG(17, 4))
	between := func(low, high float64) float64 { return low + (high-low)*random.Float64() }
	for i := range 10 {
		l := ridden(between(0.095, 0.12))
		l.strength.CoV, l.mass.CoV, l.dynamic.CoV = between(0.12, 0.3), between(0.03, 0.25), between(0.03, 0.12)
		l.theta, l.self = Normal{between(25, 70), between(3, 10)}, between(200, 900)
		p := l.problem(t)
		point, err := p.FirstOrder(nil)
		if err != nil {
			t.Fatal(err)
		}
		seed := uint64(i)
		weighted := mustSample(t, p, Sampling{Samples: 50_000, Seed: seed}, point.U)
		plain := mustSample(t, p, Sampling{Samples: 500_000, Seed: seed})
		low, high := widened(plain)
		if wLow, wHigh := widened(weighted); wLow > high || wHigh < low {
			t.Errorf("limb %d: importance sampling %+v, Monte Carlo %+v", i, weighted, plain)
		}
		near(t, "first order", point.Probability, weighted.Probability, 0.15)
		near(t, "second order", point.SecondOrder.Probability, weighted.Probability, 0.05)
	}
}

// The same events as LimbCase by sampling: failure, and failure of a limb that
// carries its own weight, over the chance that it does.
func TestSamplingMatchesTheLimbCase(t *testing.T) {
	for _, modulus := range []quantity.Volume{0.7e-3, 1.25e-3, 1.9e-3} {
		c := oakLimb()
		c.SectionModulus.Mean = modulus
		m, err := c.model()
		if err != nil {
			t.Fatal(err)
		}
		laws := []Law{m.resistance, m.self, m.ride}
		breaks := problemOf(t, laws, func(x []float64) float64 { return x[0] - x[1] - x[2] })
		carrying := problemOf(t, laws, func(x []float64) float64 { return math.Max(x[1]-x[0], x[0]-x[1]-x[2]) })
		point, err := breaks.FirstOrder(nil)
		if err != nil {
			t.Fatal(err)
		}
		want := mustChance(t, c)
		s := Sampling{Samples: 200_000, Seed: 9}
		contains(t, "prior", mustSample(t, breaks, s, point.U), want.Prior.Probability)
		contains(t, "prior, plain", mustSample(t, breaks, s), want.Prior.Probability)
		carries := Shortfall(m.self, m.resistance).Probability
		contains(t, "own weight", mustSample(t, carrying, s, point.U), want.GivenOwnWeight.Probability*carries)
		contains(t, "own weight, plain", mustSample(t, carrying, s), want.GivenOwnWeight.Probability*carries)
	}
}

// Two ways to fail, far apart: each point alone misses half, both find it all.
func TestImportanceSamplingAboutTwoPoints(t *testing.T) {
	p := problemOf(t, []Law{Normal{0, 1}, Normal{0, 1}}, func(x []float64) float64 { return 4 - math.Abs(x[0]) })
	high, low := []float64{4, 0}, []float64{-4, 0}
	s := Sampling{Samples: 100_000, Seed: 2}
	contains(t, "both", mustSample(t, p, s, high, low), 2*Probability(4))
	contains(t, "one", mustSample(t, p, s, high), Probability(4))
}

// The same seed, the same answer to the last bit; another seed, another.
func TestSamplingDoesNotDependOnProcessors(t *testing.T) {
	p := ridden(0.108).problem(t)
	point, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	run := func(processors int, seed uint64) [2]Estimate {
		defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(processors))
		s := Sampling{Samples: 150_001, Seed: seed}
		return [2]Estimate{mustSample(t, p, s), mustSample(t, p, s, point.U)}
	}
	one := run(1, 3)
	for _, processors := range []int{2, 7} {
		if got := run(processors, 3); got != one {
			t.Errorf("%d processors: %+v, one: %+v", processors, got, one)
		}
	}
	if run(1, 4) == one {
		t.Error("another seed gives the same figures")
	}
}

func TestSamplingStopsWhereAsked(t *testing.T) {
	p := ridden(0.13).problem(t)
	point, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	s := Sampling{Samples: 1 << 22, Seed: 1, CoV: 0.01}
	got := mustSample(t, p, s, point.U)
	if got.CoV > s.CoV || got.Samples >= s.Samples || got.Samples%blockSamples != 0 {
		t.Errorf("stopped at %+v", got)
	}
	p.Margin = func([]float64) float64 { return -1 } // an estimate without scatter
	if all := mustSample(t, p, Sampling{Samples: 10_000, Seed: 1}); all.Samples != 10_000 {
		t.Errorf("%d samples of 10000", all.Samples)
	}
}

// No failure in n samples: Wilson's interval ends at q^2/(n + q^2), by hand.
func TestNoFailureIsNoProof(t *testing.T) {
	p := problemOf(t, []Law{Normal{0, 1}}, func([]float64) float64 { return 1 })
	got := mustSample(t, p, Sampling{Samples: 1000})
	q := confidence * confidence
	near(t, "upper end", got.High, q/(1000+q), 1e-12)
	if got.Low != 0 || got.Probability != 0 || !math.IsInf(got.Beta, 1) {
		t.Errorf("got %+v", got)
	}
	if got := mustSample(t, p, Sampling{Samples: 1000}, []float64{1}); got.High != 1 {
		t.Errorf("nothing met, yet %+v", got)
	}
}

// A margin that cannot be worked out is never taken for one that holds.
func TestMarginWithoutNumberFails(t *testing.T) {
	p := problemOf(t, []Law{Normal{0, 1}}, func([]float64) float64 { return math.NaN() })
	if got := mustSample(t, p, Sampling{Samples: 1000}); got.Failures != 1000 {
		t.Errorf("got %+v", got)
	}
}

func TestSamplingAllocatesNothingPerSample(t *testing.T) {
	worker := ridden(0.108).problem(t).sampler([][]float64{make([]float64, 6)})
	if n := testing.AllocsPerRun(5, func() { worker.block(streamOf(1, 1), blockSamples) }); n != 0 {
		t.Errorf("%v allocations in a block", n)
	}
}

func TestSamplingRefuses(t *testing.T) {
	p := ridden(0.108).problem(t)
	for _, s := range []Sampling{{}, {Samples: -1}, {Samples: 2e12}, {Samples: 10, CoV: -1}, {Samples: 10, CoV: math.NaN()}} {
		if _, err := p.MonteCarlo(s); err == nil {
			t.Errorf("%+v: no error", s)
		}
	}
	if _, err := p.ImportanceSampling(Sampling{Samples: 10}); err == nil {
		t.Error("no centre: no error")
	}
	if _, err := p.ImportanceSampling(Sampling{Samples: 10}, []float64{1}); err == nil {
		t.Error("short centre: no error")
	}
	if _, err := (Problem{Inputs: p.Inputs}).MonteCarlo(Sampling{Samples: 10}); err == nil {
		t.Error("no margin: no error")
	}
}
