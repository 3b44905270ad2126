package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// SpeedAt returns the rider's speed at the angle at, on a swing of the given
// amplitude: sqrt(2 g L (cos q - cos a)), drag left out; 0 beyond the
// amplitude. Source: conservation of energy.
func SpeedAt(length quantity.Length, amplitude, at quantity.Angle) quantity.Speed {
	fall := float64(length) * (at.Cos() - amplitude.Cos())
	return quantity.Speed(math.Sqrt(2 * quantity.StandardGravity * math.Max(0, fall)))
}

// BottomSpeed returns the greatest speed of a swing, reached at the bottom.
func BottomSpeed(length quantity.Length, amplitude quantity.Angle) quantity.Speed {
	return SpeedAt(length, amplitude, 0)
}

// AmplitudeOf returns how far a rider swings out who passes the angle at with
// the given speed, such as after a helper's push. It fails where the swing
// would reach 90 deg and the line go slack. Source: conservation of energy.
func AmplitudeOf(length quantity.Length, at quantity.Angle, speed quantity.Speed) (quantity.Angle, error) {
	if err := requirePositive(field{"length", float64(length), "m"}); err != nil {
		return 0, err
	}
	c := at.Cos() - float64(speed*speed)/(2*quantity.StandardGravity*float64(length))
	if !(c > 0) {
		return 0, fmt.Errorf("speed is %.4g m/s at %.4g deg, which swings out to 90 deg or beyond, where the line goes slack; expected less",
			float64(speed), at.Degrees())
	}
	return quantity.Angle(math.Acos(math.Min(1, c))), nil
}
