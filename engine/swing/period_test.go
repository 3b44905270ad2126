package swing

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// T/T0 computed elsewhere with SciPy's ellipk.
func TestPeriodRatio(t *testing.T) {
	for _, row := range [][2]float64{
		{5, 1.000476172}, {10, 1.001907188}, {20, 1.007669026}, {30, 1.017408798}, {40, 1.031340519}, {45, 1.039973343},
		{50, 1.049782961}, {60, 1.073182007}, {70, 1.102144910}, {75, 1.118959039}, {80, 1.137492560}, {90, 1.180340599},
		{100, 1.232229197}, {110, 1.295339999}, {120, 1.372880501}, {130, 1.469819326}, {140, 1.594446101},
		{150, 1.762203730}, {160, 2.007507401}, {170, 2.439362720}, {179, 3.901065160},
	} {
		within(t, "ratio", float64(PeriodRatio(quantity.Angle(row[0])*quantity.Degree)), row[1], 6e-10)
	}
}

// Periods at g = 9.81 m/s2, computed elsewhere with SciPy's ellipk.
func TestRodPeriod(t *testing.T) {
	for _, row := range [][3]float64{
		{3, 60, 3.728888}, {4, 45, 4.172512}, {5, 30, 4.563792}, {5, 60, 4.813974}, {6, 75, 5.498385}, {8, 90, 6.697268},
	} {
		period, err := RodPeriod(quantity.Length(row[0]), quantity.Angle(row[1])*quantity.Degree)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "period", float64(period)*math.Sqrt(quantity.StandardGravity/9.81), row[2], 6e-7)
	}
}

// The series 1 + a^2/16 + 11 a^4/3072 holds for small amplitudes (any text on
// the pendulum; its next term is 173 a^6/737280).
func TestPeriodSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amplitude := drawAngle(t, "amplitude", 0, 30)
		a := float64(amplitude)
		series := 1 + a*a/16 + 11*math.Pow(a, 4)/3072
		next := 173 * math.Pow(a, 6) / 737280
		if off := float64(PeriodRatio(amplitude)) - series; off < -1e-14 || off > 1.2*next+1e-14 {
			t.Errorf("at %v deg off the series by %g, want between 0 and %g", amplitude.Degrees(), off, next)
		}
	})
}

func TestPeriodRefusesSlackLine(t *testing.T) {
	for _, degrees := range []quantity.Angle{90, 120, 0, -10, quantity.Angle(math.NaN())} {
		_, err := Period(5, degrees*quantity.Degree)
		if err == nil || !strings.Contains(err.Error(), "amplitude") || !strings.Contains(err.Error(), "slack") {
			t.Errorf("at %v deg: got %v, want an error that says the line goes slack", degrees, err)
		}
	}
	if _, err := RodPeriod(5, 120*quantity.Degree); err != nil {
		t.Errorf("a rod at 120 deg: %v", err)
	}
	if _, err := RodPeriod(5, 180*quantity.Degree); err == nil {
		t.Error("a rod at 180 deg: want an error")
	}
	if _, err := Period(-1, 1); err == nil {
		t.Error("a line of -1 m: want an error")
	}
	for _, degrees := range []quantity.Angle{-1, 180, 200} {
		if ratio := PeriodRatio(degrees * quantity.Degree); !math.IsNaN(float64(ratio)) {
			t.Errorf("ratio at %v deg is %v, want no number", degrees, ratio)
		}
	}
}
