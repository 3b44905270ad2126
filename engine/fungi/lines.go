package fungi

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Lines tells how the evidence was understood, one attribute a line.
func (e Evidence) Lines() []string {
	var lines []string
	add := func(what string, names []string) {
		if len(names) > 0 {
			lines = append(lines, what+" "+strings.Join(names, ", "))
		}
	}
	add("tree", nonEmpty(e.Host))
	add("place", e.Positions)
	if e.Month > 0 {
		lines = append(lines, fmt.Sprintf("month %d", e.Month))
	}
	add("form", e.Forms)
	add("form not", e.NotForms)
	add("underside", e.Undersides)
	add("underside not", e.NotUnder)
	if e.Size > 0 {
		lines = append(lines, fmt.Sprintf("size %.3g cm", 100*float64(e.Size)))
	}
	for _, f := range append(slices.Clone(fields), AnyField) {
		var colours []string
		for _, s := range e.Colours {
			if s.Field == f {
				colours = append(colours, s.Colour)
			}
		}
		add("colour ("+string(f)+")", colours)
	}
	var there, not []string
	for _, m := range slices.Sorted(maps.Keys(e.Marks)) {
		if e.Marks[m] {
			there = append(there, m)
		} else {
			not = append(not, m)
		}
	}
	add("signs", there)
	add("signs not there", not)
	return lines
}
