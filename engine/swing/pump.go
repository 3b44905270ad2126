package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Pumped returns the amplitude at the end of a half swing of a rider who stands
// up at the bottom, from the amplitude at its start:
// 1 - cos p2 = (L1/L2)^3 (1 - cos p1). The length runs to the centre of mass:
// ends is that of the squatting rider, bottom that of the standing one. It
// fails where the next end would be at 90 deg or beyond, where the line goes
// slack.
// Source: angular momentum kept while standing up at the bottom; the model of
// Wirkus, Rand & Ruina, College Math. J. 29 (1998) 266-275 (abstract read).
func Pumped(amplitude quantity.Angle, ends, bottom quantity.Length) (quantity.Angle, error) {
	if err := requireTaut(amplitude); err != nil {
		return 0, err
	}
	if err := requirePositive(field{"length at the bottom", float64(bottom), "m"}, field{"length at the ends", float64(ends), "m"}); err != nil {
		return 0, err
	}
	ratio := float64(ends / bottom)
	half := (amplitude / 2).Sin()
	s := half * half * ratio * ratio * ratio // sin^2(p2/2)
	if s >= 0.5 {
		return 0, fmt.Errorf("amplitude is %.4g deg, from which standing up reaches 90 deg or beyond, where the line goes slack; expected less",
			amplitude.Degrees())
	}
	return quantity.Angle(2 * math.Asin(math.Sqrt(s))), nil
}
