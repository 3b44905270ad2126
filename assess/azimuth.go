package assess

import (
	"math"

	"boughline/quantity"
)

// azimuthOf returns the compass direction of a vector in plan, 0 to 360 deg.
func azimuthOf(v quantity.Vec3) quantity.Angle {
	a := math.Atan2(v.X, v.Y)
	if a < 0 {
		a += 2 * math.Pi
	}
	return quantity.Angle(a)
}
