package wind

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Crown is the outline of a crown in elevation, an ellipse, and its drag in the
// frontal area of still air. For a crown without leaves pass its lower drag.
type Crown struct {
	CentreHeight  quantity.Length // above ground
	HalfWidth     quantity.Length
	HalfHeight    quantity.Length
	Drag          float64
	Reconfiguring Reconfiguration
}

// Reconfiguration is how drag falls as a crown bends and folds: by the factor
// (U / Reference)^Vogel, so that force goes as U^(2 + Vogel). AtCentre takes one
// factor for the whole crown, from the speed at its centre, in place of one for
// each height. Threshold leaves the factor at 1 up to the reference speed; without it the factor
// passes 1 below that speed.
//
// Vogel exponents: about -0.7, range -0.2 to -1.2 (de Langre, 2008, review; from
// memory); open-grown oak in leaf -0.32 to -0.40, leafless -0.1 to 0 (Angelou,
// Dellwik & Mann, 2019, Forestry 92:381, given as total exponents).
type Reconfiguration struct {
	Vogel     float64
	Reference quantity.Speed
	AtCentre  bool
	Threshold bool
}

// Area returns the frontal area in still air.
func (c Crown) Area() quantity.Area {
	return quantity.Area(math.Pi * float64(c.HalfWidth) * float64(c.HalfHeight))
}

// Base returns the height of the lowest point of the crown.
func (c Crown) Base() quantity.Length { return c.CentreHeight - c.HalfHeight }

// Top returns the height of the highest point of the crown.
func (c Crown) Top() quantity.Length { return c.CentreHeight + c.HalfHeight }

// Factor returns the share of the still-air drag at the speed.
func (r Reconfiguration) Factor(speed quantity.Speed) float64 {
	if r.full(speed) {
		return 1
	}
	return math.Pow(float64(speed/r.Reference), r.Vogel)
}

// squared returns speed^2 times the factor at the speed at, both positive.
func (r Reconfiguration) squared(speed, at quantity.Speed) float64 {
	if r.full(at) {
		return float64(speed * speed)
	}
	// One power, so that a breath of wind does not become 0 times infinity.
	ratio, reference := float64(speed/at), float64(r.Reference)
	return ratio * ratio * reference * reference * math.Pow(float64(at/r.Reference), 2+r.Vogel)
}

// full tells whether the crown has all of its drag.
func (r Reconfiguration) full(speed quantity.Speed) bool {
	return r.Vogel == 0 || r.Threshold && speed <= r.Reference
}

func (c Crown) check() error {
	if !(c.HalfWidth > 0) || !(c.HalfHeight > 0) || !(c.Base() >= 0) {
		return fmt.Errorf("crown: half width %v m, half height %v m, lowest point %v m; expected the first two more than 0, the last 0 or more",
			float64(c.HalfWidth), float64(c.HalfHeight), float64(c.Base()))
	}
	if !(c.Drag >= 0) || math.IsInf(c.Drag, 1) {
		return fmt.Errorf("crown: drag coefficient %v; expected 0 or more", c.Drag)
	}
	r := c.Reconfiguring
	if !(r.Vogel > -2 && r.Vogel <= 0) || r.Vogel != 0 && !(r.Reference > 0) {
		return fmt.Errorf("crown: Vogel exponent %v at %v m/s; expected an exponent above -2, at most 0, and a speed more than 0",
			r.Vogel, float64(r.Reference))
	}
	return nil
}
