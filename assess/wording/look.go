package wording

import (
	"fmt"
	"strings"

	"boughline/assess"
	"boughline/engine/signs"
)

// methods says how a closer look is made.
var methods = map[signs.Method]string{
	signs.Binoculars: "binoculars", signs.Mallet: "mallet", signs.Probe: "thin rod to probe with", signs.Tape: "tape", signs.Clinometer: "clinometer",
	signs.PlumbLine: "plumb line", signs.Torch: "torch", signs.Knife: "knife", signs.Spade: "spade", signs.PegsAndString: "pegs and string",
	signs.FeelerGauge: "feeler gauge", signs.MetalDetector: "metal detector", signs.OldPhoto: "older photo",
	signs.FourSides: "walk right round", signs.MovingLitter: "move the litter aside", signs.LooseBark: "look behind bark that is loose already",
	signs.ScratchTest: "scratch the bark", signs.Listening: "listen", signs.WindyDay: "come in wind", signs.Asking: "ask", signs.Climber: "a climber goes up", signs.ByArborist: "an arborist looks",
}

// Method words a way to look closer.
func Method(m signs.Method) string { return methods[m] }

// Methods words several.
func Methods(list []signs.Method) string {
	var words []string
	for _, m := range list {
		words = append(words, Method(m))
	}
	return strings.Join(words, ", ")
}

// Task words what is still to be looked at, and why.
func Task(t assess.LookTask) string {
	if t.Reason.Code == assess.SignFound {
		return fmt.Sprintf("A closer look at %s (%s): %s", t.Reason.Finding, t.Reason.Sign.Name, t.Reason.Sign.CloserLook)
	}
	return Reason(t.Reason)
}

// NotToday words a sign that can't show on the day.
func NotToday(n assess.NotToday) string {
	text := n.Sign.Name + " (" + needs[n.Needs] + ")"
	if instead := Instead(n.Sign, n.StandIns); instead != "" {
		text += ": look instead for " + instead
	}
	return text
}

// Hazards lists the names of hazards.
func Hazards(list []signs.Hazard) string {
	var names []string
	for _, h := range list {
		names = append(names, h.Name)
	}
	return strings.Join(names, "; ")
}

// Names lists the names of signs.
func Names(list []*signs.Sign) string { return namesOf(list) }

// effects says what a sign does in one placement.
var effects = map[signs.Effect]string{
	signs.None: "nothing", signs.Remark: "a remark", signs.Question: "a question to ask", signs.Again: "look again at a date", signs.Limit: "use within limits",
	signs.CloserLook: "not decided until the closer look is done", signs.Arborist: "ask an arborist",
	signs.BarsUntilCleared: "nobody below until it is cleared", signs.Bars: "nothing is hung here",
}

// Effect words what a sign, a rule or a hazard leads to.
func Effect(e signs.Effect) string { return effects[e] }

// quantities says what a rule asks of a measured value.
var quantities = map[signs.Quantity]string{
	signs.LimbLength: "a limb longer than %g m", signs.Slenderness: "a limb longer than %g times its thickness",
	signs.AspectRatio: "a limb thicker than %g of what it grows from", signs.StemLean: "a stem more than %g degrees off plumb",
}

// Measured words a measured value above a bound.
func Measured(q signs.Quantity, above float64) string { return fmt.Sprintf(quantities[q], above) }

// Need words what a sign takes to show.
func Need(n signs.Need) string {
	switch n {
	case signs.NeedsLeaves:
		return "leaves on the tree"
	case signs.NeedsBareCrown:
		return "a bare crown"
	case signs.NeedsWind:
		return "wind that moves limbs"
	case signs.NeedsToadstool:
		return "the season of toadstools"
	}
	return ""
}
