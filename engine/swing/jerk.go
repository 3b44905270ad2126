package swing

import (
	"math"

	"boughline/quantity"
)

// Jerk returns the greatest force when a rider of the given weight falls
// through the slack before the line comes tight: W (1 + sqrt(1 + 2 k s / W)).
// All energy goes into stretch, none into damping, which is on the safe side.
// Without slack it is twice the weight, that of a load put on at once.
// The stiffness is that of line and limb in series.
// Source: energy balance of a falling weight on a spring, as in Timoshenko,
// Strength of Materials I, "Impact" (from memory).
func Jerk(weight quantity.Force, stiffness quantity.Stiffness, slack quantity.Length) quantity.Force {
	w := float64(weight)
	return weight + quantity.Force(math.Sqrt(w*w+2*float64(stiffness)*float64(slack)*w))
}

// InSeries returns the stiffness of two springs that carry the same force,
// such as a line on a limb: 1 / (1/a + 1/b). A support that does not give way
// has infinite stiffness.
func InSeries(a, b quantity.Stiffness) quantity.Stiffness {
	switch {
	case math.IsInf(float64(a), 1):
		return b
	case math.IsInf(float64(b), 1):
		return a
	case a == 0 || b == 0:
		return 0
	}
	return a * b / (a + b)
}
