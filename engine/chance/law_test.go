package chance

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"
)

// The probability integral transform: a value and its deviate are each other's
// inverse, and values rise with the deviate.
func TestLawsGoThereAndBack(t *testing.T) {
	for name, law := range map[string]Law{
		"normal":      Normal{-3, 0.7},
		"lognormal":   Lognormal{2, 0.4},
		"beta":        Other(distuv.Beta{Alpha: 3, Beta: 5}),
		"exponential": Other(distuv.Exponential{Rate: 20}),
		"Gumbel":      Other(distuv.GumbelRight{Mu: 18, Beta: 3}),
	} {
		before := math.Inf(-1)
		for z := -5.0; z <= 5; z += 0.25 {
			x := law.At(z)
			if !(x > before) {
				t.Errorf("%s: value %v at %v, %v before", name, x, z, before)
			}
			before = x
			if got := law.Deviate(x); math.Abs(got-z) > 1e-8 {
				t.Errorf("%s: deviate %v became %v", name, z, got)
			}
		}
	}
}

// The exponential law at the deviate of 1/2 is ln 2 / rate; the Gumbel law there is
// mu - beta ln ln 2. Elementary.
func TestOtherLawsAtTheirMedian(t *testing.T) {
	near(t, "exponential", Other(distuv.Exponential{Rate: 20}).At(0), math.Ln2/20, 1e-14)
	near(t, "Gumbel", Other(distuv.GumbelRight{Mu: 18, Beta: 3}).At(0), 18-3*math.Log(math.Ln2), 1e-14)
}

func TestFixedLawsHaveNoDeviate(t *testing.T) {
	if (Normal{2, 0}).Deviate(5) != 0 || (Lognormal{2, 0}).Deviate(5) != 0 {
		t.Error("a fixed law has a deviate")
	}
}

func TestNormalOfRefuses(t *testing.T) {
	for _, c := range [][2]float64{{math.NaN(), 1}, {math.Inf(1), 1}, {1, -1}, {1, math.NaN()}, {1, math.Inf(1)}} {
		if _, err := NormalOf(c[0], c[1]); err == nil {
			t.Errorf("mean %v, deviation %v: no error", c[0], c[1])
		}
	}
}

func TestExponentialsMatchTheLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := rapid.SliceOfN(rapid.Float64Range(-760, 760), 5, 5).Draw(t, "y")
		got := append([]float64(nil), y...)
		exponentials(got, 2, 0.5, 1)
		for k := range y {
			want := y[k]
			if k%2 == 0 {
				want = math.Exp(0.5 + y[k])
			}
			if got[k] != want {
				near(t, "exponential", got[k], want, 2e-13)
			}
		}
	})
}
