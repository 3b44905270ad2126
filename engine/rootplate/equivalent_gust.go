package rootplate

import (
	"fmt"

	"boughline/quantity"
)

// EquivalentGust tells a moment at the ground as the gust that gives the same
// moment on this tree. momentOf is the tree's moment in a gust, never falling
// with the gust; greatest bounds the search. The gust has the reference of
// momentOf (averaging time, height, place). The answer is within 1e-5 of
// greatest, on the high side.
// Errors: a negative moment, a moment that greatest does not reach, an error of
// momentOf.
// Source: inverse of a monotone function by bisection.
func EquivalentGust(moment quantity.Moment, momentOf func(quantity.Speed) (quantity.Moment, error), greatest quantity.Speed) (quantity.Speed, error) {
	if !(moment >= 0) || !(greatest > 0) {
		return 0, fmt.Errorf("equivalent gust: moment %v N m, greatest gust %v m/s; expected 0 or more and more than 0",
			float64(moment), float64(greatest))
	}
	top, err := momentOf(greatest)
	if err != nil {
		return 0, fmt.Errorf("equivalent gust: %w", err)
	}
	if moment > top {
		return 0, fmt.Errorf("equivalent gust: a moment of %v N m is more than a gust of %v m/s gives (%v N m)",
			float64(moment), float64(greatest), float64(top))
	}
	low, high := quantity.Speed(0), greatest
	for high-low > gustPrecision*greatest {
		middle := (low + high) / 2
		m, err := momentOf(middle)
		if err != nil {
			return 0, fmt.Errorf("equivalent gust: %w", err)
		}
		if m < moment {
			low = middle
		} else {
			high = middle
		}
	}
	return high, nil
}

// gustPrecision is how closely the gust is found, as a share of the greatest:
// far finer than any gust is known.
const gustPrecision = 1e-5
