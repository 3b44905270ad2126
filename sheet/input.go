package sheet

import (
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/outing"
	"boughline/register"
	"boughline/sheet/figure"
	"boughline/survey"
)

// Input is what sheets are made of.
type Input struct {
	Survey    *survey.Survey // without problems; of an outing the one it was issued from
	Outing    *outing.Outing // of the kinds that take a day
	Register  *register.Register
	On        survey.Date // the day that a register is judged for
	Knowledge *knowledge.Base
	Made      Made
	// Tree and Hang narrow a sheet down; empty for all.
	Tree, Hang string
	Photos     []Photo
	History    []Event // of the tree, the newest first
	// Working appends the worked steps to an assessment.
	Working bool
	// Progress hears how many of the parts are done; nil for nobody.
	Progress func(done, total int)
}

// Made says which program and which tables made a sheet.
type Made struct{ Program, Knowledge string }

// Event is one change of a record.
type Event struct{ On, By, What string }

// subject is an input worked out: what all kinds of sheet are built from.
type subject struct {
	Input
	figures *assess.Figures
	hangs   []assess.Hang // those asked for
	drawn   map[string]assess.HangFigure
}

// newSubject works a survey out. Errors name the tree or hang that the survey
// has not.
func newSubject(in Input, takes Takes) (*subject, error) {
	if takes == TakesRegister {
		return &subject{Input: in}, nil
	}
	figures, err := assess.NewFigures(in.Survey, in.Knowledge)
	if err != nil {
		return nil, err
	}
	u := &subject{Input: in, figures: figures, drawn: map[string]assess.HangFigure{}}
	if err := u.narrow(); err != nil {
		return nil, err
	}
	for i, t := range in.Survey.Trees {
		if in.Progress != nil {
			in.Progress(i, len(in.Survey.Trees))
		}
		if u.Tree == "" || u.Tree == t.ID {
			if err := u.judge(t.ID); err != nil {
				return nil, err
			}
		}
	}
	if in.Progress != nil {
		in.Progress(len(in.Survey.Trees), len(in.Survey.Trees))
	}
	return u, nil
}

// narrow finds the tree of a hang and refuses names that the survey has not.
func (u *subject) narrow() error {
	var trees, hangs []string
	of := map[string]string{}
	for _, t := range u.Survey.Trees {
		trees = append(trees, t.ID)
		for _, h := range t.Hangs {
			of[h.ID] = t.ID
			if u.Tree == "" || u.Tree == t.ID {
				hangs = append(hangs, h.ID)
			}
		}
	}
	if u.Tree != "" && !slices.Contains(trees, u.Tree) {
		return Unknown{"tree", u.Tree, trees}
	}
	if u.Hang != "" {
		if !slices.Contains(hangs, u.Hang) {
			return Unknown{"hang", u.Hang, hangs}
		}
		u.Tree = of[u.Hang]
	}
	return nil
}

// judge works out the hangs of a tree.
func (u *subject) judge(tree string) error {
	a, err := assess.AssessTree(u.Survey, u.Knowledge, tree)
	if err != nil {
		return err
	}
	for _, h := range a.Hangs {
		if u.Hang != "" && u.Hang != h.ID {
			continue
		}
		u.hangs = append(u.hangs, h)
		if drawn, err := u.figures.Hang(h.ID); err == nil { // the assessment says why it is not computed
			u.drawn[h.ID] = drawn
		}
	}
	return nil
}

// of lists the hangs of a tree.
func (u *subject) of(tree string) []assess.Hang {
	var list []assess.Hang
	for _, h := range u.hangs {
		if h.Tree == tree {
			list = append(list, h)
		}
	}
	return list
}

// judged pairs a hang with its drawing; false where it cannot be drawn.
func (u *subject) judged(h assess.Hang) (figure.Judged, bool) {
	drawn, ok := u.drawn[h.ID]
	return figure.Judged{Figure: drawn, Assessed: h}, ok
}

// tree returns a tree of the survey, which has one of that id.
func (u *subject) tree(id string) *survey.Tree {
	for i := range u.Survey.Trees {
		if u.Survey.Trees[i].ID == id {
			return &u.Survey.Trees[i]
		}
	}
	return &survey.Tree{ID: id}
}

// Unknown says that a survey has no tree or hang of a name.
type Unknown struct {
	What, ID string
	Known    []string
}

// Error implements error.
func (u Unknown) Error() string {
	if len(u.Known) == 0 {
		return fmt.Sprintf("%q is no %s of this survey, which has none; put one into it first", u.ID, u.What)
	}
	return fmt.Sprintf("%q is no %s of this survey; expected one of %s", u.ID, u.What, strings.Join(u.Known, ", "))
}
