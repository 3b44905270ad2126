package throw

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Launch is how a weight leaves the hand. Angle counts from the level.
type Launch struct {
	Speed quantity.Speed
	Angle quantity.Angle
}

// Over returns the launch whose highest point lies at a distance ahead of the
// hand and a height up above it, both above 0: it passes a limb there level, as
// high over its near side as over its far side. v^2 = 2 g up + g ahead^2/(2 up),
// tan a = 2 up/ahead. Projectile without drag, any textbook of mechanics.
func Over(ahead, up quantity.Length) (Launch, error) {
	if !(ahead > 0 && up > 0) {
		return Launch{}, fmt.Errorf("ahead, up: %v m, %v m; expected a limb ahead of the hand and above it", float64(ahead), float64(up))
	}
	x, y := float64(ahead), float64(up)
	v := math.Sqrt(2*quantity.StandardGravity*y + quantity.StandardGravity*x*x/(2*y))
	return Launch{quantity.Speed(v), quantity.Angle(math.Atan2(2*y, x))}, nil
}

// LeastSpeed returns the least speed with which anything reaches a point,
// sqrt(g (y + sqrt(x^2 + y^2))): the envelope of all throws. Any textbook.
func LeastSpeed(ahead, up quantity.Length) quantity.Speed {
	return quantity.Speed(math.Sqrt(quantity.StandardGravity * (float64(up) + math.Hypot(float64(ahead), float64(up)))))
}

// Height returns how high over the hand a throw is at a distance ahead.
func (l Launch) Height(ahead quantity.Length) quantity.Length {
	x, along := float64(ahead), float64(l.Speed)*l.Angle.Cos()
	return quantity.Length(x*math.Tan(float64(l.Angle)) - quantity.StandardGravity*x*x/(2*along*along))
}

// Lands returns how far ahead a throw comes down on ground that lies a depth
// of 0 or more below the hand.
func (l Launch) Lands(below quantity.Length) quantity.Length {
	v, up := float64(l.Speed), float64(l.Speed)*l.Angle.Sin()
	time := (up + math.Sqrt(up*up+2*quantity.StandardGravity*float64(below))) / quantity.StandardGravity
	return quantity.Length(v * l.Angle.Cos() * time)
}

// Joules is the energy of a weight as it leaves the hand.
func (l Launch) Joules(mass quantity.Mass) float64 {
	return float64(mass) * float64(l.Speed) * float64(l.Speed) / 2
}
