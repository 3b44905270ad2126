package work

import "testing"

func TestSobol(t *testing.T) {
	checkGroup(t, "sobol", []rule{
		{[]string{"saltelli", "ci95"}, ""},
		{[]string{"S1"}, "S1"},
		{[]string{"ST"}, "ST"},
	})
}
