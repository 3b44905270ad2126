package work

import "testing"

func TestReliabilityClosedCases(t *testing.T) {
	checkGroup(t, "reliability_closed", []rule{
		{[]string{"beta"}, "beta"},
		{[]string{"Pf"}, "Pf"},
	})
}
