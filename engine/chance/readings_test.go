package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Two equally sure sources meet half way with half the variance, by hand.
func TestUpdateOfEqualSourcesMeetsHalfWay(t *testing.T) {
	got, err := (Normal{9000, 500}).Update(Normal{8000, 500})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mean", got.Mean, 8500, 1e-14)
	near(t, "sd", got.SD, 500/math.Sqrt2, 1e-14)
}

// Readings at once, one after the other or in another order: the same law; and
// every reading makes it surer (conjugate normal law).
func TestUpdateDoesNotDependOnTheOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) Normal {
			return Normal{rapid.Float64Range(1, 100).Draw(t, name), rapid.Float64Range(0.1, 10).Draw(t, name+" sd")}
		}
		update := func(prior Normal, readings ...Normal) Normal {
			got, err := prior.Update(readings...)
			if err != nil {
				t.Fatal(err)
			}
			return got
		}
		prior, a, b := draw("prior"), draw("a"), draw("b")
		at, one := update(prior, a, b), update(prior, b)
		then := update(one, a)
		near(t, "mean", then.Mean, at.Mean, 1e-12)
		near(t, "sd", then.SD, at.SD, 1e-12)
		if !(at.SD < one.SD && one.SD < prior.SD) {
			t.Errorf("deviations %v, %v, %v", prior.SD, one.SD, at.SD)
		}
	})
}

// 500 N and 50 mm, read to 1 mm: 10 kN/m within 200 N/m, 0.1 mm/N within 0.002, by hand.
func TestSagReadingByHand(t *testing.T) {
	r := SagReading{Force: 500, Sag: 0.05, SD: quantity.Length(0.001)}
	near(t, "stiffness", r.Stiffness().Mean, 10_000, 1e-14)
	near(t, "its sd", r.Stiffness().SD, 200, 1e-12)
	near(t, "compliance", r.Compliance().Mean, 1e-4, 1e-14)
	near(t, "its sd", r.Compliance().SD, 2e-6, 1e-12)
	near(t, "inverse", r.Compliance().Inverse().Mean, r.Stiffness().Mean, 1e-14)
	near(t, "its sd", r.Compliance().Inverse().SD, r.Stiffness().SD, 1e-12)
}

func TestUpdateRefuses(t *testing.T) {
	for _, r := range []Normal{{1, 0}, {1, -1}, {math.NaN(), 1}, {math.Inf(1), 1}, {1, math.Inf(1)}} {
		if _, err := (Normal{1, 1}).Update(r); err == nil {
			t.Errorf("reading %v: no error", r)
		}
	}
	if got, err := (Normal{2, 0}).Update(Normal{5, 1}); err != nil || got != (Normal{2, 0}) {
		t.Errorf("a fixed value became %v, error %v", got, err)
	}
}
