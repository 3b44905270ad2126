package swing

import (
	"testing"

	"boughline/quantity"
)

// EN 1176-1 Annex A, table of masses of n children (from memory).
// allAges are the users of an open playground (EN 1176-1 Annex A, from memory).
var allAges = Users{Mean: 53.8, Sd: 9.6}

func TestDesignMass(t *testing.T) {
	for _, row := range []struct {
		n    int
		want float64
	}{{1, 69.5}, {2, 130}, {3, 189}, {5, 304}, {10, 588}} {
		tolerance := 0.5
		if row.n == 1 {
			tolerance = 0.05
		}
		within(t, "mass", float64(allAges.DesignMass(row.n)), row.want, tolerance)
	}
	if got := allAges.DesignMass(0); got != 0 {
		t.Errorf("nobody weighs %v kg", got)
	}
}

// One design user of 69.5 kg at the bottom of swings of 60, 75 and 90 degrees:
// 3 - 2 cos a times the weight, computed elsewhere.
func TestPeakPullOfDesignUser(t *testing.T) {
	for degrees, want := range map[quantity.Angle]float64{60: 1363, 75: 1692, 90: 2045} {
		within(t, "one", float64(PeakPull(69.5, degrees*quantity.Degree)), want, 0.6)
	}
	for degrees, want := range map[quantity.Angle]float64{60: 2550, 75: 3165, 90: 3825} {
		within(t, "two", float64(PeakPull(130, degrees*quantity.Degree)), want, 0.6)
	}
}
