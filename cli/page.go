package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
)

// page writes an assessment for people.
type page struct{ w io.Writer }

// margin of the second column.
const column = 12

func (p page) assessment(a assess.Assessment, whole bool) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, judged for %s\n", a.Site, a.Day)
	for _, h := range a.Hangs {
		b.WriteString("\n" + hang(h, whole))
	}
	if len(a.Hangs)+len(a.Lines) == 0 {
		b.WriteString("\nNo hang is asked for on this site.\n")
	}
	b.WriteString(lines(a.Lines, whole))
	b.WriteString("\n")
	for _, caution := range wording.Cautions() {
		b.WriteString(hanging("!", caution, 2))
	}
	_, err := io.WriteString(p.w, b.String())
	return err
}

// hang writes what follows for one hang: the outcome, its limits, its reasons
// with the governing one first.
func hang(h assess.Hang, whole bool) string {
	var b strings.Builder
	name := h.TreeName
	if name == "" {
		name = h.Tree
	}
	b.WriteString(hanging(h.ID, fmt.Sprintf("limb %s of %s (%s)", h.Member, name, h.Species), max(column, len(h.ID)+2)))
	b.WriteString(hanging("  asked", wording.Use(h.Asked), column))
	b.WriteString(hanging("  "+wording.Shape(h.Outcome), wording.Outcome(h.Outcome), column))
	if h.Limits != nil {
		b.WriteString(hanging("  limits", limits(*h.Limits), column))
	}
	b.WriteString(reasons(h.Reasons, whole))
	if h.Chance != nil {
		b.WriteString(hanging("  chance", wording.LimbChances(*h.Chance), column))
	}
	if whole {
		b.WriteString(checkTable(h.Checks))
	} else if least := leastThatHolds(h.Checks); least != "" {
		b.WriteString(hanging("  in hand", least, column))
	}
	return b.String()
}

func limits(l assess.Limits) string {
	text := "one rider of at most " + wording.AtMost(float64(l.Mass), "kg")
	if l.Riders > 1 {
		text = fmt.Sprintf("riders together at most %s, never more than %d", wording.AtMost(float64(l.Mass), "kg"), l.Riders)
	}
	text += fmt.Sprintf("; %s to each side at most; stop at gusts (3 s) of %s at 10 m in the open%s; line %s; keep %s clear each way along the swing line (the larger of %s by let-go flight on this ground and %s by the standard for level ground); fall from up to %s (standard for level ground: %s); load test first: %s of dead mass",
		wording.AtMost(float64(l.Amplitude), "rad"), wording.AtMost(float64(l.Gust), "m/s"), beaufort(l), wording.Quantity(float64(l.Line), "m"),
		wording.Quantity(float64(l.KeptClear), "m"), wording.Quantity(float64(l.LetGo), "m"), wording.Quantity(float64(l.StandardClear), "m"),
		wording.Quantity(float64(l.FallFrom), "m"), wording.Quantity(float64(l.StandardFall), "m"), wording.Quantity(float64(l.TestMass), "kg"))
	if len(l.Departures) > 0 {
		text += "; stated departure, to be signed for: " + wording.Departures(l.Departures)
	}
	return text
}

// beaufort tells the stop gust by what is seen in trees.
func beaufort(l assess.Limits) string {
	if l.Beaufort == 0 {
		return ""
	}
	return fmt.Sprintf(" (in a mean wind of Beaufort %d: %s)", l.Beaufort, l.SeenInTrees)
}

// reasons lists the reasons that count, numbered, and the remarks of a whole
// page.
func reasons(list []assess.Reason, whole bool) string {
	var b strings.Builder
	first, number := "  because", 0
	for _, r := range list {
		if r.Remark {
			continue
		}
		number++
		text := fmt.Sprintf("%d. %s", number, wording.Reason(r))
		if change := wording.Change(r.Change); change != "" {
			text += " Would change it: " + change + "."
		}
		b.WriteString(hanging(first, text+" ["+string(r.Code)+"]", column))
		first = ""
	}
	first = "  noted"
	for _, r := range list {
		if r.Remark && (whole || noteworthy(r)) {
			b.WriteString(hanging(first, "- "+wording.Reason(r), column))
			first = ""
		}
	}
	return b.String()
}

// noteworthy reports whether a remark belongs on the short page: findings that
// do not matter here, what stands in for something, and what was not judged.
func noteworthy(r assess.Reason) bool {
	switch r.Code {
	case assess.SignFound, assess.StandIn, assess.StoodFor, assess.SignsTogether, assess.HazardFound, assess.BarkUncovered, assess.StemSways, assess.WayInNotStated:
		return true
	}
	return false
}

// leastThatHolds names the check with the least in hand among those that hold.
func leastThatHolds(checks []assess.Check) string {
	for _, c := range checks {
		if c.Alone == assess.MayHang {
			return fmt.Sprintf("%s: margin %s, the least of the checks that hold", wording.Check(c), wording.Margin(c.Margin))
		}
	}
	return ""
}

func checkTable(checks []assess.Check) string {
	var b strings.Builder
	first := "  checks"
	for _, c := range checks {
		b.WriteString(hanging(first, fmt.Sprintf("%s  %s: %s [%s]", wording.Margin(c.Margin), wording.Check(c), wording.Comparison(c), c.Code), column))
		first = ""
	}
	return b.String()
}
