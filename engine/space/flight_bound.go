package space

import (
	"math"

	"boughline/quantity"
)

// FlightFallAtMost returns a height that FlightFall does not exceed, in closed
// form, for searches that ask often: within a centimetre of it on gentle slopes.
//
// Over the line of a piece of slope s, a rider who lets go at the angle q rises
// by at most (vy - s vx)^2/(2g) above the start, which is L^2/(L - c) (cos q -
// cos a)(sin q - s cos q)^2, and the last bracket is at most 1 + s^2. Each
// piece within reach is carried on beyond its ends. Errors name a field outside
// its range. Mechanics of a projectile.
func FlightFallAtMost(g Ground, s Swing) (quantity.Length, error) {
	if err := validate(g, s); err != nil {
		return 0, err
	}
	greatest := math.Inf(-1)
	for _, side := range [...]Ground{g, g.Mirrored()} {
		reach := s.farthestAtMost(side)
		for k := side.above(0); k <= len(side.Stations); k++ {
			if p := side.pieceFrom(k); k == side.above(0) || p.along <= reach {
				greatest = math.Max(greatest, s.aboveAtMost(s.plumbHeight(side), p))
			}
		}
	}
	return quantity.Length(greatest), nil
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
