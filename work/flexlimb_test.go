package work

import "testing"

func TestFlexlimbCases(t *testing.T) {
	checkGroup(t, "flexlimb", []rule{
		{[]string{"window", ".t_"}, "time"},
		{[]string{"ratio"}, "ratio"},
		{[]string{"sag"}, "sag"},
		{[]string{"_N"}, "force"},
	})
}
