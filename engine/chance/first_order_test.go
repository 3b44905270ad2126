package chance

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Normal resistance and load: beta = (50 - 30)/sqrt(6^2 + 4^2) = 2.7735010 by hand,
// probability 0.00277300 (Phi by SciPy 1.10); the design point lies where both are 36.153846.
func TestFirstOrderOfNormalResistanceAndLoad(t *testing.T) {
	p := problemOf(t, []Law{Normal{50, 6}, Normal{30, 4}}, func(x []float64) float64 { return x[0] - x[1] })
	got, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "beta", got.Beta, 20/math.Sqrt(52), 1e-9)
	near(t, "probability", got.Probability, Probability(20/math.Sqrt(52)), 1e-6)
	near(t, "resistance", got.X[0], 50-36*20.0/52, 1e-6)
	near(t, "load", got.X[1], 30+16*20.0/52, 1e-6)
	near(t, "importance of resistance", got.Importance[0], -6/math.Sqrt(52), 1e-6)
	near(t, "importance of load", got.Importance[1], 4/math.Sqrt(52), 1e-6)
	near(t, "second order", got.SecondOrder.Probability, got.Probability, 1e-6)
}

// A margin of lognormal factors is linear in standard normal space: first order
// is exact, Shortfall the closed form. The margin R/L - 1 curves strongly.
func TestFirstOrderOfLognormalsMatchesTheClosedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Lognormal{rapid.Float64Range(-1, 4).Draw(t, "resistance"), rapid.Float64Range(0.05, 0.6).Draw(t, "its sigma")}
		l := Lognormal{0, rapid.Float64Range(0.05, 0.6).Draw(t, "sigma of the load")}
		want := Shortfall(r, l)
		if math.Abs(want.Beta) > 8 {
			t.Skip("beyond the tables") // the normal tail has no digits left to compare there
		}
		for _, margin := range []func(x []float64) float64{
			func(x []float64) float64 { return x[0] - x[1] },
			func(x []float64) float64 { return x[0]/x[1] - 1 },
		} {
			got, err := problemOf(t, []Law{r, l}, margin).FirstOrder(nil)
			if err != nil {
				t.Fatal(err)
			}
			if math.Abs(got.Beta-want.Beta) > 1e-8 {
				t.Fatalf("beta %v, want %v", got.Beta, want.Beta)
			}
		}
	})
}

// Failure inside a sphere of radius r whose near point is at b: both curvatures are 1/r,
// the factor (1 + b/r)^(-1/2) for each. Failure outside an ellipsoid that curves more than a
// sphere about the origin: no factor. Breitung, 1984.
func TestSecondOrderOfASphere(t *testing.T) {
	const b, r = 3.0, 2.0
	sphere := func(x []float64) float64 {
		return (x[0]-b-r)*(x[0]-b-r) + x[1]*x[1] + x[2]*x[2] - r*r
	}
	normal := Normal{0, 1}
	got, err := problemOf(t, []Law{normal, normal, normal}, sphere).FirstOrder([]float64{0.5, 0.4, -0.3})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "beta", got.Beta, b, 1e-9)
	near(t, "second order", got.SecondOrder.Probability, Probability(b)/(1+b/r), 1e-6)
	inside := func(x []float64) float64 { return b*b - x[0]*x[0] - x[1]*x[1]/0.9 - x[2]*x[2]/0.9 }
	got, err = problemOf(t, []Law{normal, normal, normal}, inside).FirstOrder([]float64{1, 0, 0})
	if err != nil {
		t.Fatal(err)
	}
	if got.SecondOrder != nil {
		t.Errorf("second order %v where the limit state curves more than a circle about the origin", *got.SecondOrder)
	}
}

// Given derivatives lead to the same point as differences, with correlation too.
func TestGivenGradientLeadsToTheSamePoint(t *testing.T) {
	p := problemOf(t, []Law{Lognormal{1.5, 0.2}, Normal{1, 0.1}, Lognormal{0.4, 0.3}},
		func(x []float64) float64 { return x[0]*x[1]*x[1] - x[2] }, Correlation{0, 1, 0.4}, Correlation{1, 2, -0.2})
	plain, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	p.Gradient = func(dst, x []float64) { dst[0], dst[1], dst[2] = x[1]*x[1], 2*x[0]*x[1], -1 }
	given, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "beta", given.Beta, plain.Beta, 1e-9)
	near(t, "second order", given.SecondOrder.Probability, plain.SecondOrder.Probability, 1e-5)
	for i := range plain.U {
		near(t, "point", given.U[i], plain.U[i], 1e-5)
	}
}

// A strongly curved margin much used to try such walks: beta 2.240 in Santosh et al., 2006
// (from memory). By symmetry the point is at x = y = 9^(1/3).
func TestFirstOrderOfCubes(t *testing.T) {
	normal := Normal{10, 5}
	p := problemOf(t, []Law{normal, normal}, func(x []float64) float64 { return x[0]*x[0]*x[0] + x[1]*x[1]*x[1] - 18 })
	got, err := p.FirstOrder(nil)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "beta", got.Beta, math.Sqrt2*(10-math.Cbrt(9))/5, 1e-8)
}

func TestFirstOrderRefuses(t *testing.T) {
	one := []Law{Normal{0, 1}}
	for word, margin := range map[string]func(x []float64) float64{
		"does not change": func([]float64) float64 { return 1 },
		"finite":          func([]float64) float64 { return math.NaN() },
		"no design point": func(x []float64) float64 { return 1 + math.Abs(x[0]-0.3) },
	} {
		if got, err := problemOf(t, one, margin).FirstOrder(nil); err == nil || !strings.Contains(err.Error(), word) {
			t.Errorf("%q: got %v, error %v", word, got, err)
		}
	}
	if _, err := (Problem{}).FirstOrder(nil); err == nil {
		t.Error("no input: no error")
	}
	if _, err := ridden(0.12).problem(t).FirstOrder([]float64{1}); err == nil {
		t.Error("short start: no error")
	}
}
