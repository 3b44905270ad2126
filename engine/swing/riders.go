package swing

import (
	"math"

	"boughline/quantity"
)

// Users are the people a swing is meant for: the mean and the standard
// deviation of their mass.
type Users struct{ Mean, Sd quantity.Mass }

// UsersOfAllAges returns the masses of children on an open playground.
// Source: EN 1176-1 Annex A (from memory).
func UsersOfAllAges() Users { return Users{53.8, 9.6} }

// SupervisedUsers returns the masses of children up to an age of 4, 8 or 12
// years, where nobody older rides; ok is false for other ages.
// Source: EN 1176-1 Annex A (weak memory; no defaults).
func SupervisedUsers(age int) (users Users, ok bool) {
	switch age {
	case 4:
		return Users{16.7, 2.1}, true
	case 8:
		return Users{27.9, 5.0}, true
	case 12:
		return Users{41.5, 7.9}, true
	}
	return Users{}, false
}

// DesignMass returns the mass of n users together, exceeded with about 5 %
// probability: n m + 1.64 s sqrt(n). Seat and line come on top. n below 1
// counts as nobody. Source: EN 1176-1 Annex A, G_n (from memory).
func (u Users) DesignMass(n int) quantity.Mass {
	if n < 1 {
		return 0
	}
	return quantity.Mass(n)*u.Mean + quantity.Mass(1.64*math.Sqrt(float64(n)))*u.Sd
}
