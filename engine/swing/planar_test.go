package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// First half swing at g = 9.81 m/s2 and air of 1.225 kg/m3, computed elsewhere
// with SciPy's DOP853 at 1e-11: next end (deg) and its time (s).
func TestDragRows(t *testing.T) {
	for _, row := range []struct{ length, amplitude, area, mass, end, time float64 }{
		{5, 60, 0.4, 70, 58.458156, 2.402696}, {5, 60, 0.6, 70, 57.718666, 2.400794},
		{4, 45, 0.3, 30, 43.827682, 2.084253}, {8, 75, 0.6, 70, 69.285526, 3.149078},
	} {
		halves, err := PlanarSwing{
			Length: quantity.Length(row.length), Mass: quantity.Mass(row.mass), DragArea: quantity.Area(row.area), AirDensity: 1.225,
			Amplitude: quantity.Angle(row.amplitude) * quantity.Degree, Gravity: 9.81,
		}.HalfSwings(1)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "end", halves[0].Amplitude.Degrees(), row.end, 6e-7)
		within(t, "time", float64(halves[0].End), row.time, 6e-7)
	}
}

// With quadratic drag the square of the angular speed, u, is a linear function
// of itself along the angle, du/dq = -2 (g/L) sin q + 2 c u on the way back,
// which has a closed form; the next end is its root (mechanics texts; used by
// the reference results too).
func TestDragClosedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := PlanarSwing{
			Length: quantity.Length(rapid.Float64Range(1, 12).Draw(t, "length")), Mass: quantity.Mass(rapid.Float64Range(15, 120).Draw(t, "mass")),
			DragArea: quantity.Area(rapid.Float64Range(0.05, 1).Draw(t, "drag area")), AirDensity: 1.225, Amplitude: drawAngle(t, "amplitude", 5, 88),
		}
		halves, err := s.HalfSwings(2)
		if err != nil {
			t.Fatal(err)
		}
		start := s.Amplitude
		for i, half := range halves {
			if want := nextEnd(s, start); math.Abs(float64(half.Amplitude-want)) > 1e-9 {
				t.Errorf("half swing %d ends at %v deg, want %v deg", i+1, half.Amplitude.Degrees(), want.Degrees())
			}
			start = half.Amplitude
		}
	})
}

// nextEnd takes the angle p from the start on the way down: u as a function of
// p solves u' = 2 w sin(a - p) - 2 c u with w = g/L, u(0) = 0.
func nextEnd(s PlanarSwing, start quantity.Angle) quantity.Angle {
	w := quantity.StandardGravity / float64(s.Length)
	k := float64(s.AirDensity) * float64(s.DragArea) * float64(s.Length) / float64(s.Mass) // 2 c
	a := float64(start)
	particular := func(p float64) float64 { return 2 * w / (1 + k*k) * (k*math.Sin(a-p) + math.Cos(a-p)) }
	u := func(p float64) float64 { return particular(p) - particular(0)*math.Exp(-k*p) }
	return quantity.Angle(numeric.Root(u, a, 2*a+1e-6) - a)
}

// Without drag the ends stay, the time is half the elliptic period, and speed
// and pull at the bottom are those of the closed forms.
func TestPlanarWithoutDrag(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := PlanarSwing{Length: quantity.Length(rapid.Float64Range(1, 15).Draw(t, "length")), Mass: 60, Amplitude: drawAngle(t, "amplitude", 1, 89.5)}
		halves, err := s.HalfSwings(4)
		if err != nil {
			t.Fatal(err)
		}
		period, err := Period(s.Length, s.Amplitude)
		if err != nil {
			t.Fatal(err)
		}
		for i, half := range halves {
			same := func(name string, got, want float64) {
				if math.Abs(got-want) > 1e-9*math.Abs(want) {
					t.Errorf("half swing %d: %s is %v, want %v", i+1, name, got, want)
				}
			}
			same("amplitude", float64(half.Amplitude), float64(s.Amplitude))
			same("end", float64(half.End), float64(i+1)*float64(period)/2)
			same("bottom", float64(half.Bottom), (float64(i)+0.5)*float64(period)/2)
			same("speed", float64(half.BottomSpeed), float64(BottomSpeed(s.Length, s.Amplitude)))
			same("peak", float64(half.PeakPull.Value), float64(PeakPull(s.Mass, s.Amplitude)))
		}
	})
}

func TestPlanarRefuses(t *testing.T) {
	good := PlanarSwing{Length: 5, Mass: 60, DragArea: 0.5, AirDensity: 1.2, Amplitude: 1}
	for name, spoil := range map[string]func(*PlanarSwing){
		"length": func(s *PlanarSwing) { s.Length = 0 }, "mass": func(s *PlanarSwing) { s.Mass = -1 },
		"drag area": func(s *PlanarSwing) { s.DragArea = -1 }, "amplitude": func(s *PlanarSwing) { s.Amplitude = math.Pi / 2 },
		"raise": func(s *PlanarSwing) { s.Raise = 6 }, "gravity": func(s *PlanarSwing) { s.Gravity = Acceleration(math.NaN()) },
	} {
		bad := good
		spoil(&bad)
		if _, err := bad.HalfSwings(1); err == nil {
			t.Errorf("%s out of range: want an error", name)
		}
	}
}
