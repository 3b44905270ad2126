package web

import (
	"cmp"
	"errors"
	"net/http"
	"time"

	"boughline/notebook"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// askForCard judges the hang anew and asks for take-down and signature, or says
// what stands in the way.
func (a *app) askForCard(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.cardForm(w, r, e, s, t, h, nil)
	})
}

// issueCard never looks at what a page has shown: the notebook judges the hang
// again.
func (a *app) issueCard(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		now := a.Notebook.Now()
		i := outing.Issue{Tree: t.ID, Hang: h.ID, At: now, Signed: e.text("signed")}
		var err error
		if i.Until, err = todayAt(now, e.text("until")); err != nil {
			return a.cardForm(w, r, e, s, t, h, err)
		}
		id := a.NewID()
		to := a.link("site", s.ID, "outing", id)
		_, err = a.Notebook.IssueCard(r.Context(), s.ID, id, notebook.Edit{Form: e.text("form"), To: to, What: words.DidIssue + h.ID}, i)
		var again *notebook.Again
		var no *outing.NoCard
		var up *notebook.HangsAlready
		switch {
		case err == nil:
			return a.moveOn(w, r, to)
		case errors.As(err, &again):
			return a.moveOn(w, r, again.To)
		case errors.As(err, &no), errors.As(err, &up):
			return a.cardForm(w, r, e, s, t, h, err)
		}
		return err
	})
}

// todayAt is a time of day on the day of now, in its zone.
func todayAt(now time.Time, text string) (time.Time, error) {
	at, err := time.Parse("15:04", text)
	if err != nil {
		return time.Time{}, errors.New(words.DayWantTime)
	}
	return time.Date(now.Year(), now.Month(), now.Day(), at.Hour(), at.Minute(), 0, 0, now.Location()), nil
}

// usualLength is how long an outing is proposed to last (house).
const usualLength = 6 * time.Hour

func (a *app) cardForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang, fault error) error {
	now := a.Notebook.Now()
	page := view.DayAsk{
		Page: a.newPage(r, words.DayCard+": "+h.ID, a.hangTrail(s, t, h)...), Action: a.here(r), Form: a.NewID(),
		Until: cmp.Or(e.text("until"), clock(proposed(now))), Signed: e.text("signed"), Reasons: view.Link{Text: words.DaySeeReasons, To: a.treeLink(s, t, "hang", h.ID)},
	}
	if !e.listed {
		page.Signed = a.Notebook.Settings(r.Context()).Name
	}
	status := http.StatusOK
	if fault != nil {
		status = http.StatusUnprocessableEntity
	}
	a.openOuting(r, &page, s, h.ID)
	// As long as the day is, with any name: what is left is what stands in the way.
	trial := outing.Issue{Tree: t.ID, Hang: h.ID, At: now, Until: endOfDay(now), Signed: "-"}
	if _, _, err := outing.NewJudge(s.Near(t), a.Notebook.Knowledge(), trial)(nil); err != nil {
		page.Action, page.InTheWay = "", wording.NoCard(err)
	} else if err := a.Notebook.GearStands(r.Context(), s.Near(t), h.ID, trial.Day()); err != nil {
		page.Action, page.InTheWay = "", wording.NoCard(err)
	} else if fault != nil {
		page.Fault = wording.NoCard(fault)[0]
	}
	return a.send(w, r, status, view.DayAskPage(page))
}

// openOuting leads to the outing of a hang that has no end yet.
func (a *app) openOuting(r *http.Request, page *view.DayAsk, s *notebook.Site, hang string) {
	briefs, err := a.Notebook.Briefs(r.Context(), s.ID)
	if err != nil {
		return // the page that is asked for says nothing of others
	}
	for _, b := range briefs {
		if b.Hang == hang && !b.Down {
			page.Open = &view.Link{Text: words.DayOpenOuting, To: a.link("site", s.ID, "outing", b.ID)}
			return
		}
	}
}

func endOfDay(now time.Time) time.Time {
	return time.Date(now.Year(), now.Month(), now.Day(), 23, 59, 59, 999999999, now.Location())
}

// proposed is the take-down that the form begins with.
func proposed(now time.Time) time.Time {
	until := now.Add(usualLength).Truncate(30 * time.Minute)
	if end := endOfDay(now); until.After(end) {
		return end
	}
	return until
}
