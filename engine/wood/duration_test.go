package wood

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

const (
	hour = 3600
	day  = 24 * hour
	year = 365.25 * day
)

// The curve of Wood, 1951, worked out apart from this code at round durations.
func TestMadisonLevelAtRoundDurations(t *testing.T) {
	for _, row := range []struct {
		t       quantity.Time
		percent float64
	}{
		{1, 126.7}, {3, 121.3}, {10, 115.7}, {5 * 60, 101.5}, {7.5 * 60, 99.9}, {hour, 92.4},
		{8 * hour, 85.6}, {day, 82.3}, {7 * day, 76.7}, {year, 66.9}, {10 * year, 62.0},
	} {
		got, err := MadisonLevel(row.t)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "level", 100*got, row.percent, 0.051)
	}
}

// Wood, 1947, an older line from the same laboratory: 90.4 - 6.3 log10(t in h) per
// cent. Both sources stay within 3 points of each other from an hour to ten years.
func TestMadisonLevelAgreesWithTheOlderLine(t *testing.T) {
	for hours := 1.0; hours < 1e5; hours *= 2 {
		got, err := MadisonLevel(quantity.Time(hours * hour))
		if err != nil {
			t.Fatal(err)
		}
		within(t, "level", 100*got, 90.4-6.3*math.Log10(hours), 3)
	}
}

func TestDurationFactorNeverRisesAndGivesNoBonus(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		short := rapid.Float64Range(0.01, 1e9).Draw(t, "duration")
		long := short * rapid.Float64Range(1, 100).Draw(t, "longer")
		before, err := DurationFactor(quantity.Time(short))
		if err != nil {
			t.Fatal(err)
		}
		after, err := DurationFactor(quantity.Time(long))
		if err != nil {
			t.Fatal(err)
		}
		if before > 1 || after > before {
			t.Errorf("%v at %v s, %v at %v s", before, short, after, long)
		}
	})
	if got, err := DurationFactor(2); err != nil || got != 1 {
		t.Errorf("a pull of 2 s: %v, %v; want 1", got, err)
	}
	if _, err := DurationFactor(0); err == nil {
		t.Error("no duration: no error")
	}
}

// Shares of 0.40 and 0.30: Wood Handbook, 2010, table 5-17 (from memory). White
// oak, Record, 1914: strength 55.8, proportional limit 29.8 MPa.
func TestRepeatedLimit(t *testing.T) {
	shares := RepeatedShares{OneWay: 0.40, Reversing: 0.30}
	for _, row := range []struct {
		name            string
		strength, limit quantity.Stress
		reversing       bool
		want            float64
	}{
		{"one way", 55.8e6, 29.8e6, false, 22.32},
		{"reversing", 55.8e6, 29.8e6, true, 16.74},
		{"low proportional limit", 55.8e6, 12e6, false, 12},
	} {
		got, err := shares.Limit(row.strength, row.limit, row.reversing)
		if err != nil {
			t.Fatal(err)
		}
		within(t, row.name, float64(got)/megapascal, row.want, 1e-9)
	}
	if _, err := shares.Limit(55.8e6, 0, false); err == nil {
		t.Error("no proportional limit: no error")
	}
	if _, err := (RepeatedShares{}).Limit(55.8e6, 29.8e6, true); err == nil {
		t.Error("no share: no error")
	}
}
