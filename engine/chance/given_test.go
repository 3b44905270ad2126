package chance

import (
	"errors"
	"math"
	"runtime"
	"testing"

	"boughline/quantity"

	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"
)

// seenLimb is the limb of LimbCase as margins: X, S, Q and K lognormal, a ride S + Q,
// what was seen X >= S and X K >= S + T.
func seenLimb(t rapid.TB, c LimbCase) Given {
	m, err := c.model()
	if err != nil {
		t.Fatal(err)
	}
	inputs, err := NewInputs([]Law{m.resistance, m.self, m.ride, m.lasting})
	if err != nil {
		t.Fatal(err)
	}
	ride := func(x []float64) float64 { return math.Log(x[0] / (x[1] + x[2])) }
	tested := func(x []float64) float64 { return math.Log(x[0] * x[3] / (x[1] + m.test)) }
	return Given{Inputs: inputs, Least: ride, Ways: []Way{{ride, tested}}, Seen: func(x []float64) float64 {
		return math.Min(math.Log(x[0]/x[1]), tested(x))
	}}
}

// The quadrature of LimbCase stands for the truth, for limbs that fail often enough to
// be sampled plainly.
func TestGivenMatchesTheQuadratureOfALimb(t *testing.T) {
	for _, scale := range []float64{1, 0.85, 0.7} {
		c := oakLimb()
		c.SectionModulus.Mean *= quantity.Volume(scale)
		truth, err := c.Chance()
		if err != nil {
			t.Fatal(err)
		}
		want := truth.GivenLoadTest
		g := seenLimb(t, c)
		first, err := g.FirstOrder()
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(first.Beta-want.Beta) > 0.12 {
			t.Errorf("scale %v: first order %.4f, quadrature %.4f", scale, first.Beta, want.Beta)
		}
		weighted, err := g.ImportanceSampling(Sampling{Samples: 1 << 20, Seed: 3, CoV: 0.01}, first.Centres()...)
		if err != nil {
			t.Fatal(err)
		}
		if low, high := widened(weighted); want.Probability < low || want.Probability > high {
			t.Errorf("scale %v: importance sampling %.4g to %.4g, quadrature %.4g", scale, low, high, want.Probability)
		}
		plain, err := g.MonteCarlo(Sampling{Samples: 1 << 21, Seed: 3})
		if err != nil {
			t.Fatal(err)
		}
		if low, high := widened(plain); want.Probability < low || want.Probability > high {
			t.Errorf("scale %v: plain sampling %.4g to %.4g, quadrature %.4g", scale, low, high, want.Probability)
		}
	}
}

// Two planes through normal space: the chance is a bivariate normal one, and first order
// is exact.
func TestGivenOfTwoPlanesIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		beta := rapid.Float64Range(1, 4).Draw(t, "beta")
		reserve := rapid.Float64Range(-1, 3).Draw(t, "reserve")
		angle := rapid.Float64Range(0.2, 1.5).Draw(t, "angle")
		inputs, err := NewInputs([]Law{Normal{0, 1}, Normal{0, 1}})
		if err != nil {
			t.Fatal(err)
		}
		fails := func(x []float64) float64 { return beta - x[0] }
		g := Given{Inputs: inputs, Ways: []Way{{Fails: fails, Seen: func(x []float64) float64 {
			return reserve - math.Cos(angle)*x[0] - math.Sin(angle)*x[1]
		}}}}
		got, err := g.FirstOrder()
		if err != nil {
			t.Fatal(err)
		}
		want := belowAbove(-beta, -reserve, math.Cos(angle)) / cdf(reserve)
		near(t, "chance", got.Probability, want, 1e-6)
	})
}

func TestGivenNothingIsThePlainProblem(t *testing.T) {
	p := ridden(0.108).problem(t)
	g := Given{Inputs: p.Inputs, Ways: []Way{{Fails: p.Margin}}, Least: p.Margin}
	point, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	got, err := g.FirstOrder()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "beta", got.Beta, point.Beta, 1e-15)
	near(t, "bound", got.High, point.Probability, 1e-15)
	s := Sampling{Samples: 10000, Seed: 5}
	given, err := g.MonteCarlo(s)
	if err != nil {
		t.Fatal(err)
	}
	if want := mustSample(t, p, s); given != want {
		t.Errorf("got %+v, want %+v", given, want)
	}
}

// A stronger test never raises the chance, sampled with the same numbers.
func TestStrongerTestsNeverRaiseTheGivenChance(t *testing.T) {
	before := 1.0
	for _, test := range []float64{0, 0.5, 1, 1.5, 2} {
		c := oakLimb()
		c.SectionModulus.Mean *= 0.7
		c.TestMoment = c.RideMoment.Mean * quantity.Moment(test)
		got, err := seenLimb(t, c).FirstOrder()
		if err != nil {
			t.Fatal(err)
		}
		if got.Probability > before*(1+1e-6) {
			t.Errorf("test %v: %.6g, weaker test %.6g", test, got.Probability, before)
		}
		before = got.Probability
	}
}

func TestGivenIsTheSameOnOneAndTwoCores(t *testing.T) {
	g := seenLimb(t, oakLimb())
	first, err := g.FirstOrder()
	if err != nil {
		t.Fatal(err)
	}
	var got [2]Estimate
	for i := range got {
		before := runtime.GOMAXPROCS(i + 1)
		got[i], err = g.ImportanceSampling(Sampling{Samples: 1 << 16, Seed: 9}, first.Centres()...)
		runtime.GOMAXPROCS(before)
		if err != nil {
			t.Fatal(err)
		}
	}
	if got[0] != got[1] {
		t.Errorf("one core %+v, two cores %+v", got[0], got[1])
	}
}

func TestWhatCannotHoldIsRefused(t *testing.T) {
	g := seenLimb(t, oakLimb())
	g.Seen = func(x []float64) float64 { return math.Log(x[0]) - 100 }
	g.Ways[0].Seen = g.Seen
	if _, err := g.FirstOrder(); err == nil {
		t.Error("first order took it")
	}
	if _, err := g.MonteCarlo(Sampling{Samples: 1000}); err == nil {
		t.Error("plain sampling took it")
	}
	if _, err := g.ImportanceSampling(Sampling{Samples: 1000}, make([]float64, 4)); err == nil {
		t.Error("importance sampling took it")
	}
}

func TestProgressIsToldAndCanEndTheSampling(t *testing.T) {
	p := ridden(0.108).problem(t)
	var told []int
	s := Sampling{Samples: 40000, Seed: 1, Progress: func(done int) error { told = append(told, done); return nil }}
	mustSample(t, p, s)
	if len(told) < 3 || told[len(told)-1] != 40000 {
		t.Errorf("told %v", told)
	}
	enough := errors.New("enough")
	s.Progress = func(int) error { return enough }
	if _, err := p.MonteCarlo(s); !errors.Is(err, enough) {
		t.Errorf("got %v", err)
	}
}

// F(x)^n by the law's own distribution.
func TestLargestOfMatchesThePowerOfTheDistribution(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 2000).Draw(t, "n")
		z := rapid.Float64Range(-4, 6).Draw(t, "z")
		law, err := LargestOf(Normal{3, 2}, n)
		if err != nil {
			t.Fatal(err)
		}
		x := law.At(z)
		one := cdf(-(x - 3) / 2) // chance that one draw is above
		near(t, "chance", -math.Expm1(float64(n)*math.Log1p(-one)), cdf(-z), 1e-9)
		if back := law.Deviate(x); math.Abs(back-z) > 1e-7 {
			t.Errorf("deviate %v, want %v", back, z)
		}
	})
}

// The table against the quantiles of gonum.
func TestTabledMeetsTheLaw(t *testing.T) {
	beta := Other(distuv.Beta{Alpha: 7, Beta: 7.5})
	tabled, err := TabledOf(beta)
	if err != nil {
		t.Fatal(err)
	}
	for z := -5.0; z <= 5; z += 0.0371 {
		if got, want := tabled.At(z), beta.At(z); math.Abs(got-want) > 2e-6 {
			t.Errorf("at %v: %v, want %v", z, got, want)
		}
	}
	if _, err := TabledOf(Normal{math.NaN(), 1}); err == nil {
		t.Error("a law without values was taken")
	}
}

// As an input, a strength above a load has the distribution and the quantiles of Above.
func TestLawAboveALoadIsATransform(t *testing.T) {
	a := Above{Lognormal: Lognormal{Mu: 3, Sigma: 0.33}, Load: 25}
	law := a.Law()
	for z := -4.0; z <= 6; z += 0.5 {
		x := law.At(z)
		near(t, "chance above", 1-a.CDF(x), cdf(-z), 1e-6)
		if x < a.Load || math.Abs(law.Deviate(x)-z) > 1e-6 {
			t.Errorf("at %v: %v, back %v", z, x, law.Deviate(x))
		}
	}
	near(t, "median", law.At(0), a.Quantile(0.5), 1e-9)
}

// A margin that is straight in the deviates is met exactly by its mean value.
func TestMeanValueOfAStraightMargin(t *testing.T) {
	p := problemOf(t, []Law{Normal{10, 1}, Normal{6, 2}}, func(x []float64) float64 { return x[0] - x[1] })
	near(t, "index", p.MeanValue(), 4/math.Sqrt(5), 1e-9)
}
