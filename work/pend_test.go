package work

import "testing"

func TestPendPeriodCases(t *testing.T) { checkGroup(t, "pend_period", nil) }

func TestPendDragCases(t *testing.T) {
	checkGroup(t, "pend_drag", []rule{
		{[]string{"amplitude"}, "amplitude_deg"},
		{[]string{"time"}, "time"},
		{[]string{"peak", "speed"}, "peak_tension"},
	})
}

var pendElasticRules = []rule{
	{[]string{"window", ".t_"}, "time"},
	{[]string{"lowest", "radius"}, "lowest"},
	{[]string{"peak", "ratio", "force"}, "peak"},
}

func TestPendElasticCases(t *testing.T) { checkGroup(t, "pend_elastic", pendElasticRules) }

func TestPendSphericalCases(t *testing.T) {
	checkGroup(t, "pend_spherical", []rule{
		{[]string{"radius"}, "radius"},
		{[]string{"tension"}, "tension"},
		{[]string{"closest"}, "closest"},
		{[]string{"_x_"}, "x"},
	})
}
