package swing

import (
	"math"

	"boughline/quantity"
)

// Users are the people a swing is meant for: the mean and the standard
// deviation of their mass.
type Users struct{ Mean, Sd quantity.Mass }

// DesignMass returns the mass of n users together, exceeded with about 5 %
// probability: n m + 1.64 s sqrt(n). Seat and line come on top. n below 1
// counts as nobody. Source: EN 1176-1 Annex A, G_n (from memory).
func (u Users) DesignMass(n int) quantity.Mass {
	if n < 1 {
		return 0
	}
	return quantity.Mass(n)*u.Mean + quantity.Mass(1.64*math.Sqrt(float64(n)))*u.Sd
}
