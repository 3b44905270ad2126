package space

import (
	"math"
	"slices"

	"boughline/quantity"
)

// levelWithin is how near two heights must come to count as equal, m.
const levelWithin = 1e-9

// Highest is the greatest height of fall on the path of the seat.
type Highest struct {
	Height quantity.Length  // vertical, seat to the ground straight below
	Along  quantity.Length  // of the seat there
	Angle  quantity.Angle   // of the line there; the largest one of equals
	Angles []quantity.Angle // all equally high ones, rising
}

// Fall returns the greatest height of fall while the rider sits: measured
// vertically from the seat to the ground below it over the whole path, on the
// true slope. It is exact for the profile given. On a slope it lies on the
// downhill side and grows by L sin a tan(slope) over that on level ground.
// Errors name a field outside its range. Vertical measure after EN 1176-1
// (from memory); geometry otherwise.
func Fall(g Ground, s Swing) (Highest, error) {
	if err := validate(g, s); err != nil {
		return Highest{}, err
	}
	seat := s.seatArc(g)
	greatest := seat.highest(g)
	var equal []quantity.Angle
	seat.eachCandidate(g, func(q float64) {
		if seat.over(g, q) >= greatest-levelWithin {
			equal = append(equal, quantity.Angle(q))
		}
	})
	slices.Sort(equal)
	equal = slices.Compact(equal)
	last := equal[len(equal)-1]
	x, _ := seat.at(float64(last))
	return Highest{quantity.Length(greatest), quantity.Length(x), last, equal}, nil
}

// FallHeight returns the height of Fall without its place, for searches that
// ask for it often.
func FallHeight(g Ground, s Swing) (quantity.Length, error) {
	if err := validate(g, s); err != nil {
		return 0, err
	}
	return quantity.Length(s.seatArc(g).highest(g)), nil
}

func (a arc) highest(g Ground) float64 {
	greatest := math.Inf(-1)
	a.eachCandidate(g, func(q float64) { greatest = math.Max(greatest, a.over(g, q)) })
	return greatest
}

// StandardFallHeight returns the free height of fall of a swing on level
// ground by the short rule of the standard: half the length of the line plus
// the height of the seat at rest, which is the seat raised by 60 degrees
// (1 - cos 60 = 1/2). EN 1176-2:2008, 4.10.1, read second-hand.
func StandardFallHeight(line, seatHeight quantity.Length) quantity.Length {
	return line/2 + seatHeight
}
