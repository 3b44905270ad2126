package space

import (
	"math"

	"boughline/quantity"
)

// flight is a body that left the seat and flies without drag, towards
// positive x.
type flight struct{ x, y, vx, vy float64 }

// release returns the flight of a rider who lets go at the angle q of the
// line while moving outwards: from the seat, along the tangent.
func (s Swing) release(top, q float64) flight {
	sin, cos := math.Sincos(q)
	v := float64(s.SeatSpeed(quantity.Angle(q)))
	return flight{float64(s.Line) * sin, top - float64(s.Line)*cos, v * cos, v * sin}
}

// landing is where and when a flight first meets the ground.
type landing struct{ x, t, slope float64 }

// land follows the flight over the pieces of the ground one by one. Over a
// straight piece the height of a parabola is concave in time, so a flight
// that is above the piece at its start comes down at the later root.
// A flight that starts in the ground has landed.
func (f flight) land(g Ground) landing {
	var touch landing
	f.overPieces(g, func(p piece, in, out float64) bool {
		t := math.Max(f.down(p), in)
		if in == 0 && f.over(p, 0) < 0 {
			t = 0
		}
		touch = landing{f.x + f.vx*t, t, p.slope}
		return t > out
	})
	return touch
}

// overPieces calls visit for every piece the flight passes over, with the
// times at which it enters and leaves it, until visit returns false.
func (f flight) overPieces(g Ground, visit func(p piece, in, out float64) bool) {
	in := 0.0
	for k := g.above(f.x); ; k++ {
		p := g.pieceFrom(k)
		out := math.Inf(1)
		if f.vx > 0 {
			out = (p.end - f.x) / f.vx
		}
		if !visit(p, in, out) || math.IsInf(out, 1) {
			return
		}
		in = out
	}
}

// down returns the later time at which the flight crosses the line of the
// piece, -Inf where it never reaches it.
func (f flight) down(p piece) float64 {
	rise := f.vy - p.slope*f.vx
	height := f.y - p.height - p.slope*(f.x-p.along)
	square := rise*rise + 2*quantity.StandardGravity*height
	if square < 0 {
		return math.Inf(-1)
	}
	return (rise + math.Sqrt(square)) / quantity.StandardGravity
}

// highest returns the greatest height above the ground straight below between
// release and landing.
func (f flight) highest(g Ground) float64 {
	end := f.land(g).t
	greatest := math.Inf(-1)
	f.overPieces(g, func(p piece, in, out float64) bool {
		out = math.Min(out, end)
		flat := math.Min(math.Max((f.vy-p.slope*f.vx)/quantity.StandardGravity, in), out)
		for _, t := range [...]float64{in, flat, out} {
			greatest = math.Max(greatest, f.over(p, t))
		}
		return out < end
	})
	return greatest
}

// over returns the height of the flight above the line of the piece.
func (f flight) over(p piece, t float64) float64 {
	x, y := f.x+f.vx*t, f.y+f.vy*t-quantity.StandardGravity*t*t/2
	return y - p.height - p.slope*(x-p.along)
}
