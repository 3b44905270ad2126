package wording

import (
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/engine/signs"
)

// inspection words the reasons that speak of signs and hazards by name.
var inspection = map[assess.Code]func(assess.Reason) string{
	assess.SignNotVisible:  notVisible,
	assess.LookCovered:     covered,
	assess.StoodFor:        stoodFor,
	assess.SignsTogether:   together,
	assess.HazardFound:     Metric.hazard, // Reason puts it in its own units
	assess.HazardNotPlaced: hazardNotPlaced,
}

// needs says what was wanting at a look, or not stated.
var needs = map[string]string{
	string(signs.NeedsLeaves):    "the crown not in leaf, or not said to be",
	string(signs.NeedsBareCrown): "the crown not bare, or not said to be",
	string(signs.NeedsWind):      "no wind that moves limbs, or none stated",
	string(signs.NeedsToadstool): "outside the season of toadstools",
	"cover":                      "with something in the way",
	"stated":                     "as the surveyor says",
}

func notVisible(r assess.Reason) string {
	text := fmt.Sprintf("Could not show at the look at %s: %s", zone(r.Zone, r.Text), r.Sign.Name)
	if r.Sign.Needs != signs.NeedsNothing {
		text += ", " + needs[string(r.Sign.Needs)]
	}
	if instead := Instead(r.Sign, r.Others); instead != "" {
		text += "; look instead for " + instead
	}
	return text + "."
}

// Instead words what stands in for a sign that cannot show.
func Instead(s *signs.Sign, standIns []*signs.Sign) string {
	if len(standIns) > 0 {
		return namesOf(standIns)
	}
	return s.Instead
}

func covered(r assess.Reason) string {
	return fmt.Sprintf("At the look at %s there was %s in the way of: %s.", zone(r.Zone, r.Text), strings.Join(r.Covers, ", "), namesOf(r.Others))
}

func stoodFor(r assess.Reason) string {
	text := fmt.Sprintf("Could not show (%s): %s. ", needs[r.Text], namesOf(r.Others))
	if len(r.StandIns) == 0 {
		return text + "Another look within 12 months could show it."
	}
	return text + "Looked for instead, and clear: " + namesOf(r.StandIns) + "."
}

func together(r assess.Reason) string {
	text := capital(r.Rule.Name)
	if r.Text != "" {
		text += " (" + r.Text + ")"
	}
	return fmt.Sprintf("%s: %s. Together: %s.", text, namesOf(r.Others), r.Rule.Means)
}

func (u Units) hazard(r assess.Reason) string {
	text := capital(r.Hazard.Name)
	switch {
	case r.Why == signs.WhyCleared:
		return text + ", cleared."
	case len(r.Terms) > 0:
		text += ", " + u.Quantity(r.Terms[0].Value, "m") + " from people or from the limb in use, doubt taken off"
	}
	return text + ": " + r.Hazard.Means + ". " + HazardDo(*r.Hazard)
}

// HazardDo says what to do about a hazard, and whom to ask.
func HazardDo(h signs.Hazard) string {
	if h.CheckWith == "" {
		return capital(h.Do) + "."
	}
	return capital(h.Do) + "; check with " + h.CheckWith + "."
}

func hazardNotPlaced(r assess.Reason) string {
	return fmt.Sprintf("%s: nothing says how far it is from here; place it on the site.", capital(r.Hazard.Name))
}

// namesOf lists the names of signs, each once.
func namesOf(list []*signs.Sign) string {
	var names []string
	for _, s := range list {
		if !slices.Contains(names, s.Name) {
			names = append(names, s.Name)
		}
	}
	return strings.Join(names, "; ")
}
