package web

import (
	"fmt"
	"net/http"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// showLoadTest shows the plan of a load test, what is on record, and what
// follows from it.
func (a *app) showLoadTest(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		page := view.LoadTest{
			Page: a.newPage(r, words.LoadTestTitle+": "+h.ID, a.hangTrail(s, t, h)...), Sentence: a.outcomeSentence(s, t, h),
			Records: loadTestRecords(e.units, t, h.ID, s.Head.Day), Record: view.Link{Text: words.LoadTestRecord, To: a.treeLink(s, t, "hang", h.ID, "test", "new")},
		}
		near := s.Near(t)
		if plan, err := assess.PlanLoadTest(near, a.Notebook.Knowledge(), h.ID); err != nil {
			page.Fault = err.Error()
		} else {
			loadTestView(&page, e.units, plan)
		}
		if result, err := assess.JudgeLoadTest(near, a.Notebook.Knowledge(), h.ID); err == nil {
			loadTestFollows(&page, e.units.in(), result)
		} // otherwise nothing of this hang is worked out, and the sentence says so
		return a.send(w, r, http.StatusOK, view.LoadTestPage(page))
	})
}

func loadTestView(page *view.LoadTest, u units, plan assess.LoadTestPlan) {
	page.NotNow = !plan.Outcome.Rideable()
	page.For = useRows(u.in(), plan.Use)
	page.Stand = fmt.Sprintf(words.LoadTestStandOff, u.in().Quantity(float64(plan.StandOff), "m"))
	for _, step := range plan.Steps {
		page.Steps = append(page.Steps, view.TestStep{
			Load: fmt.Sprintf(words.LoadTestStep, u.in().Quantity(float64(step.Mass), "kg"), u.in().Quantity(float64(step.Pull), "N")),
			Sag:  fmt.Sprintf(words.LoadTestSag, u.small(step.Sag), u.small(step.Low), u.small(step.High)),
		})
	}
	page.Hold = fmt.Sprintf(words.LoadTestHold, float64(plan.Hold), u.small(plan.SetAtMost), u.small(plan.ReadingOff))
	page.Counts = fmt.Sprintf(words.LoadTestCounts, u.in().Quantity(float64(plan.Total), "kg"), u.in().AtMost(float64(plan.Counts), "kg"))
	for _, sign := range plan.StopAt {
		page.Stop = append(page.Stop, wording.StopSign(sign))
	}
	page.Stop = append(page.Stop, words.LoadTestStopAbove)
	page.LeftOut = wording.LeavesOut(plan.LeftOut)
}

func loadTestFollows(page *view.LoadTest, in wording.Units, result assess.LoadTestResult) {
	for _, reason := range result.Reasons {
		page.Reasons = append(page.Reasons, reasonView(in, reason))
	}
	if u := result.Update; u != nil {
		page.Update = []view.Row{
			{Name: words.LoadTestStiff, Value: updated(in, u.Stiffness)},
			{Name: words.LoadTestStrong, Value: updated(in, u.Strength)},
			{Name: words.LoadTestYear, Value: wording.Figure(u.Chance)},
		}
	}
	if result.Limits != nil {
		page.Limits = limitRows(in, *result.Limits)
	}
	page.LeftOut = wording.LeavesOut(result.LeftOut)
}

func updated(in wording.Units, u assess.Updated) string {
	return fmt.Sprintf(words.LoadTestBefore, in.Quantity(u.Before, u.Unit), 100*u.BeforeCoV, in.Quantity(u.After, u.Unit), 100*u.AfterCoV)
}

// small writes how far something goes down.
func (u units) small(l quantity.Length) string {
	if u.feet {
		return u.in().Quantity(float64(l), "m")
	}
	return fmt.Sprintf("%.1f mm", float64(l)*1000)
}

// loadTestRecords lists the tests of a hang, the newest first.
func loadTestRecords(u units, t *notebook.Tree, hang string, day survey.Date) []string {
	var list []string
	for _, test := range t.LoadTests {
		if test.Hang != hang {
			continue
		}
		text := loadTestRecord(u, test)
		if test.On.After(day) {
			text += "; " + words.LoadTestLater
		}
		list = append([]string{text}, list...)
	}
	return list
}

func loadTestRecord(u units, test survey.LoadTest) string {
	var parts []string
	for _, step := range test.Steps {
		load := u.in().Quantity(float64(step.Load()), "N")
		if step.Mass != nil {
			load = u.in().Quantity(float64(step.Mass.Value), "kg")
		}
		sag := words.LoadTestNotRead
		if step.Sag != nil {
			sag = u.small(step.Sag.Value)
		}
		parts = append(parts, load+": "+fmt.Sprintf(words.LoadTestSagged, sag))
	}
	if test.Set != nil {
		parts = append(parts, fmt.Sprintf(words.LoadTestStayed, u.small(test.Set.Value)))
	}
	for _, sign := range test.Signs {
		parts = append(parts, fmt.Sprintf(words.LoadTestStopped, wording.StopSign(sign)))
	}
	if test.By != "" {
		parts = append(parts, fmt.Sprintf(words.LoadTestBy, test.By))
	}
	if test.Note != "" {
		parts = append(parts, test.Note)
	}
	return test.On.String() + ". " + strings.Join(parts, "; ")
}
