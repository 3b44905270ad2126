package numeric

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The root of a cubic with a known root and the two ends either side of it.
func TestRootOfCubic(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root := rapid.Float64Range(0.1, 5).Draw(t, "root")
		left := root - rapid.Float64Range(1e-3, 10).Draw(t, "left")
		right := root + rapid.Float64Range(1e-3, 10).Draw(t, "right")
		evaluations := 0
		got := Root(func(x float64) float64 {
			evaluations++
			d := x - root
			return d * (d*d + 0.1)
		}, left, right)
		if math.Abs(got-root) > 4*epsilon*math.Max(1, math.Abs(root)) {
			t.Errorf("got %v, want %v", got, root)
		}
		if evaluations > 40 {
			t.Errorf("%d evaluations", evaluations)
		}
	})
}

// Published roots: Dottie's number (cos x = x) and the first zero of the
// Bessel function J0 (Abramowitz & Stegun, Handbook of Mathematical Functions,
// table 9.5, from memory).
func TestKnownRoots(t *testing.T) {
	for _, c := range []struct {
		f          func(float64) float64
		a, b, want float64
	}{
		{func(x float64) float64 { return math.Cos(x) - x }, 0, 1, 0.7390851332151607},
		{math.J0, 2, 3, 2.404825557695773},
		{func(x float64) float64 { return x * x * x }, -1, 2, 0},
		{func(x float64) float64 { return x }, -1, 1, 0},
		{func(x float64) float64 { return math.Copysign(1, x-0.3) }, 0, 1, 0.3},
	} {
		for _, ends := range [][2]float64{{c.a, c.b}, {c.b, c.a}} {
			if got := Root(c.f, ends[0], ends[1]); math.Abs(got-c.want) > 1e-15 {
				t.Errorf("between %v: got %v, want %v", ends, got, c.want)
			}
		}
	}
}

// Where rounding has taken the change of sign away, the nearer end is the root.
func TestRootWithoutChangeOfSign(t *testing.T) {
	f := func(x float64) float64 { return x + 1e-18 }
	if got := Root(f, 0, 1); got != 0 {
		t.Errorf("got %v, want 0", got)
	}
	if got := Root(f, 1, 0); got != 0 {
		t.Errorf("got %v, want 0", got)
	}
}
