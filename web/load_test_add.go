package web

import (
	"fmt"
	"net/http"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// leastTestSteps is how many steps the form has room for.
const leastTestSteps = 6

// stopSigns are those that a form asks for.
var stopSigns = []string{survey.TestSound, survey.TestCrack, survey.TestCurve, survey.TestMovement}

func (a *app) newLoadTest(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.loadTestForm(w, r, e, s, t, h, nil)
	})
}

// createLoadTest keeps the record as typed, whole or not at all. What follows
// is worked out anew from all records.
func (a *app) createLoadTest(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		tests := func(t *notebook.Tree) any { return []any{t.LoadTests, hangOf(t, h.ID)} }
		return a.change(w, r, e, s, t, words.DidLoadTest+h.ID, a.treeLink(s, t, "hang", h.ID, "test"), tests,
			func(t *notebook.Tree) error {
				t.LoadTests = append(t.LoadTests[:len(t.LoadTests):len(t.LoadTests)], readLoadTest(e, h.ID))
				return e.taken()
			},
			func(problems []string) error { return a.loadTestForm(w, r, e, s, t, h, problems) })
	})
}

func (a *app) loadTestForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang, problems []string) error {
	var planned []assess.PlannedStep
	if plan, err := assess.PlanLoadTest(s.Near(t), a.Notebook.Knowledge(), h.ID); err == nil {
		planned = plan.Steps
	} // without a plan the form still takes what happened
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.LoadTestRecord, a.hangTrail(s, t, h)...), Intro: words.LoadTestFormHelp, Problems: problems,
		Back: a.treeLink(s, t, "hang", h.ID, "test"), Revision: t.Revision,
		Groups: append(testStepGroups(e, planned), []view.Group{
			{Legend: words.LoadTestAfter, Fields: []view.Field{measuredField[quantity.Length](e, "set", fine(e), nil, quantity.Taped)}},
			{Legend: words.LoadTestSigns, Help: words.LoadTestSignsHow, Fields: stopSignFields(e)},
			{Fields: []view.Field{
				e.field("tested_on", view.Date, s.Head.Day.String()),
				e.field("tested_by", view.Text, a.Notebook.Settings(r.Context()).Name),
				e.field("note", view.Long, ""),
			}},
		}...),
	})
}

// testStepGroups are loads and sags in pairs, each with what is planned.
func testStepGroups(e *entry, planned []assess.PlannedStep) []view.Group {
	var groups []view.Group
	for i := range max(leastTestSteps, len(planned)+1) {
		load := measuredField[quantity.Mass](e, fmt.Sprintf("load_%d", i), e.units.mass(), nil, quantity.Weighed)
		sag := measuredField[quantity.Length](e, fmt.Sprintf("sag_%d", i), fine(e), nil, quantity.Taped)
		load.Pair, sag.Pair = true, true
		if i > 0 {
			load.Help = ""
		}
		g := view.Group{Legend: fmt.Sprintf(words.LoadTestStepNumber, i+1)}
		if i < len(planned) {
			step := planned[i]
			g.Help = fmt.Sprintf(words.LoadTestPlanned, e.units.in().Quantity(float64(step.Mass), "kg"), e.units.small(step.Low), e.units.small(step.High))
		}
		g.Fields = []view.Field{load, sag}
		groups = append(groups, g)
	}
	return groups
}

// fine is the unit that a sag is read in.
func fine(e *entry) string { return e.units.pick("mm", "in") }

func stopSignFields(e *entry) []view.Field {
	var fields []view.Field
	for _, sign := range stopSigns {
		f := e.field("sign_"+sign, view.Tick, "")
		f.Label = capital(wording.StopSign(sign))
		fields = append(fields, f)
	}
	return fields
}

func readLoadTest(e *entry, hang string) survey.LoadTest {
	test := survey.LoadTest{Hang: hang, On: e.day("tested_on"), By: e.text("tested_by"), Note: e.text("note")}
	if e.text("tested_on") == "" {
		e.faults["tested_on"] = words.WantValue
	}
	for i := 0; e.values.Has(fmt.Sprintf("load_%d", i)); i++ {
		load, sag := fmt.Sprintf("load_%d", i), fmt.Sprintf("sag_%d", i)
		if e.text(load) == "" && e.text(sag) == "" {
			continue
		}
		test.Steps = append(test.Steps, readLoadStep(e, load, sag))
	}
	if len(test.Steps) == 0 {
		e.faults["load_0"] = words.WantValue
	}
	test.Set = measured[quantity.Length](e, "set", fine(e), nil)
	for _, sign := range stopSigns {
		if e.text("sign_"+sign) == "yes" {
			test.Signs = append(test.Signs, sign)
		}
	}
	return test
}

// readLoadStep reads a load as a mass, or as a pull where its unit says so.
func readLoadStep(e *entry, load, sag string) survey.LoadStep {
	var step survey.LoadStep
	text := e.text(load)
	if pull, err := quantity.ParseChosen[quantity.Force](typed(text, e.units.mass())); err == nil {
		step.Pull = &pull
	} else {
		step.Mass = measured[quantity.Mass](e, load, e.units.mass(), nil)
	}
	if text == "" {
		e.faults[load] = words.LoadTestWantLoad
	}
	step.Sag = measured[quantity.Length](e, sag, fine(e), nil)
	return step
}
