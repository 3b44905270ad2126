package wood

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Round 0.2 m on a radius of 1 m under a bending stress of 20 MPa: 0.667 MPa; a
// square of the same depth 1.0 MPa. Worked by hand from sigma r/(3R) and sigma h/(4R).
func TestAcrossGrainByHand(t *testing.T) {
	round := quantity.Moment(20e6 * math.Pi / 32 * 0.008)
	got, err := AcrossGrainOfRound(MomentExtremes{round, -round}, 0.2, 1)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "round", float64(got.AtFirst), 0.6667e6, 100)
	within(t, "round, bent further", float64(got.AtSecond), -0.6667e6, 100)
	within(t, "round, tension", float64(got.Tension()), 0.6667e6, 100)

	square := quantity.Moment(20e6 * 0.008 / 6)
	got, err = AcrossGrainOfRectangle(MomentExtremes{square, square / 2}, 0.2, 0.2, 1)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "square", float64(got.AtFirst), 1e6, 1e-3)
	within(t, "square, half", float64(got.AtSecond), 0.5e6, 1e-3)
}

// EN 1995-1-1, 6.4.3 (from memory): k_p 6 M/(b h^2) with k_p = 0.25 h/R.
func TestAcrossGrainIsThatOfTheTimberCode(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.Float64Range(0.05, 0.5).Draw(t, "b")
		h := rapid.Float64Range(0.05, 0.5).Draw(t, "h")
		radius := rapid.Float64Range(0.5, 20).Draw(t, "R")
		m := rapid.Float64Range(-1e5, 1e5).Draw(t, "M")
		got, err := AcrossGrainOfRectangle(MomentExtremes{quantity.Moment(m), 0}, quantity.Length(b), quantity.Length(h), quantity.Length(radius))
		if err != nil {
			t.Fatal(err)
		}
		want := 0.25 * h / radius * 6 * m / (b * h * h)
		within(t, "stress", float64(got.AtFirst), want, 1e-9*math.Abs(want))
	})
}

// A thin slice through a round part carries M S/(I b R): the axis is where it is
// greatest, with S and b of a half circle.
func TestAcrossGrainOfRoundIsTheShearAnalogy(t *testing.T) {
	r, radius, m := 0.11, 1.7, 4200.0
	first, inertia := 2*r*r*r/3, math.Pi*math.Pow(r, 4)/4
	got, err := AcrossGrainOfRound(MomentExtremes{quantity.Moment(m), 0}, quantity.Length(2*r), quantity.Length(radius))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "stress", float64(got.AtFirst), m*first/(inertia*2*r*radius), 1e-3)
}

func TestNoTensionWhereBothMomentsBendFurther(t *testing.T) {
	got, err := AcrossGrainOfRound(MomentExtremes{-100, -900}, 0.2, 1)
	if err != nil || got.Tension() != 0 {
		t.Errorf("%+v, %v; want no tension", got, err)
	}
}

func TestAcrossGrainRefuses(t *testing.T) {
	m := MomentExtremes{1, 1}
	for name, compute := range map[string]func() (AcrossGrain, error){
		"no radius":   func() (AcrossGrain, error) { return AcrossGrainOfRound(m, 0.2, 0) },
		"no diameter": func() (AcrossGrain, error) { return AcrossGrainOfRound(m, 0, 1) },
		"no width":    func() (AcrossGrain, error) { return AcrossGrainOfRectangle(m, 0, 0.2, 1) },
		"no depth":    func() (AcrossGrain, error) { return AcrossGrainOfRectangle(m, 0.2, quantity.Length(math.NaN()), 1) },
	} {
		if _, err := compute(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
