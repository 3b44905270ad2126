package outing

import (
	"fmt"
	"slices"
	"time"

	"boughline/knowledge"
	"boughline/survey"
)

// onDay is a survey as it is judged on the day of an outing, whatever day it
// was written for. Looks lapse as package assess lets them, by months before the
// day that is judged; a look without a day keeps that of the document, so that moving
// the day makes no old look a new one. What the document says of leaves holds for a
// month (leaf-statement-months), and so does the document.
func onDay(s *survey.Survey, day survey.Date, k *knowledge.Base) (*survey.Survey, error) {
	months := int(k.Parameter(knowledge.LeafMonths).Value)
	if day.After(s.Day.AddMonths(months)) || s.Day.After(day.AddMonths(months)) {
		return nil, fmt.Errorf("the survey is judged for %s, more than %d month from %s; look again, and set day and leaves in it", s.Day, months, day)
	}
	moved := *s
	moved.Day = day
	moved.Trees = slices.Clone(s.Trees)
	for i := range moved.Trees {
		t := &moved.Trees[i]
		t.Looks = slices.Clone(t.Looks)
		for j := range t.Looks {
			if t.Looks[j].On.IsZero() {
				t.Looks[j].On = s.Day
			}
		}
	}
	return &moved, nil
}

// dayOf is the calendar day of a time where that time was read.
func dayOf(at time.Time) survey.Date {
	day, err := survey.ParseDate(at.Format(time.DateOnly))
	if err != nil {
		return survey.Date{} // a year of more than four digits, which no day is judged for
	}
	return day
}

// lookAgain is the day on which the first of the looks at a tree lapses.
func lookAgain(t *survey.Tree, months int) survey.Date {
	newest := map[string]survey.Date{}
	for i := range t.Looks {
		l := &t.Looks[i]
		if l.State == survey.LookDone && !newest[l.Zone].After(l.On) {
			newest[l.Zone] = l.On
		}
	}
	var first survey.Date
	for _, on := range newest {
		if until := on.AddMonths(months); first.IsZero() || first.After(until) {
			first = until
		}
	}
	return first
}
