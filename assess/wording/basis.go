package wording

import "boughline/assess"

// unknownIsNotGood is the basis of every reason that asks for something.
const unknownIsNotGood = "house rule: what was not looked at, measured or stated never counts in favour"

// bases says where the rule behind a reason that is no check is from; a reason
// without a row asks for something.
var bases = map[assess.Code]string{
	assess.SignFound:         "the row of the sign table, judged by where the finding stands (house, see the sources of the row)",
	assess.FungusFound:       "the row of the fungi table (its meaning for people is our own reading of the sources)",
	assess.SignsTogether:     "the row of the table of sign rules (see its sources); effects by urgency are house",
	assess.HazardFound:       "the row of the hazard table (distances are house); duties are for those it names to say",
	assess.HazardNotPlaced:   unknownIsNotGood,
	assess.StoodFor:          "house rule: stand-ins looked at and clear, or a dated look within 12 months, complete a look",
	assess.BarkIncluded:      "common practice, no published source; strength figure Slater & Ennos 2015",
	assess.UnionIsV:          "common practice, no published source",
	assess.AspectHigh:        "house limit, below the plateau of Dahle 2022",
	assess.GoodUnion:         "common practice, no published source: a half to a third of the stem or less",
	assess.SurfaceRating:     "ratings of the surface table; a fall above them within 3 m is a stated departure (house)",
	assess.LineGoesSlack:     "mechanics: the pull at the end of a swing is m g cos a",
	assess.NoUseFits:         "the checks of this hang taken together",
	assess.GroundStep:        "house rule: nothing to be thrown against within the ground that is kept clear",
	assess.NotTogether:       "house rule: each hang is judged alone",
	assess.SpanDisagrees:     "house rule: two ways to one span must agree within 0.5 m and their doubts",
	assess.StrapNarrow:       "DIN 79400, read second-hand; advice here",
	assess.StemThin:          "DIN 79400, read second-hand; advice here",
	assess.TrainedOnly:       "common practice, no published source",
	assess.WaitingTooNear:    "EN 1176-2 impact area, or the farthest let-go on this ground, whichever is larger",
	assess.AnchorCreeps:      "friction of a sling on bark, from memory; slides where tan i is above it",
	assess.GearRetired:       "common practice, no published source",
	assess.GearCondition:     "common practice, no published source",
	assess.GearDespite:       "house rule: gear that is due, retired or of unknown strength is used for a written reason only",
	assess.HeightsDisagree:   "house rule: two ways to one height must agree within 0.7 m and the slope between",
	assess.BarkPressed:       "advice, no limit: bond of bark to wood, Vilkovsky 2022; one day at most is common practice, no published source",
	assess.BarkUncovered:     "advice, no limit: bond of bark to wood, Vilkovsky 2022; one day at most is common practice, no published source",
	assess.StemSways:         "vibration of a single mode; within 20 % of it (house)",
	assess.TestStopped:       "common practice, no published source: a sound, a crack, a curve or a movement ends the test and the hang",
	assess.TestSags:          "house rule: sag above the band of nine limbs in ten speaks of something that was not seen",
	assess.TestSet:           "house rule: wood that stays bent has been strained past its elastic range",
	assess.TestPassed:        "proof load known with error, as in Ditlevsen & Madsen 1996 (from memory); readings weighed by their errors",
	assess.TestLapsed:        "house rule: a load test speaks for its own day",
	assess.WoodFallback:      "house rule: the lowest strength of the group",
	assess.WoodSourcesDiffer: "house rule: the lowest strength of the sources",
}

// Basis returns where the formula of a check or the rule of a reason is from.
func Basis(code assess.Code) string {
	if c, ok := checks[code]; ok {
		return c.basis
	}
	if b, ok := bases[code]; ok {
		return b
	}
	return unknownIsNotGood
}
