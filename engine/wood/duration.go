package wood

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// MadisonLevel returns the stress that breaks wood after the duration t, as a
// share of its strength in a test of some 5 to 8 minutes. Above 1 for shorter
// loads. Tested from seconds to years on dry clear Douglas-fir in bending;
// other experiments found lower levels for loads of months (Thurston 1881: 0.6
// fails within 8 to 15 months).
// Errors: a duration that is not positive.
// Source: Wood, 1951, Forest Products Laboratory report 1916, as quoted in
// Forests 12:1148 (2021): SL% = 18.3 + 108.4 t^-0.0464, t in seconds.
func MadisonLevel(t quantity.Time) (float64, error) {
	if !(t > 0) {
		return 0, fmt.Errorf("duration of load %v s; expected more than 0", float64(t))
	}
	return (18.3 + 108.4*math.Pow(float64(t), -0.0464)) / 100, nil
}

// DurationFactor returns the Madison level, at most 1: short pulls are given no
// bonus over the strength of a test of minutes, which is the cautious side.
// Errors and source as MadisonLevel.
func DurationFactor(t quantity.Time) (float64, error) {
	level, err := MadisonLevel(t)
	return math.Min(1, level), err
}
