package swing

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// launched starts on the y side at an angle, with a sideways speed along -x.
func launched(length quantity.Length, angle quantity.Angle, sideways float64) SpatialState {
	l := float64(length)
	return SpatialState{
		Position: quantity.Vec3{Y: l * angle.Sin(), Z: -l * angle.Cos()},
		Velocity: quantity.Vec3{X: -sideways},
	}
}

// A level circle: tan q = v^2 / (g L sin q), the conical pendulum of any
// mechanics text; the pull is m g / cos q throughout.
func TestConicalSwing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := DriftingSwing{Length: quantity.Length(rapid.Float64Range(1, 12).Draw(t, "length")), Mass: 60}
		angle := drawAngle(t, "angle", 5, 75)
		l := float64(s.Length)
		radius := l * angle.Sin()
		speed := math.Sqrt(quantity.StandardGravity * radius * math.Tan(float64(angle)))
		start := launched(s.Length, angle, speed)
		bounds, err := s.Bounds(start)
		if err != nil {
			t.Fatal(err)
		}
		pull := float64(s.Mass.Weight()) / angle.Cos()
		for _, c := range [][3]float64{
			{float64(bounds.LeastRadius), radius, 1e-6}, {float64(bounds.GreatestRadius), radius, 1e-6},
			{float64(bounds.LeastPull), pull, 1e-5 * pull}, {float64(bounds.PeakPull), pull, 1e-5 * pull},
		} {
			if math.Abs(c[0]-c[1]) > c[2] {
				t.Errorf("%+v, want radius %v m and pull %v N", bounds, radius, pull)
			}
		}
		turn := quantity.Time(2 * math.Pi * radius / speed)
		spans, err := s.Move(start, StemAt{}, turn)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(float64(spans[0].GreatestX.Value)-radius) > 1e-8 || math.Abs(float64(spans[0].LeastX.Value)+radius) > 1e-8 {
			t.Errorf("reaches %v to %v m, want %v m either way", spans[0].LeastX.Value, spans[0].GreatestX.Value, radius)
		}
	})
}

// Without a sideways launch the swing stays in its plane: it passes the bottom,
// and its pulls are those of the closed forms.
func TestDriftWithoutLaunchIsPlanar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := DriftingSwing{Length: 5, Mass: 60}
		angle := drawAngle(t, "angle", 2, 88)
		bounds, err := s.Bounds(launched(5, angle, 0))
		if err != nil {
			t.Fatal(err)
		}
		want := Bounds{0, 5 * quantity.Length(angle.Sin()), Pull(60, angle, angle), PeakPull(60, angle)}
		if bounds.LeastRadius != 0 || math.Abs(float64(bounds.GreatestRadius-want.GreatestRadius)) > 1e-9 ||
			math.Abs(float64(bounds.LeastPull-want.LeastPull)) > 1e-7 || math.Abs(float64(bounds.PeakPull-want.PeakPull)) > 1e-7 {
			t.Errorf("got %+v, want %+v", bounds, want)
		}
		spans, err := s.Move(launched(5, angle, 0), StemAt{X: -3, Radius: 0.3}, 7)
		if err != nil {
			t.Fatal(err)
		}
		if spans[0].LeastX.Value != 0 || spans[0].GreatestX.Value != 0 {
			t.Errorf("leaves its plane: %+v", spans[0])
		}
	})
}

// Small swings draw an ellipse with half axes a and v / sqrt(g/L) (any
// mechanics text); with larger ones the motion keeps within the bounds.
func TestSmallDriftIsEllipse(t *testing.T) {
	s := DriftingSwing{Length: 6, Mass: 40}
	start := launched(6, 0.5*quantity.Degree, 0.03)
	half := 0.03 / math.Sqrt(quantity.StandardGravity/6)
	spans, err := s.Move(start, StemAt{X: -2}, SmallPeriod(6))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "half axis", -float64(spans[0].LeastX.Value), half, 1e-4*half)
	bounds, err := s.Bounds(start)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "least radius", float64(bounds.LeastRadius), half, 1e-4*half)
}

func TestDriftKeepsWithinBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := DriftingSwing{Length: quantity.Length(rapid.Float64Range(2, 10).Draw(t, "length")), Mass: 60}
		start := launched(s.Length, drawAngle(t, "angle", 5, 70), rapid.Float64Range(0.1, 3).Draw(t, "sideways"))
		bounds, err := s.Bounds(start)
		if err != nil {
			t.Fatal(err)
		}
		sphere := &spherical{float64(s.Length), float64(s.Mass), quantity.StandardGravity}
		pull := func(y []float64) float64 { return sphere.mass * sphere.length * sphere.tension(y) }
		rate := func(y []float64) float64 { return -y[5] } // the pull falls evenly with height
		radius := func(y []float64) float64 { return math.Hypot(y[0], y[1]) }
		p, v := start.Position, start.Velocity
		m, err := begin(sphere, []float64{p.X, p.Y, p.Z, v.X, v.Y, v.Z}, observer{observe(pull, rate), observe(radius, rate)}, nil)
		if err != nil {
			t.Fatal(err)
		}
		if err := m.until(3*SmallPeriod(s.Length), func() {}); err != nil {
			t.Fatal(err)
		}
		for _, c := range [][2]float64{
			{m.observer[0].most.value, float64(bounds.PeakPull)}, {m.observer[0].least.value, float64(bounds.LeastPull)},
			{m.observer[1].most.value, float64(bounds.GreatestRadius)}, {m.observer[1].least.value, float64(bounds.LeastRadius)},
		} {
			if math.Abs(c[0]-c[1]) > 1e-7*math.Abs(c[1])+1e-9 {
				t.Errorf("motion reaches %v, bound %v", c[0], c[1])
			}
		}
	})
}

// Launched to the other side, the swing is the mirror image.
func TestDriftMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := DriftingSwing{Length: 5, Mass: 60}
		angle, sideways := drawAngle(t, "angle", 5, 70), rapid.Float64Range(0.1, 3).Draw(t, "sideways")
		stem := StemAt{X: quantity.Length(rapid.Float64Range(-4, -1).Draw(t, "stem")), Radius: 0.25}
		left, err := s.Move(launched(5, angle, sideways), stem, 9)
		if err != nil {
			t.Fatal(err)
		}
		stem.X = -stem.X
		right, err := s.Move(launched(5, angle, -sideways), stem, 9)
		if err != nil {
			t.Fatal(err)
		}
		if left[0].LeastX.Value != -right[0].GreatestX.Value || left[0].Closest != right[0].Closest || left[0].Touched.At != right[0].Touched.At {
			t.Errorf("left %+v\nright %+v", left[0], right[0])
		}
		if touched := left[0].Closest.Value <= 0; touched != left[0].Touched.Met {
			t.Errorf("closest %v m, touched %v", left[0].Closest.Value, left[0].Touched.Met)
		}
	})
}

func TestDriftRefuses(t *testing.T) {
	s := DriftingSwing{Length: 5, Mass: 60}
	off := launched(4, 1, 0)
	along := launched(5, 1, 0)
	along.Velocity.Z = -1
	for name, start := range map[string]SpatialState{"hang point": off, "along the line": along} {
		if _, err := s.Bounds(start); err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%s: got %v", name, err)
		}
	}
	if _, err := s.Bounds(launched(5, 100*quantity.Degree, 1)); err == nil || !strings.Contains(err.Error(), "slack") {
		t.Errorf("start above the hang point: got %v", err)
	}
	if _, err := s.Move(launched(5, 1, 1), StemAt{}, 0); err == nil {
		t.Error("window of 0 s: want an error")
	}
}
