package cli

import (
	"fmt"
	"io"
	"os"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// readSurvey reads a survey file and refuses it with all its problems listed
// on stderr.
func readSurvey(env Env, name string, k *knowledge.Base) (*survey.Survey, error) {
	s, problems, err := openSurvey(name, k)
	if err != nil {
		return nil, err
	}
	if len(problems) > 0 {
		listProblems(env.Stderr, problems)
		return nil, refusal{fmt.Errorf("%s: %d %s; nothing was worked out", name, len(problems), plural("problem", len(problems)))}
	}
	return s, nil
}

// openSurvey reads a survey file with every problem of document and names.
func openSurvey(name string, k *knowledge.Base) (*survey.Survey, []survey.Problem, error) {
	file, err := os.Open(name)
	if err != nil {
		return nil, nil, fmt.Errorf("cannot open the survey: %w", err)
	}
	defer file.Close()
	s, problems, err := survey.Read(file)
	if err != nil {
		return nil, nil, fmt.Errorf("cannot read %s: %w", name, err)
	}
	if s != nil {
		problems = append(problems, assess.Problems(s, k)...)
	}
	return s, problems, nil
}

func listProblems(w io.Writer, problems []survey.Problem) {
	for _, p := range problems {
		fmt.Fprintln(w, p)
	}
}

func plural(word string, n int) string {
	if n == 1 {
		return word
	}
	return word + "s"
}
