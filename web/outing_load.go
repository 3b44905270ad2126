package web

import (
	"errors"
	"net/http"

	"boughline/assess"
	"boughline/notebook"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) newOutingTest(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(e *entry, s *notebook.Site, o *outing.Outing) error {
		return a.outingTestForm(w, r, e, s, o, nil)
	})
}

// addOutingTest takes the load test of the day. What follows from it is worked
// out by the outing; passed or failed, it goes into the record of the tree too.
func (a *app) addOutingTest(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(e *entry, s *notebook.Site, o *outing.Outing) error {
		e.values.Set("tested_on", o.Issue.Day().String())
		test := readLoadTest(e, o.Issue.Hang)
		if e.taken() != nil {
			return a.outingTestForm(w, r, e, s, o, nil)
		}
		_, err := a.Notebook.AddEvent(r.Context(), s.ID, o.ID, a.eventEdit(e, s, o), outing.Event{Kind: outing.LoadTest, By: test.By, Test: &test})
		var refused *outing.Refused
		var invalid *notebook.Invalid
		switch {
		case errors.As(err, &refused):
			return a.outingTestForm(w, r, e, s, o, []string{wording.Refusal(refused)})
		case errors.As(err, &invalid):
			return a.outingTestForm(w, r, e, s, o, problemTexts(invalid.Problems))
		}
		return a.eventTaken(w, r, e, s, o, err)
	})
}

func (a *app) outingTestForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, o *outing.Outing, problems []string) error {
	var planned []assess.PlannedStep
	if t, err := s.Tree(o.Issue.Tree); err == nil {
		if plan, err := assess.PlanLoadTest(s.Near(t), a.Notebook.Knowledge(), o.Issue.Hang); err == nil {
			planned = plan.Steps
		}
	} // without a plan the form still takes what happened
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.DayWriteTest, a.outingTrail(s, o)...), Intro: words.LoadTestFormHelp, Problems: problems, Back: a.outingLink(s, o),
		Groups: append(testStepGroups(e, planned), []view.Group{
			{Legend: words.LoadTestAfter, Fields: []view.Field{measuredField[quantity.Length](e, "set", fine(e), nil, quantity.Taped)}},
			{Legend: words.LoadTestSigns, Help: words.LoadTestSignsHow, Fields: stopSignFields(e)},
			{Fields: []view.Field{e.field("tested_by", view.Text, a.Notebook.Settings(r.Context()).Name), e.field("note", view.Long, "")}},
		}...),
	})
}
