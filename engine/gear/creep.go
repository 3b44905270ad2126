package gear

import (
	"math"

	"boughline/quantity"
)

// FrictionToStay returns the friction that an anchor on a limb along the axis
// needs under a pull in a direction, lengths of both ignored: the part of the
// pull along the limb over the part square to it, +Inf for a pull along it. A
// limb at an inclination i needs tan i under a pull straight down. An anchor
// that chokes grips all round and needs less. Statics with Coulomb friction, any
// textbook of mechanics.
func FrictionToStay(axis, pull quantity.Vec3) float64 {
	return frictionOf(axis.Unit().Dot(pull.Unit()))
}

// FrictionInSwing returns the greatest FrictionToStay of an anchor while the
// line swings to either side in the upright plane of a level heading, up to an
// amplitude of 0 to 90 degrees. It does not depend on how hard the line pulls,
// only on how far it leans along the limb: c sin(q) - s cos(q), with c the
// share of the heading and s the share of the upright along the limb.
func FrictionInSwing(axis, heading quantity.Vec3, amplitude quantity.Angle) float64 {
	axis, heading = axis.Unit(), heading.Unit()
	across, up := axis.Dot(heading), axis.Z
	lean := func(q float64) float64 { return math.Abs(across*math.Sin(q) - up*math.Cos(q)) }
	end := float64(amplitude)
	greatest := math.Max(lean(end), lean(-end))
	if up != 0 && math.Abs(math.Atan(across/up)) <= end { // where the lean turns back
		greatest = math.Max(greatest, math.Hypot(across, up))
	}
	return frictionOf(math.Min(1, greatest))
}

// frictionOf is that of a pull whose share along the limb is the sine of its
// lean.
func frictionOf(along float64) float64 {
	along = math.Abs(along)
	return along / math.Sqrt(math.Max(0, 1-along*along))
}
