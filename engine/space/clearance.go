package space

import (
	"math"

	"boughline/quantity"
)

// Nearest says where a swinging point comes nearest to the ground.
type Nearest struct {
	Clearance quantity.Length // vertical, negative where the point would be in the ground
	Angle     quantity.Angle  // of the line
	Along     quantity.Length // of the point
}

// Clearance is the least room under seat and feet over a whole swing.
type Clearance struct{ Seat, Foot Nearest }

// FootMeetsGround says whether the feet would touch the ground somewhere.
func (c Clearance) FootMeetsGround() bool { return c.Foot.Clearance <= 0 }

// Clearances returns the least vertical distance of seat and feet to the
// ground between both ends of the swing. It is exact for the profile given:
// stationary points of every piece, stations and ends are compared, nothing
// is sampled. Errors name a field outside the range stated on Ground and
// Swing; a negative clearance is a result. Geometry only.
func Clearances(g Ground, s Swing) (Clearance, error) {
	if err := validate(g, s); err != nil {
		return Clearance{}, err
	}
	return Clearance{Seat: s.seatArc(g).nearest(g), Foot: s.footArc(g).nearest(g)}, nil
}

// FootClearance returns the foot's part of Clearances alone, for searches that
// ask for it often.
func FootClearance(g Ground, s Swing) (Nearest, error) {
	if err := validate(g, s); err != nil {
		return Nearest{}, err
	}
	return s.footArc(g).nearest(g), nil
}

func (a arc) nearest(g Ground) Nearest {
	least, at := math.Inf(1), 0.0
	a.eachCandidate(g, func(q float64) {
		if h := a.over(g, q); h < least {
			least, at = h, q
		}
	})
	x, _ := a.at(at)
	return Nearest{quantity.Length(least), quantity.Angle(at), quantity.Length(x)}
}

func validate(g Ground, s Swing) error {
	if err := g.validate(); err != nil {
		return err
	}
	return s.validate()
}
