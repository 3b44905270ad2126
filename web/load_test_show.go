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
	return a.withHang(w, r, func(_ *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		page := view.LoadTest{
			Page: a.newPage(r, words.LoadTestTitle+": "+h.ID, a.hangTrail(s, t, h)...), Sentence: a.outcomeSentence(s, t, h),
			Records: loadTestRecords(t, h.ID, s.Head.Day), Record: view.Link{Text: words.LoadTestRecord, To: a.treeLink(s, t, "hang", h.ID, "test", "new")},
		}
		near := s.Near(t)
		if plan, err := assess.PlanLoadTest(near, a.Notebook.Knowledge(), h.ID); err != nil {
			page.Fault = err.Error()
		} else {
			loadTestView(&page, plan)
		}
		if result, err := assess.JudgeLoadTest(near, a.Notebook.Knowledge(), h.ID); err == nil {
			loadTestFollows(&page, result)
		} // otherwise nothing of this hang is worked out, and the sentence says so
		return a.send(w, r, http.StatusOK, view.LoadTestPage(page))
	})
}

func loadTestView(page *view.LoadTest, plan assess.LoadTestPlan) {
	page.NotNow = !plan.Outcome.Rideable()
	page.For = useRows(plan.Use)
	page.Stand = fmt.Sprintf(words.LoadTestStandOff, wording.Quantity(float64(plan.StandOff), "m"))
	for _, step := range plan.Steps {
		page.Steps = append(page.Steps, view.TestStep{
			Load: fmt.Sprintf(words.LoadTestStep, wording.Quantity(float64(step.Mass), "kg"), wording.Quantity(float64(step.Pull), "N")),
			Sag:  fmt.Sprintf(words.LoadTestSag, millimetres(step.Sag), millimetres(step.Low), millimetres(step.High)),
		})
	}
	page.Hold = fmt.Sprintf(words.LoadTestHold, float64(plan.Hold), millimetres(plan.SetAtMost), millimetres(plan.ReadingOff))
	page.Counts = fmt.Sprintf(words.LoadTestCounts, wording.Quantity(float64(plan.Total), "kg"), wording.AtMost(float64(plan.Counts), "kg"))
	for _, sign := range plan.StopAt {
		page.Stop = append(page.Stop, wording.StopSign(sign))
	}
	page.Stop = append(page.Stop, words.LoadTestStopAbove)
	page.LeftOut = wording.LeavesOut(plan.LeftOut)
}

func loadTestFollows(page *view.LoadTest, result assess.LoadTestResult) {
	for _, reason := range result.Reasons {
		page.Reasons = append(page.Reasons, reasonView(reason))
	}
	if u := result.Update; u != nil {
		page.Update = []view.Row{
			{Name: words.LoadTestStiff, Value: updated(u.Stiffness)},
			{Name: words.LoadTestStrong, Value: updated(u.Strength)},
			{Name: words.LoadTestYear, Value: wording.Figure(u.Chance)},
		}
	}
	if result.Limits != nil {
		page.Limits = limitRows(*result.Limits)
	}
	page.LeftOut = wording.LeavesOut(result.LeftOut)
}

func updated(u assess.Updated) string {
	return fmt.Sprintf(words.LoadTestBefore, wording.Quantity(u.Before, u.Unit), 100*u.BeforeCoV, wording.Quantity(u.After, u.Unit), 100*u.AfterCoV)
}

func millimetres(l quantity.Length) string { return fmt.Sprintf("%.1f mm", float64(l)*1000) }

// loadTestRecords lists the tests of a hang, the newest first.
func loadTestRecords(t *notebook.Tree, hang string, day survey.Date) []string {
	var list []string
	for _, test := range t.LoadTests {
		if test.Hang != hang {
			continue
		}
		text := loadTestRecord(test)
		if test.On.After(day) {
			text += "; " + words.LoadTestLater
		}
		list = append([]string{text}, list...)
	}
	return list
}

func loadTestRecord(test survey.LoadTest) string {
	var parts []string
	for _, step := range test.Steps {
		load := wording.Quantity(float64(step.Load()), "N")
		if step.Mass != nil {
			load = wording.Quantity(float64(step.Mass.Value), "kg")
		}
		sag := words.LoadTestNotRead
		if step.Sag != nil {
			sag = millimetres(step.Sag.Value)
		}
		parts = append(parts, load+": "+fmt.Sprintf(words.LoadTestSagged, sag))
	}
	if test.Set != nil {
		parts = append(parts, fmt.Sprintf(words.LoadTestStayed, millimetres(test.Set.Value)))
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
