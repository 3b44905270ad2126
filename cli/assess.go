package cli

import (
	"fmt"
	"slices"

	"boughline/assess"
	"boughline/knowledge"
)

type assessCommand struct {
	File    string `arg:"" help:"Survey document (JSON)."`
	Hang    string `help:"Only this hang or line, with all its checks." placeholder:"ID"`
	JSON    bool   `name:"json" help:"Print the assessment as JSON."`
	Explain string `help:"Open one reason or check, or all, down to formula, values, limits and sources." placeholder:"REASON"`
}

// Run assesses a survey. An outcome stored in a file is never believed: the
// document has no place for one, and this works it out anew.
func (c assessCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	a, err := assess.Assess(s, k)
	if err != nil {
		return refusal{fmt.Errorf("%s: %w", c.File, err)}
	}
	if err = c.choose(&a); err != nil {
		return err
	}
	switch {
	case c.JSON:
		return writeJSON(env.Stdout, a)
	case c.Explain != "":
		return explain(env.Stdout, a, assess.Code(c.Explain))
	}
	return page{env.Stdout}.assessment(a, c.Hang != "")
}

// choose keeps the hang or line asked for.
func (c assessCommand) choose(a *assess.Assessment) error {
	if c.Hang == "" {
		return nil
	}
	var ids []string
	for _, h := range a.Hangs {
		ids = append(ids, h.ID)
	}
	for _, l := range a.Lines {
		ids = append(ids, l.ID)
	}
	a.Hangs = slices.DeleteFunc(a.Hangs, func(h assess.Hang) bool { return h.ID != c.Hang })
	a.Lines = slices.DeleteFunc(a.Lines, func(l assess.Line) bool { return l.ID != c.Hang })
	if len(a.Hangs)+len(a.Lines) == 0 {
		return refusal{fmt.Errorf("--hang: %q is no hang and no line of this survey; expected one of %v", c.Hang, ids)}
	}
	return nil
}
