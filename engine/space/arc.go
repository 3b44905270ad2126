package space

import (
	"math"

	"boughline/quantity"
)

// arc is the path of a point that swings with the line: a circle about the
// hang point, on which the point runs ahead of the line by the angle lead.
type arc struct {
	top       float64 // height of the hang point
	radius    float64
	lead      float64
	amplitude float64
}

func (s Swing) seatArc(g Ground) arc {
	return arc{s.plumbHeight(g), float64(s.Line), 0, float64(s.Amplitude)}
}

// footArc has the feet at (L + f) u + p n with u along the line and n square
// to it, which is a circle of radius hypot(L + f, p).
func (s Swing) footArc(g Ground) arc {
	reach, offset := float64(s.Line+s.FootReach), float64(s.FootOffset)
	return arc{s.plumbHeight(g), math.Hypot(reach, offset), math.Atan2(offset, reach), float64(s.Amplitude)}
}

// at returns the point for the angle q of the line.
func (a arc) at(q float64) (x, y float64) {
	sin, cos := math.Sincos(q + a.lead)
	return a.radius * sin, a.top - a.radius*cos
}

// over returns the height of the point above the ground, vertically.
func (a arc) over(g Ground, q float64) float64 {
	x, y := a.at(q)
	return y - float64(g.At(quantity.Length(x)))
}

// eachCandidate calls visit with every angle at which the height above a
// piecewise straight ground can be least or greatest: both ends of the arc,
// the points above the stations, and the points where the arc runs parallel
// to a piece. Over one piece of slope s the height is top - r cos(p) -
// s r sin(p) plus a constant, least at p = atan(s). Where it is greatest, at
// p + pi, the line would stand above the hang point; above a station the lower
// of two crossings counts.
func (a arc) eachCandidate(g Ground, visit func(q float64)) {
	visit(-a.amplitude)
	visit(a.amplitude)
	within := func(p float64) {
		if q := math.Remainder(p-a.lead, 2*math.Pi); math.Abs(q) < a.amplitude {
			visit(q)
		}
	}
	for k := range len(g.Stations) + 1 {
		within(math.Atan(g.pieceFrom(k).slope))
	}
	for _, station := range g.Stations {
		if sin := float64(station.Along) / a.radius; math.Abs(sin) <= 1 {
			within(math.Asin(sin))
		}
	}
}

// eachCrossing calls visit with every angle at which the point may pass into
// or out of the ground: where its circle meets the line of a piece,
// cos(p - atan s) = (top - height + s along)/(r sqrt(1 + s^2)).
func (a arc) eachCrossing(g Ground, visit func(q float64)) {
	for k := range len(g.Stations) + 1 {
		line := g.pieceFrom(k)
		cos := (a.top - line.height + line.slope*line.along) / (a.radius * math.Hypot(1, line.slope))
		if math.Abs(cos) > 1 {
			continue
		}
		for _, turn := range [...]float64{math.Acos(cos), -math.Acos(cos)} {
			q := math.Atan(line.slope) + turn - a.lead
			// The line may be met outside its piece.
			if math.Abs(q) < a.amplitude && math.Abs(a.over(g, q)) < levelWithin {
				visit(q)
			}
		}
	}
}
