package throw

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// Worked step by step through the times of rise and fall, projectile without drag: 4 m ahead and 5 m up. The rise takes
// sqrt(2 x 5/9.80665) = 1.009810 s at 9.902853 m/s upwards and 3.961141 m/s ahead: 10.665699 m/s at
// 68.198591 degrees; 0.35 kg leave the hand with 19.907500 J. Over ground 1.5 m below
// the hand it falls 6.5 m in 1.151361 s and comes down 8.560702 m ahead.
func TestOverByHand(t *testing.T) {
	l, err := Over(4, 5)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "speed", float64(l.Speed), 10.665699, 1e-5)
	near(t, "angle", l.Angle.Degrees(), 68.198591, 1e-5)
	near(t, "energy", l.Joules(0.35), 19.9075, 1e-3)
	near(t, "lands", float64(l.Lands(1.5)), 8.560702, 1e-5)
	near(t, "highest", float64(l.Height(4)), 5, 1e-12)
}

// Range v^2 sin(2a)/g on level ground and height v^2 sin^2(a)/(2 g): any
// textbook.
func TestLandsOnTheLevel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y := rapid.Float64Range(0.5, 20).Draw(t, "ahead"), rapid.Float64Range(0.5, 20).Draw(t, "up")
		l, err := Over(quantity.Length(x), quantity.Length(y))
		if err != nil {
			t.Fatal(err)
		}
		v, a := float64(l.Speed), float64(l.Angle)
		for what, pair := range map[string][2]float64{
			"range":   {float64(l.Lands(0)), v * v * math.Sin(2*a) / quantity.StandardGravity},
			"highest": {y, v * v * math.Sin(a) * math.Sin(a) / (2 * quantity.StandardGravity)},
			"twice":   {float64(l.Lands(0)), 2 * x},
		} {
			if math.Abs(pair[0]-pair[1]) > 1e-9*(1+pair[1]) {
				t.Fatalf("%s: %v, want %v", what, pair[0], pair[1])
			}
		}
		if least := LeastSpeed(quantity.Length(x), quantity.Length(y)); l.Speed < least*(1-1e-12) {
			t.Fatalf("thrown with %v m/s where nothing slower than %v m/s gets there", l.Speed, least)
		}
	})
	if _, err := Over(0, 5); err == nil {
		t.Error("a throw straight up goes over a limb")
	}
}

// The envelope of all throws, tried angle by angle.
func TestLeastSpeed(t *testing.T) {
	const x, y = 4.0, 5.0
	least := math.Inf(1)
	for i := 1; i < 9000; i++ {
		a := float64(i) / 9000 * math.Pi / 2
		if lift := x*math.Tan(a) - y; lift > 0 {
			least = math.Min(least, x/math.Cos(a)*math.Sqrt(quantity.StandardGravity/(2*lift)))
		}
	}
	near(t, "least", float64(LeastSpeed(x, y)), least, 1e-5)
}
