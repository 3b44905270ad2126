package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// RedirectPull returns the pull of a line on what it is led over, 2 T cos(q/2),
// with the angle q between its two legs from 0 (both the same way: twice the
// pull) to 180 degrees (it runs straight through: none). The same pull on both
// sides, as without friction. It points half way between the legs.
// Statics of a point.
func RedirectPull(pull quantity.Force, between quantity.Angle) (quantity.Force, error) {
	if !(pull >= 0) || !(between >= 0 && between <= 180*quantity.Degree) {
		return 0, fmt.Errorf("pull, between: %v N, %.4g deg; expected 0 or more, and 0 to 180 deg", pull, between.Degrees())
	}
	return quantity.Force(2 * float64(pull) * math.Cos(float64(between)/2)), nil
}
