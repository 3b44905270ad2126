package web

import (
	"bytes"
	"fmt"
	"net/http"
	"time"

	"boughline/assess"
	assessed "boughline/assess/wording"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// showCard is the card as it holds now: after a lighter load test it allows
// less than at issue.
func (a *app) showCard(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(_ *entry, s *notebook.Site, o *outing.Outing) error {
		c := o.Card
		page := view.Card{
			Page: a.newPage(r, wording.Title(c), a.outingTrail(s, o)...), Where: wording.Where(c), Limits: cardRows(wording.Limits(c)), Rules: cardRows(wording.Rules(c, a.pace(r))),
			Signature: wording.Signature(c), Lapses: wording.Lapses(c), Cautions: assessed.Cautions()[:3], Drawings: a.siteOf(r, o),
			Links: []view.Link{{Text: words.DayCalendar, To: a.outingLink(s, o, "calendar.ics")}},
		}
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.CardPage(page))
	})
}

func cardRows(lines []wording.Line) []view.Row {
	var rows []view.Row
	for _, l := range lines {
		rows = append(rows, view.Row{Name: l.Head, Value: l.Text})
	}
	return rows
}

// pace is one step of the person, or the table's.
func (a *app) pace(r *http.Request) quantity.Length {
	if p := a.Notebook.Settings(r.Context()).Pace; p > 0 {
		return quantity.Length(p)
	}
	return quantity.Length(a.Notebook.Knowledge().Parameter(knowledge.PaceLength).Value)
}

// siteOf draws the hang of an outing with its ground, nothing where that
// cannot be drawn.
func (a *app) siteOf(r *http.Request, o *outing.Outing) []view.Drawing {
	s, problems, err := survey.Read(bytes.NewReader(o.Document))
	if err != nil || len(problems) > 0 {
		return nil
	}
	figures, err := assess.NewFigures(s, a.Notebook.Knowledge())
	if err != nil {
		return nil
	}
	tree, errTree := figures.Tree(o.Issue.Tree)
	hang, errHang := figures.Hang(o.Issue.Hang)
	if errTree != nil || errHang != nil {
		return nil
	}
	limits := o.Card.Limits
	judged := figure.Judged{Figure: hang, Assessed: assess.Hang{ID: o.Issue.Hang, Tree: tree.Survey.ID, Member: o.Card.Member, Outcome: o.Card.Outcome, Limits: &limits}}
	return []view.Drawing{easel{a, r, nil}.drawn(figure.Site(o.Card.Site, []assess.TreeFigure{tree}, []figure.Judged{judged}))}
}

func (a *app) sendCalendar(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(_ *entry, s *notebook.Site, o *outing.Outing) error {
		return sendFile(w, "text/calendar; charset=utf-8", fileName(o.Issue.Hang)+".ics", wording.Calendar(o))
	})
}

// sendOuting is the outing as a file that the command line reads.
func (a *app) sendOuting(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(_ *entry, s *notebook.Site, o *outing.Outing) error {
		var b bytes.Buffer
		if err := outing.Write(&b, o); err != nil {
			return err
		}
		return sendFile(w, "application/json", fmt.Sprintf("%s-%s.outing.json", fileName(o.Card.Hang), o.Issue.At.Format(time.DateOnly)), b.Bytes())
	})
}

func sendFile(w http.ResponseWriter, kind, name string, data []byte) error {
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Disposition", fmt.Sprintf(`attachment; filename="%s"`, name))
	w.Header().Set("Cache-Control", "no-store")
	_, err := w.Write(data)
	return err
}
