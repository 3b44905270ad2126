package figure_test

import (
	"bytes"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/sheet/figure"
	"boughline/survey"
)

// fataler is a test or a run of a property.
type fataler interface{ Fatal(...any) }

var tables = func() *knowledge.Base {
	k, err := knowledge.Load()
	if err != nil {
		panic(err)
	}
	return k
}()

func demoSurvey(t fataler) *survey.Survey {
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return s
}

// judged is every hang of a survey that can be worked out, and all trees.
func judged(t fataler, s *survey.Survey) ([]assess.TreeFigure, []figure.Judged) {
	figures, err := assess.NewFigures(s, tables)
	if err != nil {
		t.Fatal(err)
	}
	a, err := assess.Assess(s, tables)
	if err != nil {
		t.Fatal(err)
	}
	var hangs []figure.Judged
	for _, h := range a.Hangs {
		if f, err := figures.Hang(h.ID); err == nil {
			hangs = append(hangs, figure.Judged{Figure: f, Assessed: h})
		}
	}
	return figures.Trees(), hangs
}
