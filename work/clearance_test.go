package work

import "testing"

func TestClearance(t *testing.T) {
	checkGroup(t, "clearance", []rule{
		{[]string{"speed"}, "speed"},
		{[]string{"apex"}, ""}, // for information
		{[]string{"x_at", "fall_x"}, "x_at"},
		{[]string{"landing_x"}, "landing_x"},
		{[]string{"flight_time"}, "flight_time"},
		{[]string{"fall_q", "q_at_least", "q_rad"}, "q"},
		{[]string{"clearance", "hang_y", "seat_height"}, "clearance"},
		{[]string{"greatest_fall"}, "fall"},
	})
}
