package swing

import (
	"testing"

	"boughline/quantity"
)

// A line of g (T/2 pi)^2 = 6.209 m swings there and back in 5 s, and at 80 deg
// in 1.1375 times that (handbook tables of the elliptic integral).
func TestNearestResonance(t *testing.T) {
	const length = 6.2101
	for _, c := range []struct {
		mode     quantity.Frequency
		harmonic int
		ratio    float64
		near     bool
	}{
		{0.19, 1, 1, true},           // some amplitude hits it
		{0.24, 1, 0.2 / 0.24, true},  // small swings come to 0.83 of it
		{0.27, 1, 0.2 / 0.27, false}, // 0.74, and the second to 1.30
		{0.38, 2, 1, true},
		{0.3, 2, 0.3516 / 0.3, true},
		{0.55, 2, 0.4 / 0.55, false},
		{0.14, 1, 0.1758 / 0.14, false},
	} {
		got, err := NearestResonance(length, 80*quantity.Degree, c.mode)
		if err != nil {
			t.Fatal(err)
		}
		if got.Harmonic != c.harmonic || got.Near != c.near {
			t.Errorf("mode %v Hz: %+v, want %+v", c.mode, got, c)
		}
		within(t, "ratio", float64(got.Ratio), c.ratio, 2e-3)
	}
}

func TestResonanceRefuses(t *testing.T) {
	for _, c := range []struct {
		length    quantity.Length
		amplitude quantity.Angle
		mode      quantity.Frequency
	}{{0, 1, 1}, {5, 0, 1}, {5, 1, 0}} {
		if got, err := NearestResonance(c.length, c.amplitude, c.mode); err == nil {
			t.Errorf("%+v: %+v; want an error", c, got)
		}
	}
}
