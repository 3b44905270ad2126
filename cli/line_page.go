package cli

import (
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
)

// lines writes what follows for the lines of a site, after its hangs.
func lines(list []assess.Line, whole bool) string {
	var b strings.Builder
	for _, l := range list {
		b.WriteString("\n" + oneLine(l, whole))
	}
	return b.String()
}

func oneLine(l assess.Line, whole bool) string {
	var b strings.Builder
	b.WriteString(hanging(l.ID, wording.LineTitle(l), max(column, len(l.ID)+2)))
	if l.Shape != nil {
		b.WriteString(hanging("  asked", wording.LineUse(l.Asked), column))
		b.WriteString(hanging("  hangs", wording.LineShape(l), column))
		first := "  pulls"
		for _, e := range l.Ends {
			b.WriteString(hanging(first, wording.LinePull(e), column))
			first = ""
		}
	}
	b.WriteString(hanging("  "+wording.Shape(l.Outcome), wording.Outcome(l.Outcome), column))
	if l.Limits != nil {
		b.WriteString(hanging("  limits", wording.LineLimits(*l.Limits), column))
	}
	b.WriteString(reasons(l.Reasons, whole))
	if whole {
		b.WriteString(checkTable(l.Checks))
	} else if least := leastThatHolds(l.Checks); least != "" {
		b.WriteString(hanging("  in hand", least, column))
	}
	if len(l.LeftOut) > 0 {
		b.WriteString(hanging("  not in it", wording.LeavesOut(l.LeftOut), column))
	}
	return b.String()
}
