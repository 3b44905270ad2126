package cli

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"boughline/register"
	"boughline/survey"
)

type gearListCommand struct {
	File string `arg:"" help:"Register of gear (JSON)."`
	On   string `help:"The day to judge for; today if left out." placeholder:"DATE"`
	Due  bool   `help:"Only what is due on that day or within a month."`
	JSON bool   `name:"json" help:"Print the list as JSON."`
}

// gearList is what follows from a register on a day.
type gearList struct {
	Version int                 `json:"gear_list"`
	Owner   string              `json:"owner"`
	On      survey.Date         `json:"on"`
	Due     []register.Reminder `json:"due"`
	Items   []gearLine          `json:"items,omitempty"`
}

type gearLine struct {
	register.Item
	DaysUsed int            `json:"days_used"`
	Cycles   int            `json:"cycles,omitempty"`
	Bars     []register.Bar `json:"bars,omitempty"`
}

// Run lists the register with what is due on top.
func (c gearListCommand) Run(env Env) error {
	on, err := dayOf("--on", c.On)
	if err != nil {
		return err
	}
	r, err := readRegister(env, c.File)
	if err != nil {
		return err
	}
	list := gearList{Version: 1, Owner: r.Owner, On: on, Due: append([]register.Reminder{}, r.Due(on)...)}
	for _, i := range r.Items {
		if !c.Due {
			list.Items = append(list.Items, gearLine{i, r.DaysUsed(i.ID), r.Cycles(i.ID), r.Bars(i.ID, on)})
		}
	}
	if c.JSON {
		return writeJSON(env.Stdout, list)
	}
	return gearPage(env.Stdout, r, list)
}

func gearPage(w io.Writer, r register.Register, l gearList) error {
	var b strings.Builder
	fmt.Fprintf(&b, "Gear of %s, for %s\n\n", l.Owner, l.On)
	if len(l.Due) == 0 {
		b.WriteString("Nothing is due by what is written down. Look every item over before each use.\n")
	}
	first := "due"
	for _, d := range l.Due {
		b.WriteString(hanging(first, d.Item+": "+d.String(), column))
		first = ""
	}
	if r.LOLER == nil {
		b.WriteString(hanging("!", "Nobody said whether LOLER applies to this gear; it counts as if it did.", 2))
	}
	for _, i := range l.Items {
		b.WriteString("\n" + gearItem(r, i))
	}
	b.WriteString("\n" + basisLines(l))
	_, err := io.WriteString(w, b.String())
	return err
}

func gearItem(r register.Register, l gearLine) string {
	var b strings.Builder
	b.WriteString(hanging(l.ID, fmt.Sprintf("%s: %s, %s", l.Name, l.Kind, l.Material), max(column, len(l.ID)+2)))
	if l.Kind != register.Sleeve {
		b.WriteString(hanging("  bears", l.Strength(), column))
	}
	used := fmt.Sprintf("%d %s", l.DaysUsed, plural("day", l.DaysUsed))
	if l.Cycles > 0 {
		used += fmt.Sprintf(", %d rides counted", l.Cycles)
	}
	if first := r.FirstUse(l.Item); !first.IsZero() {
		used += ", since " + first.String()
	}
	b.WriteString(hanging("  used", used, column))
	first := "  against"
	for _, bar := range l.Bars {
		b.WriteString(hanging(first, bar.String(), column))
		first = ""
	}
	return b.String()
}

// basisLines cites the rules that the list speaks of, each once.
func basisLines(l gearList) string {
	var codes []register.Code
	for _, d := range l.Due {
		codes = append(codes, d.Code)
	}
	for _, i := range l.Items {
		for _, bar := range i.Bars {
			codes = append(codes, bar.Code)
		}
	}
	return gearSources(codes)
}

func gearSources(codes []register.Code) string {
	var lines []string
	for _, c := range codes {
		lines = append(lines, register.Basis(c).Citation())
	}
	slices.Sort(lines)
	var b strings.Builder
	first := "from"
	for _, line := range slices.Compact(lines) {
		b.WriteString(hanging(first, line, column))
		first = ""
	}
	return b.String()
}
