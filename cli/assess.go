package cli

import (
	"fmt"

	"boughline/assess"
	"boughline/knowledge"
)

type assessCommand struct {
	File    string `arg:"" help:"Survey document (JSON)."`
	Hang    string `help:"Only this hang, with all its checks." placeholder:"ID"`
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
	if a.Hangs, err = c.chosen(a.Hangs); err != nil {
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

// chosen picks the hang asked for.
func (c assessCommand) chosen(hangs []assess.Hang) ([]assess.Hang, error) {
	if c.Hang == "" {
		return hangs, nil
	}
	var ids []string
	for _, h := range hangs {
		if h.ID == c.Hang {
			return []assess.Hang{h}, nil
		}
		ids = append(ids, h.ID)
	}
	return nil, refusal{fmt.Errorf("--hang: %q is no hang of this survey; expected one of %v", c.Hang, ids)}
}
