package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/engine/numeric"
	"boughline/quantity"
)

func drawYielding(t *rapid.T) YieldingSwing {
	limb := quantity.Mass(rapid.Float64Range(20, 200).Draw(t, "limb"))
	draw := func(name string) Support {
		return SupportOf(limb, quantity.Frequency(rapid.Float64Range(1, 6).Draw(t, name+" frequency")),
			quantity.Proportion(rapid.Float64Range(0, 0.2).Draw(t, name+" damping")))
	}
	s := YieldingSwing{
		Length: quantity.Length(rapid.Float64Range(2, 10).Draw(t, "length")), Mass: quantity.Mass(rapid.Float64Range(20, 120).Draw(t, "mass")),
		LimbMass: limb, Vertical: draw("vertical"),
	}
	if rapid.Bool().Draw(t, "both ways") {
		horizontal := draw("horizontal")
		s.Horizontal = &horizontal
	}
	return s
}

func yielded(t interface{ Fatal(...any) }, s YieldingSwing, start YieldingState, window quantity.Time) YieldingSpan {
	spans, err := s.Move(start, window)
	if err != nil {
		t.Fatal(err)
	}
	return spans[0]
}

func TestSupportOf(t *testing.T) {
	support := SupportOf(60, 2, 0.05)
	within(t, "stiffness", float64(support.Stiffness), 60*math.Pow(4*math.Pi, 2), 1e-9)
	within(t, "damping", float64(support.Damping), 2*0.05*4*math.Pi*60, 1e-9)
	if by := SupportBy(60, support.Stiffness, 0.05); math.Abs(float64(by.Damping-support.Damping)) > 1e-12 {
		t.Errorf("by stiffness %v, by frequency %v", by, support)
	}
}

// The stiffer the limb, the nearer the swing comes to the one on a rigid
// support.
func TestStiffLimbIsRigid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawYielding(t)
		s.Vertical = SupportOf(s.LimbMass, 60, 0.05)
		if s.Horizontal != nil {
			s.Horizontal = &s.Vertical
		}
		angle := drawAngle(t, "angle", 10, 80)
		span := yielded(t, s, s.Held(angle), SmallPeriod(s.Length))
		rigid := float64(PeakPull(s.Mass, angle))
		for _, force := range []quantity.Force{span.PeakPull.Value, span.PeakVertical.Value} {
			if math.Abs(float64(force)-rigid) > 0.02*rigid {
				t.Errorf("peak %v N, rigid %v N", force, rigid)
			}
		}
	})
}

// Hanging straight and let go on the unbent limb, rider and limb bounce as one
// mass on the spring: sag up to twice the static one without damping, half a
// period pi sqrt((M + m)/k) after the start.
func TestBounceOfRiderAndLimb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawYielding(t)
		s.Vertical.Damping = 0
		omega := math.Sqrt(float64(s.Vertical.Stiffness) / float64(s.Mass+s.LimbMass))
		span := yielded(t, s, YieldingState{}, quantity.Time(1.5*math.Pi/omega))
		static := float64(s.Mass.Weight()) / float64(s.Vertical.Stiffness)
		if got := float64(span.GreatestSag.Value); math.Abs(got-2*static) > 1e-9 {
			t.Errorf("sag %v m, want %v m", got, 2*static)
		}
		if at := float64(span.GreatestSag.At); math.Abs(at-math.Pi/omega) > 1e-6 {
			t.Errorf("at %v s, want %v s", at, math.Pi/omega)
		}
		// The pull there holds the weight and gives the rider's acceleration.
		want := float64(s.Mass) * (quantity.StandardGravity + omega*omega*static)
		if got := float64(span.PeakPull.Value); math.Abs(got-want) > 1e-8*want {
			t.Errorf("pull %v N, want %v N", got, want)
		}
	})
}

// A rider at rest on a limb bent at rest stays, and the limb bears the weight.
func TestYieldingAtRest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawYielding(t)
		span := yielded(t, s, s.Held(0), 3)
		weight := float64(s.Mass.Weight())
		off := 1000 * precision.Relative * float64(s.Length) * float64(s.Vertical.Stiffness) // as in TestHangingAtRest
		for _, force := range []quantity.Force{span.PeakPull.Value, span.LeastPull.Value, span.PeakVertical.Value, span.PeakSpring.Value} {
			if math.Abs(float64(force)-weight) > off {
				t.Errorf("%+v, want %v N", span, weight)
			}
		}
	})
}

// The equations meet Newton's law for the rider, and the rates of the forces
// are their derivatives along the motion (central differences).
func TestYieldingEquations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := newYieldingRun(drawYielding(t))
		y := make([]float64, 6)
		for i, reach := range []float64{0.1, 0.1, 1.2, 1, 1, 2} {
			y[i] = rapid.Float64Range(-reach, reach).Draw(t, "state")
		}
		if !run.bothWays {
			y[0], y[3] = 0, 0
		}
		var d [6]float64
		run.Rates(0, y, d[:])
		sin, cos := math.Sincos(y[2])
		ax := d[3] + run.length*(cos*d[5]-sin*y[5]*y[5])
		ay := d[4] + run.length*(sin*d[5]+cos*y[5]*y[5])
		pull := run.pull(y)
		if scale := run.mass * 100; math.Abs(run.mass*ax+pull*sin) > 1e-10*scale || math.Abs(run.mass*(ay+run.gravity)-pull*cos) > 1e-10*scale {
			t.Errorf("rider accelerates at %v, %v m/s2 under a pull of %v N", ax, ay, pull)
		}
		const h = 1e-4
		at := func(step float64, of func([]float64) float64) float64 {
			in, err := numeric.NewIntegrator(&backAndForth{run, step < 0}, 0, y, precision)
			if err != nil {
				t.Fatal(err)
			}
			if _, err := in.Run(math.Abs(step)); err != nil {
				t.Fatal(err)
			}
			return of(in.State())
		}
		for i, o := range run.observer {
			slope := (8*(at(h, o.value)-at(-h, o.value)) - (at(2*h, o.value) - at(-2*h, o.value))) / (12 * h)
			if rate := o.rate(y); math.Abs(rate-slope) > 1e-5*(1+math.Abs(rate)) {
				t.Errorf("quantity %d: rate %v, slope %v", i, rate, slope)
			}
		}
	})
}

// backAndForth runs a yielding swing in either sense of time.
type backAndForth struct {
	*yieldingRun
	back bool
}

func (b *backAndForth) Rates(t float64, y, rates []float64) {
	b.yieldingRun.Rates(t, y, rates)
	for i := range rates {
		if b.back {
			rates[i] = -rates[i]
		}
	}
}

func TestYieldingMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawYielding(t)
		angle := drawAngle(t, "angle", 5, 80)
		right, left := yielded(t, s, s.Held(angle), 4), yielded(t, s, s.Held(-angle), 4)
		if right != left {
			t.Errorf("left %+v\nright %+v", left, right)
		}
	})
}

func TestYieldingRefuses(t *testing.T) {
	good := YieldingSwing{Length: 5, Mass: 60, LimbMass: 80, Vertical: Support{Stiffness: 1e4}, Horizontal: &Support{Stiffness: 1e4}}
	for name, spoil := range map[string]func(*YieldingSwing){
		"length": func(s *YieldingSwing) { s.Length = 0 }, "mass": func(s *YieldingSwing) { s.Mass = 0 },
		"limb mass": func(s *YieldingSwing) { s.LimbMass = 0 }, "vertical stiffness": func(s *YieldingSwing) { s.Vertical.Stiffness = 0 },
		"vertical damping":     func(s *YieldingSwing) { s.Vertical.Damping = -1 },
		"horizontal stiffness": func(s *YieldingSwing) { s.Horizontal = &Support{} },
		"horizontal damping":   func(s *YieldingSwing) { s.Horizontal = &Support{1e4, -1} },
	} {
		bad := good
		spoil(&bad)
		if _, err := bad.Move(good.Held(1), 1); err == nil {
			t.Errorf("%s out of range: want an error", name)
		}
	}
	if _, err := good.Move(good.Held(math.Pi/2), 1); err == nil {
		t.Error("angle of 90 deg: want an error")
	}
}
