package web

import (
	"cmp"
	"errors"
	"net/http"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// mostMargins is how many margins of a hang are shown beside a form.
const mostMargins = 6

// showMargins works out what the numbers in an open form would lead to.
// Nothing is kept.
func (a *app) showMargins(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		member, hang := e.text("member"), e.text("hang")
		var page view.Margins
		found, err := a.Notebook.Try(s, t, func(t *notebook.Tree) error {
			if hang != "" {
				readHang(e, t, hang)
			} else {
				readMember(e, t, member)
				member = cmp.Or(e.text("limb"), member)
			}
			if err := e.taken(); err != nil {
				return err
			}
			page.Trial = onlyHangs(s, t, member, hang)
			return nil
		})
		var invalid *notebook.Invalid
		var refused *refusedEntry
		switch {
		case errors.As(err, &refused):
			page.Fault = faultLines(e)
		case errors.As(err, &invalid):
			page.Fault = problemTexts(invalid.Problems)
		case err != nil:
			page.Fault = []string{err.Error()}
		}
		for _, h := range found.Hangs {
			page.Hangs = append(page.Hangs, marginsOf(e.units.in(), h))
		}
		return a.send(w, r, http.StatusOK, view.MarginsPart(page))
	})
}

// onlyHangs leaves the hangs that a form bears on: the one it is about, those
// of a limb, all for a stem. A limb without one gets a trial.
func onlyHangs(s *notebook.Site, t *notebook.Tree, member, hang string) (trial bool) {
	var kept []survey.Hang
	m := memberOf(t, member)
	stem := m != nil && m.Parent == ""
	for _, h := range t.Hangs {
		if h.ID == hang || hang == "" && (h.Member == member || stem) {
			kept = append(kept, h)
		}
	}
	t.Hangs = kept
	if len(kept) > 0 || stem || len(s.Head.Riders) == 0 || len(s.Head.Chains) == 0 {
		return false
	}
	t.Hangs = []survey.Hang{{
		ID: words.Trial, Member: member, At: survey.MeasuredLength{Value: 2.5, How: quantity.Taped}, Line: survey.ChosenLength{Value: 3},
		Amplitude: survey.ChosenAngle{Value: 45 * quantity.Degree}, Riders: s.Head.Riders[0].ID, Chain: s.Head.Chains[0].ID,
	}}
	return true
}

func marginsOf(in wording.Units, h assess.Hang) view.MarginsOf {
	m := view.MarginsOf{Name: h.ID, Shape: wording.Shape(h.Outcome), Outcome: wording.Outcome(h.Outcome)}
	for _, c := range h.Checks[:min(mostMargins, len(h.Checks))] {
		m.Least = append(m.Least, view.MarginLine{Margin: wording.Margin(c.Margin), Check: wording.Check(c), Detail: in.Comparison(c)})
	}
	if len(h.Checks) == 0 {
		for _, reason := range h.Reasons[:min(1, len(h.Reasons))] {
			m.Outcome += " " + in.Reason(reason)
		}
	}
	return m
}
