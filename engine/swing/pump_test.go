package swing

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Rows of (1 - cos p2) = (L1/L2)^3 (1 - cos p1), computed elsewhere; the model
// is that of Wirkus, Rand & Ruina 1998 (abstract read).
func TestPumped(t *testing.T) {
	for _, row := range [][4]float64{
		{5, 4.7, 20, 21.968204}, {5, 4.7, 40, 44.083718}, {5, 4.7, 60, 66.545922}, {3, 2.7, 20, 23.469267}, {3, 2.7, 60, 71.691763},
	} {
		next, err := Pumped(quantity.Angle(row[2])*quantity.Degree, quantity.Length(row[0]), quantity.Length(row[1]))
		if err != nil {
			t.Fatal(err)
		}
		within(t, "amplitude", next.Degrees(), row[3], 6e-7)
	}
}

// The motion with the rider standing up at the bottom reaches the same ends,
// half swing after half swing, and its pull is that of the new amplitude.
func TestPumpingMotion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := PlanarSwing{
			Length: quantity.Length(rapid.Float64Range(2, 10).Draw(t, "length")), Mass: 50,
			Raise: quantity.Length(rapid.Float64Range(0, 0.3).Draw(t, "raise")), Amplitude: drawAngle(t, "amplitude", 5, 30),
		}
		halves, err := s.HalfSwings(3)
		if err != nil {
			t.Fatal(err)
		}
		amplitude := s.Amplitude
		for i, half := range halves {
			if amplitude, err = Pumped(amplitude, s.Length, s.Length-s.Raise); err != nil {
				t.Fatal(err)
			}
			if math.Abs(float64(half.Amplitude-amplitude)) > 1e-9 {
				t.Errorf("half swing %d ends at %v deg, want %v deg", i+1, half.Amplitude.Degrees(), amplitude.Degrees())
			}
			peak := float64(PeakPull(s.Mass, amplitude))
			if math.Abs(float64(half.PeakPull.Value)-peak) > 1e-8*peak {
				t.Errorf("half swing %d pulls %v N, want %v N", i+1, half.PeakPull.Value, peak)
			}
		}
	})
}

// A rider can pump to where the line goes slack: Linge, Comput. Methods
// Biomech. Biomed. Eng. 15 (2012) 1103-1109 (abstract read).
func TestPumpingEndsSlack(t *testing.T) {
	if _, err := Pumped(80*quantity.Degree, 3, 2.7); err == nil || !strings.Contains(err.Error(), "slack") {
		t.Errorf("got %v, want an error that says the line goes slack", err)
	}
	halves, err := PlanarSwing{Length: 3, Mass: 50, Raise: 0.3, Amplitude: 40 * quantity.Degree}.HalfSwings(10)
	if err == nil || !strings.Contains(err.Error(), "slack") {
		t.Errorf("got %v, want an error that says the line goes slack", err)
	}
	if len(halves) < 1 || len(halves) > 9 || halves[len(halves)-1].Amplitude >= 90*quantity.Degree {
		t.Errorf("%d half swings before it: %+v", len(halves), halves)
	}
}
