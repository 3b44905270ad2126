package wording

import (
	"fmt"
	"math"
	"strings"

	"boughline/assess"
	"boughline/knowledge"
)

// efforts words what is to be done; the first %s takes the member.
var efforts = map[string]string{
	knowledge.LimbDiameterEffort:   "tape limb %s",
	knowledge.LimbGirthsEffort:     "tape limb %s at two more places out to its tip",
	knowledge.StemDiameterEffort:   "tape the %s",
	knowledge.ParentDiameterEffort: "tape what limb %s grows from, just above the union",
	knowledge.ArmEffort:            "measure along limb %s to the hang point",
	knowledge.LimbBarkEffort:       "measure the bark of limb %s",
	knowledge.RidersEffort:         "weigh the riders",
}

// Next words one measurement and what it would do, in metric units.
func Next(n assess.NextMeasurement) string { return Metric.Next(n) }

// Next words one measurement and what it would do.
func (u Units) Next(n assess.NextMeasurement) string {
	return fmt.Sprintf("%s (%.0f min): %s", u.effort(n), n.Minutes, u.worth(n))
}

func (u Units) effort(n assess.NextMeasurement) string {
	if name, isLook := strings.CutPrefix(n.What, knowledge.LookEffort); isLook {
		return "look at " + zone(name, n.Part)
	}
	text := efforts[n.What]
	if countVerbs(text) == 1 {
		text = fmt.Sprintf(text, n.Part)
	}
	switch {
	case n.Places > 1:
		text += fmt.Sprintf(" at %d places", n.Places)
	case n.What == knowledge.LimbDiameterEffort || n.What == knowledge.StemDiameterEffort:
		text += " at " + u.stretch(float64(n.Along))
	}
	return text
}

// worth says what most of all would change.
func (u Units) worth(n assess.NextMeasurement) string {
	switch {
	case n.Likely.Outcome < n.Now.Outcome:
		return "likely to lead to: " + u.outcomeIn(n.Likely)
	case n.Likely.Open < n.Now.Open:
		return settles(n.Now.Open)
	case n.Likely.Riders > n.Now.Riders:
		return fmt.Sprintf("likely to lift the limit from %s to %s", people(n.Now.Riders), people(n.Likely.Riders))
	case float64(n.Likely.Mass-n.Now.Mass) > 0.5:
		return fmt.Sprintf("likely to lift the limit from %s to %s", u.AtMost(float64(n.Now.Mass), "kg"), u.AtMost(float64(n.Likely.Mass), "kg"))
	case n.Better.Outcome < n.Now.Outcome:
		return "if it comes out well: " + u.outcomeIn(n.Better)
	case n.Worse.Outcome > n.Now.Outcome:
		return "if it comes out badly: " + u.outcomeIn(n.Worse)
	}
	return fmt.Sprintf("the index may come to lie between %s and %s", Margin(math.Min(n.Worse.Index, n.Better.Index)), Margin(math.Max(n.Worse.Index, n.Better.Index)))
}

func (u Units) outcomeIn(s assess.Standing) string {
	text := Outcome(s.Outcome)
	text = strings.ToLower(text[:1]) + strings.TrimSuffix(text[1:], ".")
	text = strings.Replace(text, "within the limits below", "within limits", 1)
	if s.Mass > 0 {
		text += ", up to " + u.AtMost(float64(s.Mass), "kg")
	}
	return text
}

func people(n int) string {
	switch n {
	case 0:
		return "fewer than one rider"
	case 1:
		return "one rider"
	}
	return fmt.Sprintf("%d riders", n)
}

// Together words how a hang would stand with all of the list done, in metric units.
func Together(n assess.NextSteps) string { return Metric.Together(n) }

// Together words how a hang would stand with all of the list done.
func (u Units) Together(n assess.NextSteps) string {
	return "all of these together, as taken now: " + u.outcomeIn(n.Together)
}

func settles(open int) string {
	if open == 1 {
		return "settles the one thing that is open"
	}
	return fmt.Sprintf("settles one of the %d things that are open", open)
}

// stretch writes a place that is to be found with a tape: to a decimetre, or in
// feet.
func (u Units) stretch(metres float64) string {
	if u.Feet {
		return u.Quantity(metres, "m")
	}
	return fixed(metres, 1) + " m"
}
