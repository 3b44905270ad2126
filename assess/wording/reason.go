package wording

import (
	"fmt"
	"strings"

	"boughline/assess"
	"boughline/engine/signs"
)

// reasons says what every reason that is no check and no sign means. A %s
// takes the reason's own text.
var reasons = map[assess.Code]string{
	assess.LookMissing:       "The look at %s has not been done. What was not looked at never counts in favour.",
	assess.LookBlocked:       "The look at %s could not be made.",
	assess.LookOld:           "The look at %s does not count for this day: dated later, or more than 12 months before.",
	assess.ShapeNotMeasured:  "The length, direction and inclination of %s were not all measured.",
	assess.RidersNotKnown:    "Nothing says what the riders weigh; heavy adults are taken.",
	assess.NotTogether:       "Another hang is on this tree or across this one: not in use at the same time as %s.",
	assess.SpanDisagrees:     "The span and the places of the two trees do not agree.",
	assess.StrapNotMeasured:  "How wide the strap round the stem is was not measured, or no part of the chain is named for it.",
	assess.AnchorNotNamed:    "No part of the chain is named for this anchor: each sling is taken for it.",
	assess.StrapNarrow:       "%s is narrower than the norm of slack lines asks of a strap round a stem. It was not made for this kind of line: advice.",
	assess.StemThin:          "The stem is thinner at the anchor than the norm of slack lines asks. It was not made for this kind of line: advice; bending and roots are worked out.",
	assess.TrainedOnly:       "A climbing line is for trained climbers with their own gear, who hang in it at work: no fall into it is worked out, and no way to hold one.",
	assess.WayInNotStated:    "No way in is stated: what hangs above it was not judged.",
	assess.WaitingNotStated:  "Nothing says where people wait; what hangs above them cannot be judged.",
	assess.WaitingTooNear:    "People would wait or walk on ground that has to be kept clear.",
	assess.HeightsDisagree:   "The height of the limb and the shape of the tree do not agree.",
	assess.NotComputed:       "This cannot be worked out: %s.",
	assess.DiameterGuessed:   "A diameter on the load path was not measured; a guess never leads to a hang.",
	assess.UnionNotDescribed: "The union of limb %s is not described: form, bark, diameter of the parent above it.",
	assess.UnionNotSeen:      "The union of limb %s could not be seen into.",
	assess.BarkIncluded:      "Bark is turned in at the union of limb %s. Such a union is never loaded (common practice, no published source).",
	assess.UnionIsV:          "The union of limb %s is a V that nobody has looked into; bark counts as turned in until it is seen not to be.",
	assess.AspectHigh:        "Limb %s is nearly as thick as what it grows from.",
	assess.GoodUnion:         "Limb %s is well thinner than what it grows from.",
	assess.GroundNotSurveyed: "The ground below the swing has not been surveyed.",
	assess.GroundGuessed:     "The heights of the ground below the swing were guessed.",
	assess.GroundStep:        "There is a step or a wall where riders may come down.",
	assess.GroundTooShort:    "The ground profile ends before the ground that riders and let-go flights can reach.",
	assess.CrownNotMeasured:  "Height of the tree, lowest foliage and width of the crown are needed for the wind; one is missing.",
	assess.WindNotDescribed:  "Nothing says how open the site lies to the wind.",
	assess.GearUnmarked:      "The strength of %s is not known.",
	assess.GearCondition:     "%s is worn, or nobody has said that it is in good condition.",
	assess.ChainIncomplete:   "The chain names no rope, no seat, or nothing that goes round the limb.",
	assess.GearRetired:       "%s is retired.",
	assess.GearDespite:       "Used although something stands against it: %s. A stated departure that the person in charge signs for.",
	assess.DepthNotMeasured:  "How deep the fill lies was not measured; %s is rated for its depth.",
	assess.SurfaceRating:     "The height of fall is above what %s is rated for: a stated departure that the person in charge signs for.",
	assess.LineGoesSlack:     "At 90 degrees and beyond the line goes slack and catches with a jerk. Such an amplitude is refused.",
	assess.TestStopped:       "A load test was stopped at this limb: %s. Nothing is hung from it, whatever the day.",
	assess.TestSags:          "Under a load test limb %s went down farther than nineteen sound limbs in twenty would. Nothing is hung from it, whatever the day.",
	assess.TestSet:           "After a load test limb %s did not come back up. Nothing is hung from it, whatever the day.",
	assess.TestNotRead:       "A load test was made today, but the sag at its steps or the set after it was not read.",
	assess.TestPassed:        "Limb %s has stood the load test of today: straight down, at that moment, until the day ends. It lifts no finding.",
	assess.TestLapsed:        "The load test of %s has lapsed; each day needs its own.",
	assess.NoUseFits:         "No lighter, lower or calmer use meets all checks together.",
	assess.BarkPressed:       "%s bears on the bark; a cover is stated. One day at most, then down.",
	assess.BarkUncovered:     "%s bears on bare bark: put a sleeve, a pad or a wider strap between. One day at most, then down.",
	assess.StemSways:         "The swing repeats near the tree's own sway. If the stem starts to move with the swing, stop for the day.",
	assess.StandIn:           "A sign could not show that day; looked at instead: %s.",
	assess.WoodFallback:      "Wood: %s.",
	assess.WoodSourcesDiffer: "Sources disagree on the strength of this wood; the lowest is used.",
	assess.OwnMassFromBase:   "The limb was measured at its base alone: its own mass is uncertain by a factor of nearly two.",
	assess.SpeciesNote:       "Species: %s",
	assess.AnchorCreeps:      "A sling that does not choke slides along a limb as steep as this.",
	assess.HeightAssumed:     "The height of the limb above the ground was not measured.",
	assess.GustVoid:          "A gust that the tree has stood no longer counts: %s.",
	assess.RootsByMass:       "The root plate is judged by the mass of the stem, on tests of conifers: a stand-in. A gust that the tree has stood would say more.",
}

// Reason words a reason in one or two sentences, in metric units, with the tree
// where it speaks of one end of a line.
func Reason(r assess.Reason) string { return Metric.Reason(r) }

// Reason words a reason in one or two sentences, with the tree where it speaks
// of one end of a line.
func (u Units) Reason(r assess.Reason) string {
	if r.End != "" && r.Check == nil {
		return capital(r.End) + ": " + lower(u.reason(r))
	}
	return u.reason(r)
}

// lower takes the capital off a sentence that follows a colon.
func lower(text string) string {
	if len(text) < 2 || strings.ToUpper(text[1:2]) == text[1:2] && text[1] != ' ' {
		return text
	}
	return strings.ToLower(text[:1]) + text[1:]
}

func (u Units) reason(r assess.Reason) string {
	switch {
	case r.Check != nil:
		return u.checkSentence(*r.Check)
	case r.Code == assess.HazardFound:
		return u.hazard(r)
	case r.Code == assess.SignFound:
		return signSentence(r)
	case r.Code == assess.FungusFound:
		return fmt.Sprintf("%s: %s", r.Text, r.Fungus)
	case inspection[r.Code] != nil:
		return inspection[r.Code](r)
	case r.Code == assess.TestStopped:
		return fmt.Sprintf(reasons[r.Code], StopSign(r.Text))
	case r.Code == assess.LookMissing || r.Code == assess.LookBlocked || r.Code == assess.LookOld:
		return fmt.Sprintf(reasons[r.Code], zone(r.Zone, r.Text))
	}
	text := reasons[r.Code]
	if countVerbs(text) == 1 {
		return fmt.Sprintf(text, r.Text)
	}
	return text
}

func (u Units) checkSentence(c assess.Check) string {
	at := ""
	if c.Where.Along > 0 && c.Unit == "Pa" {
		at = ", " + u.length(float64(c.Where.Along)) + " from its foot"
	}
	return fmt.Sprintf("%s%s: %s. Margin %s.", Check(c), at, u.Comparison(c), Margin(c.Margin))
}

// Comparison words demand and capacity of a check the way round that reads, in
// metric units.
func Comparison(c assess.Check) string { return Metric.Comparison(c) }

// Comparison words demand and capacity of a check the way round that reads.
func (u Units) Comparison(c assess.Check) string {
	demand, capacity := u.Quantity(c.Demand, c.Unit), u.Quantity(c.Capacity, c.Unit)
	switch c.Code {
	case assess.FallHeight:
		return fmt.Sprintf("%s, at most %s", demand, capacity)
	case assess.LimbChance, assess.UnionChance:
		return fmt.Sprintf("index %s, at least %s", Margin(c.Capacity), Margin(c.Demand))
	case assess.LineClearance, assess.StrapWidth, assess.StemAtAnchor, assess.SeatClearance, assess.FootClearance, assess.StemClearance, assess.LimbInPath, assess.Obstructed:
		return fmt.Sprintf("%s, at least %s", capacity, demand)
	}
	return fmt.Sprintf("%s asked, %s borne", demand, capacity)
}

func signSentence(r assess.Reason) string {
	text := fmt.Sprintf("%s, %s", capital(r.Sign.Name), placements[r.Why])
	if r.OnTree != "" {
		text = fmt.Sprintf("%s on %s, which could come down on people", capital(r.Sign.Name), r.OnTree)
	}
	if r.OnTree == "" && r.Placement.OnLoadPath && r.Placement.AbovePeople {
		text = fmt.Sprintf("%s, on the load path and above the people", capital(r.Sign.Name))
	}
	if r.Sign.MayMean != "" {
		text += ": " + r.Sign.MayMean
	}
	return text + "."
}

var placements = map[signs.Why]string{
	signs.WhyOnLoadPath:       "on the load path",
	signs.WhyAbovePeople:      "above the people",
	signs.WhyElsewhere:        "elsewhere on the tree, where it does not matter for this hang",
	signs.WhyCountsEverywhere: "which speaks of the whole tree",
	signs.WhyCountsForPlace:   "which counts for the whole place",
	signs.WhyCleared:          "cleared",
	signs.WhyLookClear:        "looked at closer and found clear",
	signs.WhyLookWorse:        "looked at closer and found worse",
	signs.WhyLookUnclear:      "looked at closer without an answer",
}

// zone names a zone, with the member where the look is at one.
func zone(zone, member string) string {
	name := "the " + strings.ReplaceAll(zone, "_", " ")
	if zone == "surroundings" {
		name = "the surroundings"
	}
	if member != "" {
		name += " " + member
	}
	return name
}

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}
