package wording

import (
	"fmt"

	"boughline/assess"
)

// Use words a use: riders, seat, line, amplitude, gust. Masses are cut as a
// limit would be, so that a limit equal to what was asked for reads so.
func Use(u assess.Use) string {
	riders := "one rider of " + AtMost(float64(u.Mass), "kg")
	if u.Riders != 1 {
		riders = fmt.Sprintf("%d riders of %s together", u.Riders, AtMost(float64(u.Mass), "kg"))
	}
	return fmt.Sprintf("%s, seat and line %s; line %s; %s to each side; gusts to %s", riders, Quantity(float64(u.Seat), "kg"),
		Quantity(float64(u.Line), "m"), Quantity(float64(u.Amplitude), "rad"), AtMost(float64(u.Gust), "m/s"))
}
