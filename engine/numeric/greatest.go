package numeric

import "math"

// Greatest narrows down where f is greatest between low and high, in each of
// steps keeping 0.618 of the interval, and returns the best place that it has
// looked at and the value there. Both ends are left out. Of an f with more peaks
// it finds one. 40 steps narrow to the root of rounding, below which a smooth
// peak is flat.
//
// Source: Kiefer, Sequential minimax search for a maximum, Proceedings of the
// American Mathematical Society 4, 1953: golden sections.
func Greatest(f func(float64) float64, low, high float64, steps int) (at, value float64) {
	ratio := (math.Sqrt(5) - 1) / 2
	left, right := high-ratio*(high-low), low+ratio*(high-low)
	atLeft, atRight := f(left), f(right)
	at, value = left, atLeft
	for range steps {
		if atLeft > atRight {
			high, right, atRight = right, left, atLeft
			left = high - ratio*(high-low)
			atLeft = f(left)
		} else {
			low, left, atLeft = left, right, atRight
			right = low + ratio*(high-low)
			atRight = f(right)
		}
		if atLeft > value {
			at, value = left, atLeft
		}
		if atRight > value {
			at, value = right, atRight
		}
	}
	return at, value
}
