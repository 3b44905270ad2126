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
