package frame

import (
	"math"
	"testing"
)

// A uniform round cantilever: f = 1.8751^2/(2 pi L^2) sqrt(E I/(rho A)), the
// first root of cos b cosh b = -1 (handbook of vibration, from memory).
func TestLowestFrequencyOfACantilever(t *testing.T) {
	m := cantilever(0.25, 0.25, 5)
	a := mustAnalyse(t, must(t, m), Options{ElementLength: 0.25})
	got, err := a.LowestFrequency()
	if err != nil {
		t.Fatal(err)
	}
	want := 1.8751040687 * 1.8751040687 / (2 * math.Pi * 25) * math.Sqrt(float64(m.Material.Young)*0.25*0.25/16/float64(m.Material.Density))
	if math.Abs(float64(got)/want-1) > 1e-5 {
		t.Errorf("got %v Hz, want %v", float64(got), want)
	}
}

// It agrees with the general search for modes, and says when it can't.
func TestLowestFrequencyIsThatOfTheModes(t *testing.T) {
	m := cantilever(0.3, 0.1, 6)
	a := mustAnalyse(t, must(t, m), Options{})
	got, err := a.LowestFrequency()
	if err != nil {
		t.Fatal(err)
	}
	modes, err := a.Modes(1)
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(got/modes[0].Frequency)-1) > 1e-6 {
		t.Errorf("got %v Hz, want %v", float64(got), float64(modes[0].Frequency))
	}
	m.Material.Density = 0
	if _, err := mustAnalyse(t, must(t, m), Options{}).LowestFrequency(); err == nil {
		t.Error("no density: no error")
	}
}
