package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// A sum of normal inputs and one product, by hand: y = a x1 + b x2 + c x1 x2 of
// standard normal inputs has the parts a^2, b^2 and c^2 of variance.
func TestSobolOfASumAndAProduct(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		factor := func(name string) float64 { return rapid.Float64Range(0.1, 3).Draw(t, name) }
		a, b, c := factor("a"), factor("b"), factor("c")
		normal := Normal{0, 1}
		p := problemOf(t, []Law{normal, normal, normal}, func(x []float64) float64 { return 5 + a*x[0] + b*x[1] + c*x[0]*x[1] })
		got, err := p.Sobol(4)
		if err != nil {
			t.Fatal(err)
		}
		all := a*a + b*b + c*c
		near(t, "mean", got.Mean, 5, 1e-12)
		near(t, "variance", got.Variance, all, 1e-10)
		for i, want := range []float64{a * a, b * b, 0} {
			if math.Abs(got.First[i]-want/all) > 1e-10 {
				t.Errorf("first %d: got %v, want %v", i, got.First[i], want/all)
			}
		}
		for i, want := range []float64{a*a + c*c, b*b + c*c, 0} {
			if math.Abs(got.Total[i]-want/all) > 1e-10 {
				t.Errorf("total %d: got %v, want %v", i, got.Total[i], want/all)
			}
		}
	})
}

// Ishigami & Homma's function of three uniform inputs, 1990: first-order indices
// 0.3139, 0.4424, 0, totals 0.5576, 0.4424, 0.2437 (closed form, a = 7, b = 0.1; from memory).
func TestSampledSobolOfIshigami(t *testing.T) {
	uniform := Other(uniformLaw{})
	p := problemOf(t, []Law{uniform, uniform, uniform}, func(x []float64) float64 {
		s := math.Sin(x[1])
		return math.Sin(x[0])*(1+0.1*x[2]*x[2]*x[2]*x[2]) + 7*s*s
	})
	got, err := p.SampleSobol(Sampling{Samples: 1 << 16, Seed: 1})
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []struct{ first, total float64 }{{0.3139, 0.5576}, {0.4424, 0.4424}, {0, 0.2437}} {
		if math.Abs(got.First[i]-want.first) > 2*got.FirstHalf[i] || got.FirstHalf[i] > 0.04 {
			t.Errorf("first %d: got %v within %v, want %v", i, got.First[i], got.FirstHalf[i], want.first)
		}
		if math.Abs(got.Total[i]-want.total) > 2*got.TotalHalf[i]+1e-3 || got.TotalHalf[i] > 0.02 {
			t.Errorf("total %d: got %v within %v, want %v", i, got.Total[i], got.TotalHalf[i], want.total)
		}
	}
}

// uniformLaw lies between -pi and pi.
type uniformLaw struct{}

func (uniformLaw) CDF(x float64) float64      { return (x/math.Pi + 1) / 2 }
func (uniformLaw) Quantile(p float64) float64 { return math.Pi * (2*p - 1) }

func TestSampledSobolMatchesQuadrature(t *testing.T) {
	p := ridden(0.108).problem(t)
	exact, err := p.Sobol(5)
	if err != nil {
		t.Fatal(err)
	}
	sampled, err := p.SampleSobol(Sampling{Samples: 1 << 15, Seed: 1})
	if err != nil {
		t.Fatal(err)
	}
	for i := range exact.First {
		if math.Abs(exact.First[i]-sampled.First[i]) > 2*sampled.FirstHalf[i] {
			t.Errorf("first %d: sampled %v, exact %v", i, sampled.First[i], exact.First[i])
		}
		if math.Abs(exact.Total[i]-sampled.Total[i]) > 2*sampled.TotalHalf[i]+0.01 {
			t.Errorf("total %d: sampled %v, exact %v", i, sampled.Total[i], exact.Total[i])
		}
	}
	near(t, "variance", sampled.Variance, exact.Variance, 0.03)
}

func TestSobolRefuses(t *testing.T) {
	fixed := problemOf(t, []Law{Normal{1, 0}}, func(x []float64) float64 { return x[0] })
	tied := problemOf(t, []Law{Normal{0, 1}, Normal{0, 1}}, func(x []float64) float64 { return x[0] }, Correlation{0, 1, 0.5})
	for name, p := range map[string]Problem{"no variance": fixed, "correlated": tied, "empty": {}} {
		if _, err := p.Sobol(5); err == nil {
			t.Errorf("%s: no error", name)
		}
		if _, err := p.SampleSobol(Sampling{Samples: 1000}); err == nil {
			t.Errorf("%s, sampled: no error", name)
		}
	}
	limb := ridden(0.108).problem(t)
	for _, points := range []int{1, 100} {
		if _, err := limb.Sobol(points); err == nil {
			t.Errorf("%d points: no error", points)
		}
	}
	if _, err := limb.SampleSobol(Sampling{Samples: 10}); err == nil {
		t.Error("ten samples: no error")
	}
}
