package place

import (
	"math"
	"testing"

	"boughline/quantity"
)

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.12g, want %.12g within %.2g", what, got, want, within)
	}
}

// Statics: the weight of a cylinder acts at half its length, that of a cone at
// a quarter of its height.
func TestSelfMomentOfCylinderAndCone(t *testing.T) {
	const d, l, weight = 0.2, 4.0, 900 * quantity.StandardGravity
	cylinder := Limb{Length: l, Base: d, Tip: d, Density: 900}
	near(t, "cylinder", float64(cylinder.SelfMoment(0)), math.Pi/4*d*d*l*weight*l/2, 1e-9)
	near(t, "its outer half", float64(cylinder.SelfMoment(l/2)), math.Pi/4*d*d*l/2*weight*l/4, 1e-9)
	cone := Limb{Length: l, Base: d, Tip: 1e-12, Density: 900}
	near(t, "cone", float64(cone.SelfMoment(0)), math.Pi/12*d*d*l*weight*l/4, 1e-7)
}

// Beam theory: a cylinder is stressed most at the stem, (M + T s)/(pi d^3/32).
func TestStressOfACylinder(t *testing.T) {
	b := Limb{Length: 4, Base: 0.2, Tip: 0.2, Density: 900}
	stress, at := b.Stress(2.5, 2000)
	want := (float64(b.SelfMoment(0)) + 2000*2.5) / (math.Pi * math.Pow(0.2, 3) / 32)
	near(t, "stress", float64(stress), want, 1e-6*want)
	near(t, "its station", float64(at), 0, 0)
}

// At the stem the limb carries itself alone.
func TestStressOfAHangAtTheStem(t *testing.T) {
	b := Limb{Length: 4, Base: 0.2, Tip: 0.1, Density: 900}
	stress, _ := b.Stress(0, 2000)
	want := float64(b.SelfMoment(0)) / (math.Pi * math.Pow(0.2, 3) / 32)
	near(t, "stress", float64(stress), want, 1e-6*want)
}

// A weightless cone under a load at s: with x the distance from the tip, M/W
// goes with (x - x0)/x^3, greatest at x = 3 x0/2 with x0 = length - s.
func TestStressOfAConeIsGreatestHalfwayBeyondTheLoad(t *testing.T) {
	b := Limb{Length: 6, Base: 0.3, Tip: 1e-9, Density: 1e-9}
	stress, at := b.Stress(4, 1500)
	near(t, "station", float64(at), 3, 1e-9)
	want := 1500 * 1 / (math.Pi * math.Pow(0.15, 3) / 32)
	near(t, "stress", float64(stress), want, 1e-6*want)
}
