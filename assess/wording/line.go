package wording

import (
	"fmt"
	"strings"

	"boughline/assess"
	"boughline/survey"
)

var lineKinds = map[string]string{
	survey.HammockLine: "hammock", survey.TraverseLine: "low traverse", survey.ClimbingLine: "climbing line",
}

// LineKind names a kind of line.
func LineKind(kind string) string { return lineKinds[kind] }

// LineTitle says what a line is and where it goes.
func LineTitle(l assess.Line) string {
	var ends []string
	for _, e := range l.Ends {
		name := e.TreeName
		if name == "" {
			name = e.Tree
		}
		text := fmt.Sprintf("%s of %s", memberWord(e.Member), name)
		if e.Redirect {
			text = "over " + text
		}
		ends = append(ends, text)
	}
	joint := " to "
	if l.Kind == survey.ClimbingLine {
		joint = ", led "
	}
	return LineKind(l.Kind) + ", " + strings.Join(ends, joint)
}

func memberWord(member string) string {
	if member == "stem" {
		return "stem"
	}
	return "limb " + member
}

// LineUse words what a line is asked for.
func LineUse(u assess.LineUse) string {
	mass := AtMost(float64(u.Mass), "kg")
	who := "one person of " + mass
	if u.Riders > 1 {
		who = fmt.Sprintf("%d people of %s together", u.Riders, mass)
	}
	return fmt.Sprintf("%s, gear %s; gusts to %s", who, Quantity(float64(u.Gear), "kg"), AtMost(float64(u.Gust), "m/s"))
}

// LineLimits words the greatest use of a line.
func LineLimits(l assess.LineLimits) string {
	text := "one person of at most " + AtMost(float64(l.Mass), "kg")
	if l.Riders > 1 {
		text = fmt.Sprintf("together at most %s, never more than %d people", AtMost(float64(l.Mass), "kg"), l.Riders)
	}
	text += fmt.Sprintf("; stop at gusts (3 s) of %s at 10 m in the open", AtMost(float64(l.Gust), "m/s"))
	if l.Beaufort > 0 {
		text += fmt.Sprintf(" (in a mean wind of Beaufort %d: %s)", l.Beaufort, l.SeenInTrees)
	}
	text += fmt.Sprintf("; load test first: %s of dead mass where people will be", Quantity(float64(l.TestMass), "kg"))
	if len(l.Departures) > 0 {
		text += "; stated departure, to be signed for: " + Departures(l.Departures)
	}
	return text
}

// LineShape words how a line hangs.
func LineShape(l assess.Line) string {
	s := l.Shape
	switch {
	case s == nil:
		return ""
	case l.Kind == survey.ClimbingLine && s.Between > 0:
		return fmt.Sprintf("%s between its legs at the redirect; a slip counts %s times the weight", Quantity(float64(s.Between), "rad"), Quantity(s.SuddenFactor, "1"))
	case l.Kind == survey.ClimbingLine:
		return fmt.Sprintf("a slip counts %s times the weight", Quantity(s.SuddenFactor, "1"))
	}
	return fmt.Sprintf("span %s, sag %s with people at rest, %s between the anchors before it is pulled; let go onto it, they count %s times",
		Quantity(float64(s.Span), "m"), Quantity(float64(s.Sag), "m"), Quantity(float64(s.Unpulled), "m"), Quantity(s.SuddenFactor, "1"))
}

// LinePull words the pull on one anchor.
func LinePull(e assess.LineEnd) string {
	name := e.TreeName
	if name == "" {
		name = e.Tree
	}
	return fmt.Sprintf("%s: up to %s at rest (%s level, %s down), %s let go onto it", name,
		Quantity(float64(e.AtRest), "N"), Quantity(float64(e.Level), "N"), Quantity(float64(e.Down), "N"), Quantity(float64(e.Sudden), "N"))
}
