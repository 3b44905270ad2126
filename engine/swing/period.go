package swing

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mathext"

	"boughline/quantity"
)

// SmallPeriod returns the period of a swing of very small amplitude,
// 2 pi sqrt(L/g).
func SmallPeriod(length quantity.Length) quantity.Time {
	return quantity.Time(2 * math.Pi * math.Sqrt(float64(length)/quantity.StandardGravity))
}

// PeriodRatio returns the period at the given amplitude over that of a very
// small one: (2/pi) K(sin^2(a/2)), K being the complete elliptic integral of
// the first kind. The amplitude runs from 0 up to, but not including, 180 deg;
// outside it the ratio is not a number.
// Source: any text on the pendulum, such as Landau & Lifshitz, Mechanics, §11
// (from memory).
func PeriodRatio(amplitude quantity.Angle) quantity.Proportion {
	s := (amplitude / 2).Sin()
	if !(amplitude >= 0 && amplitude < math.Pi && s < 1) {
		return quantity.Proportion(math.NaN())
	}
	return quantity.Proportion(2 / math.Pi * mathext.CompleteK(s*s))
}

// RodPeriod returns the period of a rigid rod with the mass at its end, for
// amplitudes above 0 and below 180 deg. It fails outside them.
func RodPeriod(length quantity.Length, amplitude quantity.Angle) (quantity.Time, error) {
	if err := requirePositive(field{"length", float64(length), "m"}); err != nil {
		return 0, err
	}
	if a := amplitude.Degrees(); !(a > 0 && a < 180) {
		return 0, fmt.Errorf("amplitude is %.4g deg; expected more than 0 and less than 180", a)
	}
	return SmallPeriod(length) * quantity.Time(PeriodRatio(amplitude)), nil
}

// Period returns the period of a swing on a line, there and back. Unlike a
// rod, a line goes slack at 90 deg, so it fails from there on.
func Period(length quantity.Length, amplitude quantity.Angle) (quantity.Time, error) {
	if err := requireTaut(amplitude); err != nil {
		return 0, err
	}
	return RodPeriod(length, amplitude)
}
