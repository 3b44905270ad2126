package web

import (
	"fmt"
	"net/http"
	"time"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

// still tells of every swing that hangs. A store that cannot be read says so on
// the page itself.
func (a *app) still(r *http.Request) []view.Still {
	up, err := a.Notebook.StillUp(r.Context())
	if err != nil {
		return nil
	}
	now := a.Notebook.Now()
	var list []view.Still
	for _, u := range up {
		at := clock(u.Until)
		list = append(list, view.Still{
			Text: fmt.Sprintf(words.DayUpBanner, u.Hang, at), LateText: fmt.Sprintf(words.DayLateBanner, u.Hang, at),
			To: a.link("site", u.Site, "outing", u.ID), Until: u.Until.Format(time.RFC3339), Late: !now.Before(u.Until),
		})
	}
	return list
}

func clock(t time.Time) string { return t.Format("15:04") }

// outingLines are the outings of a tree, the newest first.
func (a *app) outingLines(r *http.Request, s *notebook.Site, tree string) ([]view.OutingLine, error) {
	briefs, err := a.Notebook.Briefs(r.Context(), s.ID)
	var lines []view.OutingLine
	for _, b := range briefs {
		if b.Tree != tree {
			continue
		}
		lines = append(lines, view.OutingLine{
			Name: fmt.Sprintf("%s, %s", b.At.Format(time.DateOnly), b.Hang), About: aboutOuting(b), To: a.link("site", s.ID, "outing", b.ID),
		})
	}
	return lines, err
}
