package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/knowledge"
	"boughline/register"
)

type gearCheckCommand struct {
	File   string `arg:"" help:"Register of gear (JSON)."`
	Survey string `arg:"" help:"Survey document (JSON)."`
	JSON   bool   `name:"json" help:"Print the list as JSON."`
}

// gearCheck is the JSON form of what stands between chains and register.
type gearCheck struct {
	Version int              `json:"gear_check"`
	On      string           `json:"on"`
	Parts   []register.Doubt `json:"parts"`
}

// Run holds the chains of a survey against the register, on the survey's day.
func (c gearCheckCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	r, err := readRegister(env, c.File)
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.Survey, k)
	if err != nil {
		return err
	}
	check := gearCheck{Version: 1, On: s.Day.String(), Parts: append([]register.Doubt{}, r.Doubts(s)...)}
	if c.JSON {
		return writeJSON(env.Stdout, check)
	}
	return checkPage(env.Stdout, s.Site, check)
}

func checkPage(w io.Writer, site string, c gearCheck) error {
	var b strings.Builder
	fmt.Fprintf(&b, "The chains of %s against the register, for %s\n", site, c.On)
	if len(c.Parts) == 0 {
		b.WriteString("\nNothing in the register stands against a part. Look every part over before each use.\n")
	}
	var codes []register.Code
	for _, d := range c.Parts {
		b.WriteString("\n" + doubtOf(d))
		for _, bar := range d.Bars {
			codes = append(codes, bar.Code)
		}
	}
	b.WriteString("\n" + gearSources(codes))
	_, err := io.WriteString(w, strings.TrimRight(b.String(), "\n")+"\n")
	return err
}

func doubtOf(d register.Doubt) string {
	var b strings.Builder
	name := d.Part
	if d.Item != "" {
		name += " (" + d.Item + ")"
	}
	b.WriteString(hanging(d.Chain, name, max(column, len(d.Chain)+2)))
	if d.Item == "" {
		b.WriteString(hanging("  against", "it names no item of the register", column))
	}
	first := "  against"
	for _, bar := range d.Bars {
		b.WriteString(hanging(first, bar.String(), column))
		first = ""
	}
	first = "  differs"
	for _, text := range d.Differs {
		b.WriteString(hanging(first, text, column))
		first = ""
	}
	if len(d.Bars) > 0 {
		reason := "no reason is written down: take another part, or write down why (despite)"
		if d.Despite != "" {
			reason = d.Despite
		}
		b.WriteString(hanging("  despite", reason, column))
	}
	return b.String()
}
