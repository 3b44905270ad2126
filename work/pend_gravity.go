package work

import (
	"math"

	"boughline/engine/swing"
	"boughline/quantity"
)

// gravity is the acceleration a file names, or the standard one.
func gravity(g *float64) float64 {
	if g == nil {
		return quantity.StandardGravity
	}
	return *g
}

// slower is by how much a pendulum is slower in gravity g than in the standard
// one.
func slower(g *float64) float64 { return math.Sqrt(quantity.StandardGravity / gravity(g)) }

// smallPeriod is the period of a very small swing in gravity g.
func smallPeriod(length float64, g *float64) quantity.Time {
	return swing.SmallPeriod(quantity.Length(length)) * quantity.Time(slower(g))
}

// or is the value a file gives, or another where it gives none.
func or[T any](given *T, otherwise T) T {
	if given == nil {
		return otherwise
	}
	return *given
}
