package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func drawElastic(t *rapid.T) ElasticSwing {
	return ElasticSwing{
		Length:    quantity.Length(rapid.Float64Range(2, 12).Draw(t, "length")),
		Mass:      quantity.Mass(rapid.Float64Range(15, 130).Draw(t, "mass")),
		Stiffness: quantity.Stiffness(rapid.Float64Range(1500, 50000).Draw(t, "stiffness")),
	}
}

func moved(t interface{ Fatal(...any) }, s ElasticSwing, start PlanarState, window quantity.Time) ElasticSpan {
	spans, err := s.Move(start, window)
	if err != nil {
		t.Fatal(err)
	}
	return spans[0]
}

// A rider hanging at rest keeps hanging, the line stretched by W/k.
func TestHangingAtRest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		span := moved(t, s, AtRest(0, s.Balanced(0)), 5)
		weight := float64(s.Mass.Weight())
		// Where nothing moves the steps grow until the control of the error alone
		// keeps rounding down: a thousand times the precision of the length.
		off := 1000 * precision.Relative * float64(s.Length) * float64(s.Stiffness)
		for _, pull := range []quantity.Force{span.PeakPull.Value, span.LeastPull.Value} {
			if math.Abs(float64(pull)-weight) > off {
				t.Errorf("the line pulls %v N on a weight of %v N", pull, weight)
			}
		}
	})
}

// A load let go on the unstretched line bounces with damping as any text on
// vibrations has it: the first and greatest stretch is
// W/k (1 + exp(-pi z / sqrt(1 - z^2))), half a damped period after the start.
func TestDampedBounce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		z := rapid.Float64Range(0, 0.6).Draw(t, "damping ratio")
		omega := math.Sqrt(float64(s.Stiffness) / float64(s.Mass))
		s.Damping = Damping(2 * z * omega * float64(s.Mass))
		damped := math.Sqrt(1 - z*z)
		span := moved(t, s, PlanarState{Depth: s.Length}, quantity.Time(1.9*math.Pi/(omega*damped)))
		static := float64(s.Mass.Weight()) / float64(s.Stiffness)
		want := static * (1 + math.Exp(-math.Pi*z/damped))
		if got := float64(span.LowestDepth.Value - s.Length); math.Abs(got-want) > 1e-9 {
			t.Errorf("stretch %v m, want %v m", got, want)
		}
		if at, want := float64(span.LowestDepth.At), math.Pi/(omega*damped); math.Abs(at-want) > 1e-6 {
			t.Errorf("at %v s, want %v s", at, want)
		}
	})
}

// The stiffer the line, the nearer the swing comes to the rigid one.
func TestStiffLineIsRigid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		s.Stiffness *= 1000
		amplitude := drawAngle(t, "amplitude", 10, 80)
		span := moved(t, s, AtRest(amplitude, s.Balanced(amplitude)), SmallPeriod(s.Length)/2)
		rigid := float64(PeakPull(s.Mass, amplitude))
		if got := float64(span.PeakPull.Value); math.Abs(got-rigid) > 2e-3*rigid {
			t.Errorf("peak %v N, rigid %v N", got, rigid)
		}
	})
}

// A swing from the left is the mirror image of one from the right.
func TestElasticMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		amplitude := drawAngle(t, "amplitude", 5, 85)
		distance := s.Length * quantity.Length(rapid.Float64Range(0.8, 1.02).Draw(t, "distance"))
		right := moved(t, s, AtRest(amplitude, distance), 4)
		left := moved(t, s, AtRest(-amplitude, distance), 4)
		if left.LowestX != -right.LowestX || left.PeakPull != right.PeakPull || left.LeastPull != right.LeastPull ||
			left.LowestDepth != right.LowestDepth || left.Taut.At != right.Taut.At {
			t.Errorf("left %+v\nright %+v", left, right)
		}
	})
}

// Inside the circle of the line the rider falls freely: the line comes tight
// where x^2 + (d + g t^2/2)^2 = L^2.
func TestFreeFallUntilTight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		start := AtRest(drawAngle(t, "angle", 0, 80), s.Length*quantity.Length(rapid.Float64Range(0.4, 0.99).Draw(t, "share")))
		x, d, l := float64(start.X), float64(start.Depth), float64(s.Length)
		want := math.Sqrt(2 * (math.Sqrt(l*l-x*x) - d) / quantity.StandardGravity)
		span := moved(t, s, start, quantity.Time(want+0.05))
		if !span.Taut.Met || math.Abs(float64(span.Taut.At)-want) > 1e-9 || span.LeastPull.Value != 0 {
			t.Errorf("tight %+v, want at %v s", span.Taut, want)
		}
		if moved(t, s, start, quantity.Time(want*0.9)).Taut.Met {
			t.Error("tight before the fall is over")
		}
	})
}

// Slack and tight again, many times, without losing energy to the joints.
func TestEnergyThroughSlackAndJerk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		run := newElasticRun(s, AtRest(drawAngle(t, "angle", 20, 70), s.Length*0.9))
		m, err := begin(&run.elastic, run.start[:], run.observer, nil, run.events(nil)...)
		if err != nil {
			t.Fatal(err)
		}
		changes := 0
		if err := m.until(10, func() { changes++; run.change(m.Time(), m.State()) }); err != nil {
			t.Fatal(err)
		}
		before, after := run.energy(run.start[:]), run.energy(m.State())
		if scale := float64(s.Mass.Weight()) * float64(s.Length); math.Abs(after-before) > 1e-9*scale {
			t.Errorf("energy %v J became %v J through %d changes", before, after, changes)
		}
		if changes == 0 {
			t.Error("never tight")
		}
	})
}

// Damping takes the force of later passes down, and no peak is lost between
// windows: longer windows only widen the extremes.
func TestWindowsWiden(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		s.Damping = Damping(rapid.Float64Range(0, 300).Draw(t, "damping"))
		spans, err := s.Move(AtRest(drawAngle(t, "angle", 5, 85), s.Length), 1, 2, 3.5, 6)
		if err != nil {
			t.Fatal(err)
		}
		for i := 1; i < len(spans); i++ {
			if spans[i].PeakPull.Value < spans[i-1].PeakPull.Value || spans[i].LeastPull.Value > spans[i-1].LeastPull.Value ||
				spans[i].LowestDepth.Value < spans[i-1].LowestDepth.Value {
				t.Errorf("window %d is narrower than the one before it", i)
			}
		}
		whole := moved(t, s, AtRest(0, s.Length), 6)
		s.Damping += 200
		if more := moved(t, s, AtRest(0, s.Length), 6); more.LowestDepth.Value > whole.LowestDepth.Value {
			t.Errorf("more damping falls deeper: %v m, not %v m", more.LowestDepth.Value, whole.LowestDepth.Value)
		}
	})
}

// The extremes found as events hold against every point of a fine scan.
func TestNoPointBeyondTheExtremes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawElastic(t)
		s.Damping = Damping(rapid.Float64Range(0, 200).Draw(t, "damping"))
		run := newElasticRun(s, AtRest(drawAngle(t, "angle", 5, 85), s.Length*0.95))
		m, err := begin(&run.elastic, run.start[:], run.observer, nil, run.events(nil)...)
		if err != nil {
			t.Fatal(err)
		}
		var peak, lowest float64
		for i := 1; i <= 400; i++ {
			if err := m.until(quantity.Time(i)*0.01, func() { run.change(m.Time(), m.State()) }); err != nil {
				t.Fatal(err)
			}
			peak, lowest = math.Max(peak, run.pull(m.State())), math.Max(lowest, m.State()[1])
		}
		start := PlanarState{X: quantity.Length(run.start[0]), Depth: quantity.Length(run.start[1])}
		span := moved(t, s, start, 4)
		if float64(span.PeakPull.Value) < peak-1e-6 || float64(span.LowestDepth.Value) < lowest-1e-9 {
			t.Errorf("scan finds %v N and %v m, events %v N and %v m", peak, lowest, span.PeakPull.Value, span.LowestDepth.Value)
		}
	})
}

// A rider released over a slope meets it where the arc does.
func TestGroundContact(t *testing.T) {
	s := ElasticSwing{Length: 5, Mass: 60, Stiffness: 5e6, Ground: func(x quantity.Length) quantity.Length { return 5.2 - 0.3*x }}
	span := moved(t, s, AtRest(-60*quantity.Degree, 5), 3)
	if !span.Ground.Met {
		t.Fatal("the rider meets no ground")
	}
	x, depth := float64(span.Ground.State.X), float64(span.Ground.State.Depth)
	within(t, "on the slope", depth, 5.2-0.3*x, 1e-9)
	// x^2 + (5.2 - 0.3 x)^2 = 25, the smaller root: plane geometry.
	within(t, "on the arc", x, (0.3*5.2-math.Sqrt(0.09*5.2*5.2-1.09*(5.2*5.2-25)))/1.09, 2e-3)
	s.Ground = func(quantity.Length) quantity.Length { return 6 }
	if moved(t, s, AtRest(-60*quantity.Degree, 5), 3).Ground.Met {
		t.Error("ground met 1 m below the arc")
	}
}

func TestElasticRefuses(t *testing.T) {
	good := ElasticSwing{Length: 5, Mass: 60, Stiffness: 5000}
	for name, spoil := range map[string]func(*ElasticSwing){
		"length": func(s *ElasticSwing) { s.Length = 0 }, "mass": func(s *ElasticSwing) { s.Mass = 0 },
		"stiffness": func(s *ElasticSwing) { s.Stiffness = 0 }, "damping": func(s *ElasticSwing) { s.Damping = -1 },
	} {
		bad := good
		spoil(&bad)
		if _, err := bad.Move(AtRest(1, 5), 1); err == nil {
			t.Errorf("%s out of range: want an error", name)
		}
	}
	if _, err := good.Move(PlanarState{}, 1); err == nil {
		t.Error("rider at the hang point: want an error")
	}
	if _, err := good.Move(AtRest(1, 5), 2, 1); err == nil {
		t.Error("windows out of order: want an error")
	}
}
