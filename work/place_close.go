package work

import (
	"math"
	"slices"

	"boughline/engine/place"
	"boughline/quantity"
)

// Pairs with a margin within closeBy of 0 meet or miss a limit by rounding or
// little more; a margin within rounding of the line at which it counts as met
// could be decided otherwise on another machine.
const (
	closeBy  = 1e-6
	rounding = 1e-12
)

// closeToALimit counts the pairs of both kinds.
func (s placeSearch) closeToALimit() (near, atTheLine int) {
	alongs := s.problem.Grid.Along.Values()
	constraints := s.problem.Constraints
	fromAlong := make([][]float64, len(constraints))
	for k, c := range constraints {
		fromAlong[k] = make([]float64, len(alongs))
		for i, along := range alongs {
			fromAlong[k][i] = partAt(c.Margin.Along, along)
		}
	}
	for _, line := range s.problem.Grid.Line.Values() {
		nearest := slices.Repeat([]float64{math.Inf(1)}, len(alongs))
		nearestToLine := slices.Clone(nearest)
		for k, c := range constraints {
			fromLine, rate := partAt(c.Margin.Line, line), partAt(c.Margin.PerAlong, line)
			for i, along := range alongs {
				m := fromAlong[k][i] + fromLine + float64(along)*rate
				nearest[i] = min(nearest[i], math.Abs(m))
				nearestToLine[i] = min(nearestToLine[i], math.Abs(m+place.Slack))
			}
		}
		near += countWithin(nearest, closeBy)
		atTheLine += countWithin(nearestToLine, rounding)
	}
	return near, atTheLine
}

// partAt is a part of a field that may be left out.
func partAt(f func(quantity.Length) float64, x quantity.Length) float64 {
	if f == nil {
		return 0
	}
	return f(x)
}

func countWithin(list []float64, limit float64) (count int) {
	for _, x := range list {
		if x <= limit {
			count++
		}
	}
	return count
}
