package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/knowledge"
)

type lookCommand struct {
	File string `arg:"" help:"Survey document (JSON)."`
	Tree string `help:"The tree to look at." placeholder:"ID" required:""`
	JSON bool   `name:"json" help:"Print the list as JSON."`
}

// Run lists what is still to be looked at on one tree, from the crown down.
func (c lookCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	list, err := assess.Looks(s, k, c.Tree)
	if err != nil {
		return refusal{fmt.Errorf("%s: --tree: %w", c.File, err)}
	}
	if c.JSON {
		return writeJSON(env.Stdout, list)
	}
	return lookPage(env.Stdout, list)
}

func lookPage(w io.Writer, l assess.LookList) error {
	var b strings.Builder
	name := l.TreeName
	if name == "" {
		name = l.Tree
	}
	fmt.Fprintf(&b, "%s: %s (%s), for %s\n\n", l.Site, name, l.Species, l.Day)
	if len(l.Tasks) == 0 {
		b.WriteString("Nothing is left to be looked at. What nobody saw is not in here.\n")
	}
	for i, task := range l.Tasks {
		b.WriteString(lookTask(i+1, task))
	}
	first := "\nStood for"
	for _, r := range l.StoodFor {
		b.WriteString(hanging(first, wording.Reason(r), column))
		first = ""
	}
	if len(l.Bring) > 0 {
		b.WriteString("\n" + hanging("Bring", wording.Methods(l.Bring), column))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func lookTask(number int, t assess.LookTask) string {
	var b strings.Builder
	b.WriteString(hanging(fmt.Sprintf("%2d.", number), wording.Task(t), 4))
	if len(t.Hangs) > 0 {
		b.WriteString(hanging("    for", strings.Join(t.Hangs, ", "), column+4))
	}
	if t.Reason.Sign == nil && t.Reason.Code != assess.LookCovered {
		b.WriteString(hanging("    look for", wording.Names(t.LookFor), column+4))
	}
	if len(t.Hazards) > 0 {
		b.WriteString(hanging("    hazards", wording.Hazards(t.Hazards), column+4))
	}
	first := "    not today"
	for _, n := range t.NotToday {
		b.WriteString(hanging(first, wording.NotToday(n), column+4))
		first = ""
	}
	b.WriteString(hanging("    with", wording.Methods(t.Methods), column+4))
	return b.String()
}
