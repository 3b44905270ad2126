package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestInputsGoThereAndBack(t *testing.T) {
	in, err := NewInputs([]Law{Normal{1, 2}, Lognormal{0, 0.3}, Normal{-4, 0.5}},
		Correlation{0, 1, 0.7}, Correlation{1, 2, 0.7}, Correlation{0, 2, 0.5})
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SliceOfN(rapid.Float64Range(-5, 5), 3, 3).Draw(t, "u")
		x, back := make([]float64, 3), make([]float64, 3)
		in.Values(x, u)
		in.Deviates(back, x)
		for i := range u {
			if math.Abs(back[i]-u[i]) > 1e-11 {
				t.Fatalf("%v became %v", u, back)
			}
		}
	})
}

// The difference of two normal inputs has the variance a^2 + b^2 - 2 rho a b, elementary: so
// has beta of a margin that is the difference.
func TestCorrelatedNormalsByHand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rho := rapid.Float64Range(-0.95, 0.95).Draw(t, "rho")
		r, s := Normal{50, 6}, Normal{30, 4}
		p := problemOf(t, []Law{r, s}, func(x []float64) float64 { return x[0] - x[1] }, Correlation{0, 1, rho})
		got, err := p.FirstOrder(nil)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "beta", got.Beta, 20/math.Sqrt(36+16-2*rho*24), 1e-9)
	})
}

func TestSamplesHaveTheirCorrelation(t *testing.T) {
	in, err := NewInputs([]Law{Normal{1, 2}, Normal{3, 0.5}, Normal{0, 1}}, Correlation{0, 2, -0.6}, Correlation{1, 2, 0.3})
	if err != nil {
		t.Fatal(err)
	}
	const samples = 200_000
	rows := make([]float64, 3*samples)
	random := streamOf(3, 0)
	random.normals(rows)
	in.transform(rows)
	var product [3]float64
	for k := 0; k < len(rows); k += 3 {
		a, b, c := (rows[k]-1)/2, (rows[k+1]-3)/0.5, rows[k+2]
		product[0] += a * b / samples
		product[1] += a * c / samples
		product[2] += b * c / samples
	}
	for i, want := range []float64{0, -0.6, 0.3} {
		if math.Abs(product[i]-want) > 4*math.Sqrt(2.0/samples) {
			t.Errorf("correlation %d: got %v, want %v", i, product[i], want)
		}
	}
}

func TestNewInputsRefuses(t *testing.T) {
	three := []Law{Normal{0, 1}, Normal{0, 1}, Normal{0, 1}}
	for name, ties := range map[string][]Correlation{
		"out of range":  {{0, 3, 0.5}},
		"with itself":   {{1, 1, 0.5}},
		"contradictory": {{0, 1, 0.9}, {1, 2, 0.9}, {0, 2, -0.9}},
		"full":          {{0, 1, 1}},
		"no number":     {{0, 1, math.NaN()}},
	} {
		if _, err := NewInputs(three, ties...); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := NewInputs(nil); err == nil {
		t.Error("no input: no error")
	}
}
