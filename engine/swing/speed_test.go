package swing

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Greatest speeds at g = 9.81 m/s2 by balance of energy, computed elsewhere.
func TestBottomSpeed(t *testing.T) {
	for _, row := range [][3]float64{
		{3, 60, 5.424942}, {4, 45, 4.794399}, {5, 30, 3.625315}, {5, 60, 7.003571}, {6, 75, 9.340868}, {8, 90, 12.528368},
	} {
		speed := BottomSpeed(quantity.Length(row[0]), quantity.Angle(row[1])*quantity.Degree)
		within(t, "speed", float64(speed)*math.Sqrt(9.81/quantity.StandardGravity), row[2], 6e-7)
	}
}

func TestAmplitudeOfUndoesSpeedAt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := quantity.Length(rapid.Float64Range(1, 15).Draw(t, "length"))
		amplitude := drawAngle(t, "amplitude", 1, 89)
		at := drawAngle(t, "share", 0, 1) / quantity.Degree * amplitude
		back, err := AmplitudeOf(length, at, SpeedAt(length, amplitude, at))
		if err != nil || math.Abs(float64(back-amplitude)) > 1e-9 {
			t.Errorf("got %v deg (%v), want %v deg", back.Degrees(), err, amplitude.Degrees())
		}
		if SpeedAt(length, amplitude, amplitude+1e-3) != 0 {
			t.Error("there is speed beyond the amplitude")
		}
	})
}

func TestAmplitudeOfRefusesSlackLine(t *testing.T) {
	if _, err := AmplitudeOf(4, 0, 9); err == nil || !strings.Contains(err.Error(), "slack") {
		t.Errorf("got %v, want an error that says the line goes slack", err)
	}
}
