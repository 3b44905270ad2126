package web

import (
	"net/http"

	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// listLines shows the other hangs of a site with what follows for each.
func (a *app) listLines(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	page := view.Lines{Page: a.newPage(r, words.Lines, a.siteTrail(s)...)}
	for i := range s.Head.Lines {
		page.Lines = append(page.Lines, a.lineOutcome(s, s.Head.Lines[i].ID))
	}
	if page.Able = len(s.Trees)*len(s.Head.Riders)*len(s.Head.Chains) > 0; page.Able {
		for _, kind := range []view.Link{{Text: words.NewHammock, To: survey.HammockLine}, {Text: words.NewTraverse, To: survey.TraverseLine}, {Text: words.NewClimbing, To: survey.ClimbingLine}} {
			page.New = append(page.New, view.Link{Text: kind.Text, To: a.link("site", s.ID, "line", "new") + "?kind=" + kind.To})
		}
	}
	return a.send(w, r, http.StatusOK, view.LinesPage(page))
}

// lineOutcome is one line of the list.
func (a *app) lineOutcome(s *notebook.Site, id string) view.HangLine {
	shown := view.HangLine{Name: id, To: a.link("site", s.ID, "line", id)}
	found, err := a.Notebook.Line(s, id)
	if err != nil {
		shown.Fault = err.Error()
		return shown
	}
	shown.Shape, shown.Outcome, shown.Code = wording.Shape(found.Outcome), wording.Outcome(found.Outcome), found.Outcome.String()
	return shown
}
