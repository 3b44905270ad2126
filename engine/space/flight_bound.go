package space

import (
	"math"

	"boughline/quantity"
)

// FlightFallAtMost returns a height that FlightFall does not exceed, for
// searches that ask often. It stops at a bound in closed form once that is no
// more than enough; else it follows flights on through the ground, which jump
// nowhere and are quickly searched. Errors name a field outside its range.
//
// Over the line of a piece of slope s, a rider who lets go at the angle q rises
// by at most (vy - s vx)^2/(2g) above the start, which is L^2/(L - c) (cos q -
// cos a)(sin q - s cos q)^2, and the last bracket is at most 1 + s^2; in closed
// form each piece within reach is carried on beyond its ends. Mechanics of a
// projectile.
func FlightFallAtMost(g Ground, s Swing, enough quantity.Length) (quantity.Length, error) {
	if err := validate(g, s); err != nil {
		return 0, err
	}
	greatest := math.Inf(-1)
	for _, side := range [...]Ground{g, g.Mirrored()} {
		bound := s.flightsAtMost(side)
		if bound > math.Max(greatest, float64(enough)) {
			bound = math.Min(bound, s.flightsThrough(side))
		}
		greatest = math.Max(greatest, bound)
	}
	return quantity.Length(greatest), nil
}

// flightsAtMost is the bound in closed form, on one side.
func (s Swing) flightsAtMost(g Ground) float64 {
	greatest, reach, from := math.Inf(-1), s.farthestAtMost(g), g.above(0)
	for k := from; k <= len(g.Stations); k++ {
		p := g.pieceFrom(k)
		if k > from && p.along > reach {
			break
		}
		greatest = math.Max(greatest, s.aboveAtMost(s.plumbHeight(g), p))
	}
	return greatest
}

// flightsThrough searches all flights on one side, followed down to the lowest
// ground whatever they meet before, and adds what the search may fall short by.
func (s Swing) flightsThrough(g Ground) float64 {
	const short = 1e-3
	top := s.plumbHeight(g)
	_, height := greatestBetween(func(q float64) float64 { return s.release(top, q).highestThrough(g) }, 0, float64(s.Amplitude))
	return height + short
}

// highestThrough returns the greatest height of a flight over the ground, as if
// it did not end there.
func (f flight) highestThrough(g Ground) float64 {
	greatest := math.Inf(-1)
	f.overPieces(g, func(p piece, in, out float64) bool {
		flat := math.Min(math.Max((f.vy-p.slope*f.vx)/quantity.StandardGravity, in), out)
		greatest = math.Max(greatest, math.Max(f.over(p, in), f.over(p, flat)))
		return f.vy-quantity.StandardGravity*out > 0 || f.over(p, out) > 0
	})
	return greatest
}

// aboveAtMost bounds the height of all flights over the line of a piece.
func (s Swing) aboveAtMost(top float64, p piece) float64 {
	line, turn := float64(s.Line), 1-s.Amplitude.Cos()
	atEnd := top - line*s.Amplitude.Cos() - p.height + p.slope*p.along
	downhill := math.Max(0, -p.slope) * line * s.Amplitude.Sin()
	rise := math.Max(0, line*line/(line-float64(s.SeatDrop))*(1+p.slope*p.slope)-line)
	return atEnd + downhill + turn*rise
}

// farthestAtMost bounds how far from the plumb line a flight lands: from the
// end of the arc, with the speed of its lowest point, down to the lowest ground.
// Source: range of a projectile, v sqrt(v^2 + 2 g h)/g.
func (s Swing) farthestAtMost(g Ground) float64 {
	lowest := math.Inf(1)
	for _, station := range g.Stations {
		lowest = math.Min(lowest, float64(station.Height))
	}
	fall := math.Max(0, s.plumbHeight(g)-float64(s.Line)*s.Amplitude.Cos()-lowest)
	v := float64(s.SeatSpeed(0))
	return float64(s.Line)*s.Amplitude.Sin() + v*math.Sqrt(v*v+2*quantity.StandardGravity*fall)/quantity.StandardGravity
}
