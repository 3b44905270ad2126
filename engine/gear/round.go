package gear

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// BasketDrop returns how far below a round limb the two ends of a sling meet
// that is laid over it: a belt round a circle from a point at a distance c of its
// centre is 2 sqrt(c^2 - R^2) + 2 R (pi - acos(R/c)) long, and the drop is c - R.
// length is that of the sling from end to end; an error names one that does not
// go round. Geometry of a belt.
func BasketDrop(length, radius quantity.Length) (quantity.Length, error) {
	if err := goesRound(length, radius); err != nil {
		return 0, err
	}
	r := float64(radius)
	short := func(c float64) float64 {
		return 2*math.Sqrt(math.Max(0, c*c-r*r)) + 2*r*(math.Pi-math.Acos(math.Min(1, r/c))) - float64(length)
	}
	return quantity.Length(numeric.Root(short, r, r+float64(length))) - radius, nil
}

// ChokedDrop returns how far below a round limb a sling ends that is choked or
// girth hitched close round it: what its length leaves over the way round.
func ChokedDrop(length, radius quantity.Length) (quantity.Length, error) {
	if err := goesRound(length, radius); err != nil {
		return 0, err
	}
	return length - WayRound(radius), nil
}

// WayRound is the length that lies on a round limb once round it.
func WayRound(radius quantity.Length) quantity.Length { return 2 * math.Pi * radius }

func goesRound(length, radius quantity.Length) error {
	if !(radius > 0 && length > WayRound(radius)) {
		return fmt.Errorf("length: %.4g m round a limb of radius %.4g m; expected more than once round it, %.4g m", float64(length), float64(radius), float64(WayRound(radius)))
	}
	return nil
}
