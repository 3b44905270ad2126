package work

import "testing"

// NumPy over every pair of the grid (see the method in each file).
func TestPlaceCases(t *testing.T) {
	checkGroup(t, "place", []rule{
		{[]string{"margin", "nearest_least", "nearest_miss.margins"}, "margins"},
		{[]string{"count", "cells", "feasible_if_dropped"}, "counts"},
		{[]string{"stress_Pa", "pull_T", "self_moment"}, "stress"},
		{[]string{"clearance", "fall_height", "stress_at_u"}, "lengths"},
		{[]string{"s_low", "s_high", "nearest_s", "feasible_s", ".s"}, "s"},
		{[]string{".L", "feasible_L"}, "L"},
	})
}
