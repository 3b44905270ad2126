package cli

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/sketch"
)

type signsCommand struct {
	What   string `arg:"" optional:"" help:"A zone, the id of a sign, rules or hazards." placeholder:"ZONE|ID|rules|hazards"`
	JSON   bool   `name:"json" help:"Print the signs as JSON."`
	Sketch bool   `help:"Print the drawing of the sign as SVG."`
}

// Words that name no zone on the command line: what signs mean together, and
// the hazards of the site.
const (
	rulesWord   = "rules"
	hazardsWord = "hazards"
)

// Run prints the signs of an inspection, from the crown down.
func (c signsCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	switch c.What {
	case rulesWord:
		return c.rules(env.Stdout, k)
	case hazardsWord:
		return c.hazards(env.Stdout, k)
	}
	list, one, err := c.chosen(k)
	switch {
	case err != nil:
		return err
	case c.Sketch:
		return c.draw(env.Stdout, list, one)
	case c.JSON:
		return writeJSON(env.Stdout, signsForm(list, k))
	case one:
		return signSheet(env.Stdout, list[0], k)
	}
	return signList(env.Stdout, list)
}

// chosen picks the signs asked for.
func (c signsCommand) chosen(k *knowledge.Base) (list []signs.Sign, one bool, err error) {
	if s, ok := k.Sign(c.What); ok {
		return []signs.Sign{s}, true, nil
	}
	if c.What == "" {
		return k.Signs(), false, nil
	}
	for _, s := range k.Signs() {
		if string(s.Zone) == c.What {
			list = append(list, s)
		}
	}
	if len(list) == 0 {
		return nil, false, refusal{fmt.Errorf("%q is no zone and no sign; expected one of %v, %s, %s, or an id such as crown-01", c.What, signs.Zones(), rulesWord, hazardsWord)}
	}
	return list, false, nil
}

func (c signsCommand) draw(w io.Writer, list []signs.Sign, one bool) error {
	if !one {
		return refusal{fmt.Errorf("--sketch: name one sign, for example crown-01")}
	}
	s, ok := sketch.Of(list[0].ID)
	if !ok {
		return fmt.Errorf("%s has no drawing", list[0].ID)
	}
	_, err := fmt.Fprintln(w, s.SVG(list[0].Name))
	return err
}

// signList writes the signs zone by zone.
func signList(w io.Writer, list []signs.Sign) error {
	var b strings.Builder
	for i, s := range list {
		if i == 0 || list[i-1].Zone != s.Zone {
			b.WriteString(zoneTitle(s.Zone, i == 0))
		}
		b.WriteString(hanging("  "+s.ID, s.Name+memoryMark(s.FromMemory, s.PartlyFromMemory)+". Look for: "+s.LookFor, 20))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func zoneTitle(z signs.Zone, first bool) string {
	text := strings.ReplaceAll(string(z), "_", " ") + "\n"
	if first {
		return text
	}
	return "\n" + text
}

// memoryMark tells a row that was not, or not wholly, read in a source.
func memoryMark(all, part bool) string {
	switch {
	case all:
		return " [from memory]"
	case part:
		return " [partly from memory]"
	}
	return ""
}

// rulesWith lists the rules in which a sign takes part.
func rulesWith(k *knowledge.Base, id string) []signs.Rule {
	var list []signs.Rule
	for _, r := range k.SignRules() {
		if slices.ContainsFunc(r.All, func(c signs.Clause) bool { return slices.Contains(c.AnyOf, id) }) {
			list = append(list, r)
		}
	}
	return list
}
