package swing

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// Bounds returns the limits of the motion from the start, reached again and
// again, however long it goes on. With u the height above the lowest point,
// v0 the speed there would be and h the moment of the velocity about the plumb
// line (by mass), the rider turns where (v0^2 - 2 g u)(2 L - u) u = h^2. The
// pull falls evenly with height. It fails on inputs out of range and where the
// pull would fall below nothing, for then the line goes slack.
// Source: energy and angular momentum about the vertical, as in Landau &
// Lifshitz, Mechanics, §14, problem 1 (from memory).
func (s DriftingSwing) Bounds(start SpatialState) (Bounds, error) {
	if err := s.check(start); err != nil {
		return Bounds{}, fmt.Errorf("drifting swing: %w", err)
	}
	l, g, m := float64(s.Length), s.Gravity.orStandard(), float64(s.Mass)
	p, v := start.Position, start.Velocity
	square := v.Dot(v) + 2*g*(p.Z+l) // v0^2
	low, high := turningHeights(l, g, square, p.X*v.Y-p.Y*v.X)
	pull := func(u float64) quantity.Force { return quantity.Force(m * (square - 3*g*u + g*l) / l) }
	if pull(high) < 0 {
		return Bounds{}, fmt.Errorf("drifting swing: start leads to a pull of %.4g N at the upper turning point; expected 0 or more, for the line goes slack", float64(pull(high)))
	}
	radius := func(u float64) quantity.Length { return quantity.Length(math.Sqrt(math.Max(0, u*(2*l-u)))) }
	bounds := Bounds{
		LeastRadius: min(radius(low), radius(high)), GreatestRadius: max(radius(low), radius(high)),
		LeastPull: pull(high), PeakPull: pull(low),
	}
	if low < l && l < high {
		bounds.GreatestRadius = s.Length
	}
	return bounds, nil
}

// turningHeights are the two roots between 0 and 2 L of the cubic, on either
// side of its greatest value there.
func turningHeights(l, g, square, moment float64) (low, high float64) {
	cubic := func(u float64) float64 { return (square-2*g*u)*(2*l-u)*u - moment*moment }
	// The greatest value lies where 6 g u^2 - 2 (v0^2 + 4 g L) u + 2 L v0^2 = 0.
	b := square + 4*g*l
	top := 2 * l * square / (b + math.Sqrt(b*b-12*g*l*square))
	if cubic(top) <= 0 { // a level circle, up to rounding
		return top, top
	}
	return numeric.Root(cubic, 0, top), numeric.Root(cubic, top, math.Min(2*l, square/(2*g)))
}
