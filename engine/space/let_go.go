package space

import (
	"math"
	"slices"

	"boughline/quantity"
)

// Landing is where a rider who lets go comes down.
type Landing struct {
	Along        quantity.Length // from the plumb line, signed
	Height       quantity.Length // of the ground there
	Release      quantity.Angle  // of the line, signed
	ReleaseSpeed quantity.Speed
	Time         quantity.Time // in the air
	ImpactSpeed  quantity.Speed
	NormalSpeed  quantity.Speed  // share of it square to the ground
	Apex         quantity.Length // top of the flight above the landing
}

// Landings holds the farthest landing on either side.
type Landings struct{ Positive, Negative Landing }

// LetGo returns, for each side, the landing farthest from the plumb line of a
// rider who lets go at the worst moment while moving outwards: flight from the
// seat along the tangent, no drag (which errs on the far side), until the
// ground is first met. The landing jumps where a flight just clears a corner
// of the ground: the angles of those flights are found first, and the distance
// is then greatest at one of them or in a smooth stretch between two of them.
// A rider swinging inwards lands nearer at every angle. Contact of the feet
// on the way is left out. Errors name a field outside its range. Mechanics of
// a projectile.
func LetGo(g Ground, s Swing) (Landings, error) {
	if err := validate(g, s); err != nil {
		return Landings{}, err
	}
	back := s.farthest(g.Mirrored())
	back.Along, back.Release = -back.Along, -back.Release
	return Landings{Positive: s.farthest(g), Negative: back}, nil
}

// FlightFall returns the greatest height above the ground straight below that
// a rider who lets go reaches at any moment of any flight to either side. It
// is never below that of Fall on ground that falls away, where a flight may
// pass over ground beyond the reach of the line. Errors name a field outside
// its range.
func FlightFall(g Ground, s Swing) (quantity.Length, error) {
	if err := validate(g, s); err != nil {
		return 0, err
	}
	greatest := math.Inf(-1)
	for _, side := range [...]Ground{g, g.Mirrored()} {
		top := s.plumbHeight(side)
		_, height := s.bestRelease(side, func(q float64) float64 { return s.release(top, q).highest(side) })
		greatest = math.Max(greatest, height)
	}
	return quantity.Length(greatest), nil
}

func (s Swing) farthest(g Ground) Landing {
	top := s.plumbHeight(g)
	q, _ := s.bestRelease(g, func(q float64) float64 { return s.release(top, q).land(g).x })
	f := s.release(top, q)
	down := f.land(g)
	vy := f.vy - quantity.StandardGravity*down.t
	ground := g.At(quantity.Length(down.x))
	apex := f.y + f.vy*f.vy/(2*quantity.StandardGravity)
	return Landing{
		Along:        quantity.Length(down.x),
		Height:       ground,
		Release:      quantity.Angle(q),
		ReleaseSpeed: quantity.Speed(math.Hypot(f.vx, f.vy)),
		Time:         quantity.Time(down.t),
		ImpactSpeed:  quantity.Speed(math.Hypot(f.vx, vy)),
		NormalSpeed:  quantity.Speed(math.Abs(vy-down.slope*f.vx) / math.Hypot(1, down.slope)),
		Apex:         quantity.Length(apex) - ground,
	}
}

// bestRelease returns the release angle between 0 and the amplitude at which
// value is greatest. value may jump only where a flight passes through a
// station of the ground, or where the seat itself comes out of a bank.
func (s Swing) bestRelease(g Ground, value func(q float64) float64) (at, greatest float64) {
	edges := s.jumps(g)
	greatest = math.Inf(-1)
	for i := 1; i < len(edges); i++ {
		q, v := greatestBetween(value, edges[i-1], edges[i])
		if v > greatest {
			at, greatest = q, v
		}
	}
	return at, greatest
}

// jumps returns 0, the amplitude and, rising between them, the release angles
// of all flights through a station of the ground, on the path or ahead of it,
// and those at which the seat passes into or out of the ground.
func (s Swing) jumps(g Ground) []float64 {
	edges := []float64{0, float64(s.Amplitude)}
	reach := quantity.Length(s.farthestAtMost(g))
	for _, station := range g.Stations {
		if station.Along <= 0 || station.Along > reach {
			continue
		}
		last := float64(s.Amplitude)
		if sin := float64(station.Along / s.Line); sin < math.Sin(last) {
			last = math.Asin(sin)
			edges = append(edges, last)
		}
		edges = append(edges, roots(s.passesOver(g, station), 0, last)...)
	}
	s.seatArc(g).eachCrossing(g, func(q float64) { edges = append(edges, math.Max(q, 0)) })
	slices.Sort(edges)
	return edges
}

// passesOver returns a function of the release angle with the sign of the
// height at which the flight passes over the station. The height
//
//	top - L cos q - y + tan q dx - g dx^2 / (2 v^2 cos^2 q),  dx = x - L sin q,
//
// is multiplied by cos^2 q (cos q - cos a), which is positive, to stay smooth
// where the speed vanishes.
func (s Swing) passesOver(g Ground, station Point) func(q float64) float64 {
	above := s.plumbHeight(g) - float64(station.Height)
	line, x := float64(s.Line), float64(station.Along)
	slow := (line - float64(s.SeatDrop)) / (4 * line * line)
	cosEnd := s.Amplitude.Cos()
	return func(q float64) float64 {
		sin, cos := math.Sincos(q)
		dx := x - line*sin
		return ((above-line*cos)*cos*cos+sin*cos*dx)*(cos-cosEnd) - slow*dx*dx
	}
}
