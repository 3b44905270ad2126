package wording

import (
	"strings"

	"boughline/assess"
)

var leftOut = map[assess.LeftOut]string{
	assess.DefectsNobodySaw: "defects nobody saw",
	assess.Misuse:           "misuse",
	assess.GearDamage:       "damage to the gear",
	assess.RepeatedLoading:  "strength lost over thousands of rides",
	assess.OtherLimbs:       "other limbs that come down",
	assess.OtherWays:        "wind, jerk, stem and roots",
	assess.SidewaysRiding:   "riding that pulls the limb sideways",
	assess.LineBounce:       "bouncing and rocking on it, which can pull harder than a load let go onto it",
	assess.LineFalls:        "any fall into it, and how one would be held",
	assess.LineChance:       "the chance of a failure",
	assess.LineFriction:     "friction where it runs over limb or redirect",
	assess.LineTogether:     "the pulls of both anchors on the one tree together: each is judged alone",
	assess.LineUneven:       "a body that lies nearer to one end than to the other",
	assess.LineTestUnused:   "what a load test of it tells: it is planned, not weighed",
}

// LeavesOut says what a figure does not cover.
func LeavesOut(list []assess.LeftOut) string {
	words := make([]string, len(list))
	for i, code := range list {
		words[i] = leftOut[code]
	}
	return "Left out: " + strings.Join(words, ", ") + "."
}

var exposures = map[string]string{
	assess.OneRide:           "one ride",
	assess.OneOuting:         "an outing",
	assess.OneSeason:         "a season",
	assess.AtDesignAmplitude: "a season, 80 deg",
}

// Exposure names what a chance is for.
func Exposure(code string) string { return exposures[code] }
