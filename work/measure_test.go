package work

import "testing"

func TestMeasureMatchesTheCases(t *testing.T) {
	checkGroup(t, "measure", []rule{{[]string{"second_order_mean_shift"}, "second_order_mean_shift"}})
}
