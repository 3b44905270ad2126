package figure

import (
	"fmt"

	"boughline/assess"
	"boughline/quantity"
)

func swingSays(j Judged, s assess.SpaceFigure) []string {
	says := []string{
		fmt.Sprintf("Line %s from a limb %s above the ground; asked for %s to each side, space judged at %s.", metres(s.Line), metres(s.Hang), degrees(s.Declared), degrees(s.Full)),
		fmt.Sprintf("Least room under the seat there: %s, at least %s; under the feet: %s, at least %s; limb and line under load, at the unfavourable 5 %% values.", roomWords(s.Seat.Clearance), metres(s.SeatLeast), roomWords(s.Foot.Clearance), metres(s.FootLeast)),
		fmt.Sprintf("Greatest height of fall there: %s, at most %s.", metres(s.Fall), metres(s.FallMost)),
	}
	for _, flight := range [...]struct {
		side    quantity.Angle
		release quantity.Angle
		lands   quantity.Length
	}{{j.Figure.SwingAzimuth(), s.Ahead.Release, s.LandsAhead}, {j.Figure.SwingAzimuth() + 180*quantity.Degree, s.Behind.Release, s.LandsBehind}} {
		says = append(says, fmt.Sprintf("Towards %s a rider who lets go at the worst moment, about %s, lands up to %s from the plumb line.",
			compass(flight.side), degrees(max(flight.release, -flight.release)), metres(flight.lands)))
	}
	says = append(says, fmt.Sprintf("Keep %s clear ahead and %s behind; the standard's own figure is %s.", metres(s.ClearAhead), metres(s.ClearBehind), metres(s.Standard)))
	if len(s.Ground) == 0 {
		says = append(says, "The ground was not surveyed and is drawn level.")
	} else if s.Surface != "" {
		says = append(says, "Ground: "+s.Surface+".")
	}
	return append(says, outcomeSentence(j.Assessed))
}

// roomWords says how much room there is; there may be less than none.
func roomWords(l quantity.Length) string {
	if l < 0 {
		return metres(-l) + " into the ground"
	}
	return metres(l)
}
