package space

import (
	"math"
	"testing"

	"boughline/quantity"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// Fall heights: EN 1176-2:2008, 4.10.1, through the manual of a swing frame
// (p. 26). Seat to frame: EN 1176-2, 4.4, through a page of a German statutory
// accident insurer. Impact areas: EN 1176-2, 4.10, partly from memory.
func TestRulesOfTheSwingStandard(t *testing.T) {
	for _, row := range []struct {
		line, seat, fall, frame, firm, loose quantity.Length
	}{
		{2, 0.45, 1.450, 0.600, 3.4840, 3.9840},
		{2.4, 0.45, 1.650, 0.680, 3.8308, 4.3308},
		{4, 0.45, 2.450, 1.000, 5.2180, 5.7180},
		{5, 0.5, 3.000, 1.200, 6.0850, 6.5850},
	} {
		near(t, "fall height", float64(StandardFallHeight(row.line, row.seat)), float64(row.fall), 1e-9)
		near(t, "seat to frame", float64(SeatToFrame.For(row.line)), float64(row.frame), 1e-9)
		near(t, "impact area, firm", float64(ImpactAreaFirm.For(row.line)), float64(row.firm), 1e-9)
		near(t, "impact area, loose", float64(ImpactAreaLoose.For(row.line)), float64(row.loose), 1e-9)
	}
}

// The computed fall over level ground at 60 degrees is the standard's short
// rule (EN 1176-2, 4.10.1): 1 - cos 60 = 1/2.
func TestFallAtSixtyDegreesIsTheStandardFallHeight(t *testing.T) {
	swing := Swing{HangHeight: 4.45, Line: 4, Amplitude: 60 * quantity.Degree}
	got, err := Fall(level, swing)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "fall", float64(got.Height), float64(StandardFallHeight(4, 0.45)), 1e-12)
}

// EN 1176-1, X = 2Y/3 + 0.5, through a guide of the German statutory accident
// insurance, which prints the rows for 2.0 and 2.5 m rounded as 1.85 and 2.20.
func TestImpactArea(t *testing.T) {
	for _, row := range [][2]float64{{1, 1.5}, {1.5, 1.5}, {2, 1.8333}, {2.5, 2.1667}, {3, 2.5}} {
		near(t, "impact area", float64(ImpactArea(quantity.Length(row[0]))), row[1], 5e-5)
	}
}

func TestKeptClearTakesTheLarger(t *testing.T) {
	// L = 5 m, 60 degrees: the landing at 7.245 m out-runs 6.085 m.
	near(t, "long line", float64(KeptClear(-7.245, 5, ImpactAreaFirm)), 7.245, 1e-12)
	// L = 2 m, 60 degrees: the landing at 3.1055 m stays within 3.484 m.
	near(t, "short line", float64(KeptClear(3.1055, 2, ImpactAreaFirm)), 3.484, 1e-12)
}
