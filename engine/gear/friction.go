package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// CapstanRatio returns the ratio of the pulls at both ends of a line about to
// slide over a round surface, e^(mu phi), with the wrap phi in radians. It does
// not depend on the radius. Friction of rope on bark is poorly known: take the
// low end of its range for what must hold and the high end for what rubs.
// Euler and Eytelwein, capstan equation.
func CapstanRatio(friction float64, wrap quantity.Angle) (float64, error) {
	if !(friction >= 0) || !(wrap >= 0) {
		return 0, fmt.Errorf("friction, wrap: %v, %v rad; expected both 0 or more", friction, wrap)
	}
	return math.Exp(friction * float64(wrap)), nil
}

// WrapToHold returns the wrap at which a pull hold keeps the pull load from
// running, ln(load/hold)/mu, and 0 where hold alone suffices.
func WrapToHold(load, hold quantity.Force, friction float64) (quantity.Angle, error) {
	if !(load > 0 && hold > 0 && friction > 0) {
		return 0, fmt.Errorf("load, hold, friction: %v N, %v N, %v; expected all above 0", load, hold, friction)
	}
	return quantity.Angle(math.Max(0, math.Log(float64(load/hold))/friction)), nil
}

// CreepAngle returns the inclination of a limb beyond which an anchor held by
// its own weight and pull slides along it, tan(angle) = friction: 11.3 degrees
// for 0.2. A choking sling holds better, a swinging pull worse.
func CreepAngle(friction float64) (quantity.Angle, error) {
	if !(friction >= 0) {
		return 0, fmt.Errorf("friction: %v; expected 0 or more", friction)
	}
	return quantity.Angle(math.Atan(friction)), nil
}
