package sheet

import (
	"bytes"
	"fmt"
	"strings"

	"boughline/sheet/words"
	"boughline/survey"
)

// Kind is one kind of sheet.
type Kind struct {
	Name string // as it is asked for
	Says string // what it is for
	// NeedsTree and NeedsHang tell what a sheet cannot be made without.
	NeedsTree, NeedsHang bool
	// Takes is what it is made of.
	Takes Takes
	build func(*subject) (*Sheet, error)
}

// Takes is what a kind of sheet is made of.
type Takes string

// What sheets are made of.
const (
	TakesSurvey   Takes = ""
	TakesOuting   Takes = "the file of a day"
	TakesRegister Takes = "a register of gear"
)

// Kinds lists every kind of sheet.
func Kinds() []Kind {
	return []Kind{assessmentKind, siteKind, risksKind, permissionKind, arboristKind, workingKind, lookListKind, rigKind, dayCardKind, outingKind, gearKind}
}

// KindOf returns the kind of a name. The error lists those there are.
func KindOf(name string) (Kind, error) {
	var names []string
	for _, k := range Kinds() {
		if k.Name == name {
			return k, nil
		}
		names = append(names, k.Name)
	}
	return Kind{}, fmt.Errorf("%q is no kind of sheet; expected one of %s", name, strings.Join(names, ", "))
}

// Make builds a sheet of a kind. Where a kind needs one tree or hang and the
// survey has one alone, that is taken.
func Make(name string, in Input) (*Sheet, error) {
	k, err := KindOf(name)
	if err != nil {
		return nil, err
	}
	if err := k.take(&in); err != nil {
		return nil, err
	}
	if err := k.choose(&in); err != nil {
		return nil, err
	}
	u, err := newSubject(in, k.Takes)
	if err != nil {
		return nil, err
	}
	s, err := k.build(u)
	if err != nil {
		return nil, err
	}
	on, of := in.On, fmt.Sprintf(words.FootGear, s.Title, in.On)
	if k.Takes != TakesRegister {
		on, of = in.Survey.Day, fmt.Sprintf(words.FootOf, in.Survey.Site, s.Title, in.Survey.Day)
	}
	s.Kind, s.Language, s.Day = k.Name, words.Language, on.String()
	s.Foot = []string{
		of,
		fmt.Sprintf(words.FootMade, in.Made.Program, in.Made.Knowledge),
	}
	return s, nil
}

// take checks that what a kind is made of is there. A day brings the survey that
// its card was issued from, as it is judged on that day.
func (k Kind) take(in *Input) error {
	switch k.Takes {
	case TakesOuting:
		if in.Outing == nil {
			return Missing{k.Name, "day"}
		}
		s, problems, err := survey.Read(bytes.NewReader(in.Outing.Document))
		if err != nil || len(problems) > 0 {
			return fmt.Errorf("the survey of the day has %d problems: %w", len(problems), err)
		}
		s.Day = in.Outing.Issue.Day()
		in.Survey, in.Tree, in.Hang = s, in.Outing.Issue.Tree, in.Outing.Issue.Hang
	case TakesRegister:
		if in.Register == nil {
			return Missing{k.Name, "register"}
		}
	}
	return nil
}

// choose takes the only tree or hang where one is needed and none is named.
func (k Kind) choose(in *Input) error {
	if k.NeedsTree && in.Tree == "" && in.Hang == "" {
		if len(in.Survey.Trees) != 1 {
			return Missing{k.Name, "tree"}
		}
		in.Tree = in.Survey.Trees[0].ID
	}
	if k.NeedsHang && in.Hang == "" {
		for _, t := range in.Survey.Trees {
			if in.Tree != "" && t.ID != in.Tree {
				continue
			}
			for _, h := range t.Hangs {
				if in.Hang != "" {
					return Missing{k.Name, "hang"}
				}
				in.Hang = h.ID
			}
		}
		if in.Hang == "" {
			return Missing{k.Name, "hang"}
		}
	}
	return nil
}

// Missing says that a kind of sheet is about one tree or hang and none was
// named.
type Missing struct{ Kind, What string }

// Error implements error.
func (m Missing) Error() string {
	return fmt.Sprintf("a sheet of the kind %s is about one %s; name it", m.Kind, m.What)
}
