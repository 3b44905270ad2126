package cli

import (
	"fmt"

	"boughline/knowledge"
	"boughline/survey"
)

type checkCommand struct {
	File string `arg:"" help:"Survey document (JSON)."`
	JSON bool   `name:"json" help:"Print the problems as JSON."`
}

// problemList is the JSON form of the problems of a document.
type problemList struct {
	Problems []survey.Problem `json:"problems"`
}

// Run lists every problem; a document without any gives exit code 0.
func (c checkCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, problems, err := openSurvey(c.File, k)
	if err != nil {
		return err
	}
	if c.JSON {
		if err := writeJSON(env.Stdout, problemList{append([]survey.Problem{}, problems...)}); err != nil {
			return err
		}
	} else {
		listProblems(env.Stdout, problems)
	}
	if len(problems) > 0 {
		return refusal{fmt.Errorf("%s: %d %s", c.File, len(problems), plural("problem", len(problems)))}
	}
	if !c.JSON {
		fmt.Fprintf(env.Stdout, "%s: no problem found; %d %s\n", c.File, len(s.Trees), plural("tree", len(s.Trees)))
	}
	return nil
}
