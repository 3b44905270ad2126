package outing

import (
	"math"
	"time"

	"boughline/quantity"
)

// Swings is how many swings, there and back, the hang has carried at most: the
// time in use over the period of the line at small amplitude, 2 pi sqrt(L/g), which
// is the shortest it can have. It errs to the high side, as though it had never hung
// still.
func (s *State) Swings(now time.Time) int {
	period := 2 * math.Pi * math.Sqrt(float64(s.Card.Limits.Line)/quantity.StandardGravity)
	if !(period > 0) {
		return 0
	}
	return int(math.Ceil(s.InUseFor(now).Seconds() / period))
}
