package frame

import (
	"math"
	"testing"

	"boughline/quantity"
)

// (beta L)^2/(2 pi L^2) sqrt(E I/(rho A)) with beta L = 1.8751, 4.6941, 7.8548
// (Blevins, Formulas for Natural Frequency and Mode Shape 1979, table 8-1,
// from memory), and (1/4 L) sqrt(G/rho) for the twist of a round bar.
func TestUniformFrequencies(t *testing.T) {
	const diameter, length = 0.18, 6.0
	a := mustAnalyse(t, must(t, cantilever(diameter, diameter, length)), Options{})
	speed := math.Sqrt(9e9 / 900 * diameter * diameter / 16)
	var want []float64
	for _, root := range []float64{1.875104068711961, 4.694091132974174, 7.854757438237613} {
		want = append(want, root*root/(2*math.Pi*length*length)*speed)
	}
	twist := math.Sqrt(0.6e9/900) / (4 * length)
	modes, err := a.Modes(6)
	if err != nil {
		t.Fatal(err)
	}
	for i, f := range []float64{want[0], want[0], want[1], want[1], twist, want[2]} {
		near(t, "frequency", float64(modes[i].Frequency), f, 1e-4*f)
	}
	for _, direction := range []quantity.Vec3{{Y: 1}, {Z: 1}, {Y: 1, Z: 1}} {
		plane, err := a.PlaneModes(3, direction)
		if err != nil {
			t.Fatal(err)
		}
		for i, f := range want {
			near(t, "frequency in a plane", float64(plane[i].Frequency), f, 2e-6*f)
		}
		// every mode of a uniform cantilever has twice the root mean square at
		// its tip, so a quarter of the mass (Blevins, table 8-1)
		quarter := float64(a.Mass()) / 4
		near(t, "effective mass", float64(plane[0].EffectiveMass(Place{0, length}, direction)), quarter, 1e-5*quarter)
		near(t, "effective mass", float64(plane[1].EffectiveMass(Place{0, length}, direction)), quarter, 1e-4*quarter)
	}
	if _, err := a.PlaneModes(3, quantity.Vec3{X: 1}); err == nil {
		t.Error("bending modes along the limb")
	}
}

// A heavy mass on a light limb: sqrt(3 E I/(L^3 (M + 33/140 m)))/(2 pi)
// (Rayleigh; Blevins, table 8-8, from memory).
func TestTipMass(t *testing.T) {
	m := cantilever(0.1, 0.1, 3)
	m.Masses = []Mass{{Place{0, 3}, 200}}
	f := must(t, m)
	modes, err := mustAnalyse(t, f, Options{}).Modes(1)
	if err != nil {
		t.Fatal(err)
	}
	inertia, _ := Circle(0.1).SecondMoments()
	want := math.Sqrt(3*9e9*inertia/(27*(200+33.0/140*float64(f.WoodMass())))) / (2 * math.Pi)
	near(t, "frequency", float64(modes[0].Frequency), want, 1e-4*want)
}

// Half the element length divides the error of a frequency by about 2^4.
func TestFrequencyConverges(t *testing.T) {
	for _, tip := range []quantity.Length{0.2, 0.08} {
		f := must(t, cantilever(0.2, tip, 5))
		second := func(n quantity.Length) float64 {
			modes, err := mustAnalyse(t, f, Options{ElementLength: 5 / n}).PlaneModes(2, quantity.Vec3{Z: 1})
			if err != nil {
				t.Fatal(err)
			}
			return float64(modes[1].Frequency)
		}
		exact := second(96)
		coarse, fine := second(6)-exact, second(12)-exact
		if order := math.Log2(coarse / fine); order < 3.7 || order > 4.5 {
			t.Errorf("tip %v m: order %.2f, want 4 (errors %.3g and %.3g Hz)", float64(tip), order, coarse, fine)
		}
	}
}

func TestModesRefuse(t *testing.T) {
	a := mustAnalyse(t, must(t, cantilever(0.2, 0.1, 4)), Options{})
	if _, err := a.Modes(0); err == nil {
		t.Error("no modes asked for, and no error")
	}
	m := cantilever(0.2, 0.1, 4)
	m.Material.Density = 0
	if _, err := mustAnalyse(t, must(t, m), Options{}).Modes(2); err == nil {
		t.Error("modes without a density")
	}
}
