package web

import (
	"cmp"
	"net/http"
	"slices"
	"strings"
	"time"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// patience is how long a page works on outcomes before it is sent with what
// there is; its script asks for the rest.
const patience = 60 * time.Millisecond

func (a *app) showSite(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	page := a.sitePage(r, s)
	if wantsPart(r) {
		return a.send(w, r, http.StatusOK, view.TreeList(page))
	}
	if page.Deleted, err = a.bringBack(r, s.ID); err != nil {
		return err
	}
	return a.sendDrawn(w, r, page.Page, page.Drawings, view.SitePage(page))
}

func (a *app) site(r *http.Request) (*notebook.Site, error) {
	return a.Notebook.Site(r.Context(), r.PathValue("site"))
}

func (a *app) sitePage(r *http.Request, s *notebook.Site) view.Site {
	page := view.Site{
		Page: a.newPage(r, s.Head.Site), Path: a.link("site", s.ID), Export: a.link("site", s.ID, "export"), Forms: a.formLines(s.ID), Sheets: a.sheetLines(s.ID, ""), Note: s.Head.Note,
		Query: r.URL.Query().Get("q"), Only: r.URL.Query().Get("only"), Empty: len(s.Trees)+len(s.Damaged) == 0,
	}
	page.Intro = words.JudgedFor + " " + s.Head.Day.String()
	page.Onlys = append(page.Onlys, view.Choice{Text: words.Everything})
	for _, o := range assess.Outcomes() {
		page.Onlys = append(page.Onlys, view.Choice{Value: o.String(), Text: wording.Outcome(o)})
	}
	page.Onlys = append(page.Onlys, view.Choice{Value: lookDue, Text: words.OnlyDue})
	until := time.Now().Add(patience)
	var shown []onPlan
	for i := range s.Trees {
		t := &s.Trees[i]
		if !a.fits(t, page.Query) || page.Only == lookDue && !due(t) {
			continue
		}
		line := a.treeLine(s, t, until)
		if page.Only == "" || page.Only == lookDue || slices.ContainsFunc(line.Hangs, func(h view.HangLine) bool { return h.Waiting || h.Code == page.Only }) {
			page.Trees, shown = append(page.Trees, line), append(shown, onPlan{t, line.Hangs})
		}
		if slices.ContainsFunc(line.Hangs, func(h view.HangLine) bool { return h.Waiting }) {
			page.Waiting++
		}
	}
	if page.Waiting == 0 { // else outcomes come first
		var whole bool
		if page.Drawings, whole = a.sitePlan(r, s, shown, time.Now().Add(patience)); !whole {
			page.Waiting = 1
		}
	}
	for _, d := range s.Damaged {
		page.Trees = append(page.Trees, view.TreeLine{
			To: a.link("site", s.ID, "tree", d.Tree, "history"), Name: d.Tree, Fault: words.CannotBeRead + " " + d.Cause.Error(),
		})
	}
	return page
}

// lookDue is the choice of trees of which a zone has not been looked at.
const lookDue = "due"

func due(t *notebook.Tree) bool {
	return slices.ContainsFunc(survey.Zones, func(zone string) bool { return !zoneDone(t, zone) })
}

// fits reports whether a tree answers to what is looked for.
func (a *app) fits(t *notebook.Tree, query string) bool {
	english := ""
	if known, ok := a.Notebook.Knowledge().Species(t.Species); ok {
		english = known.Common
	}
	all := strings.ToLower(strings.Join([]string{t.ID, t.Name, t.Species, english, t.Note}, " "))
	for word := range strings.FieldsSeq(strings.ToLower(query)) {
		if !strings.Contains(all, word) {
			return false
		}
	}
	return true
}

// treeLine is a tree with the outcomes of its hangs, as far as there is time
// to work them out.
func (a *app) treeLine(s *notebook.Site, t *notebook.Tree, until time.Time) view.TreeLine {
	line := view.TreeLine{To: a.link("site", s.ID, "tree", t.ID), Name: treeName(t), Species: t.Species}
	line.Hangs = a.hangLines(s, t, until)
	return line
}

func (a *app) hangLines(s *notebook.Site, t *notebook.Tree, until time.Time) []view.HangLine {
	if len(t.Hangs) == 0 {
		return nil
	}
	var lines []view.HangLine
	for i := range t.Hangs {
		h := &t.Hangs[i]
		lines = append(lines, view.HangLine{Name: h.ID, To: a.link("site", s.ID, "tree", t.ID, "hang", h.ID)})
	}
	found, known := a.Notebook.Known(s, t)
	var err error
	if !known && time.Now().Before(until) {
		found, err = a.Notebook.Outcomes(s, t)
		known = true
	}
	for i := range lines {
		switch {
		case err != nil:
			lines[i].Fault = err.Error()
		case !known:
			lines[i].Waiting = true
		default:
			tell(&lines[i], found.Hangs)
		}
	}
	return lines
}

// tell writes the outcome of a hang into its line.
func tell(line *view.HangLine, hangs []assess.Hang) {
	for _, h := range hangs {
		if h.ID == line.Name {
			line.Shape, line.Outcome, line.Code = wording.Shape(h.Outcome), wording.Outcome(h.Outcome), h.Outcome.String()
		}
	}
}

func treeName(t *notebook.Tree) string {
	if t.Name == "" {
		return t.ID
	}
	return t.ID + " " + t.Name
}

func (a *app) bringBack(r *http.Request, site string) ([]view.Button, error) {
	ids, err := a.Notebook.Deleted(r.Context(), site)
	var list []view.Button
	for _, id := range ids {
		list = append(list, view.Button{
			Text: words.Bring + ": " + id, Action: a.link("site", site, "bring", id),
			Hidden: []view.Choice{{Value: "form", Text: a.NewID()}},
		})
	}
	return list, err
}

// siteTrail leads back from a page about a site, and treeTrail from one about
// a tree.
func (a *app) siteTrail(s *notebook.Site) []view.Link {
	return []view.Link{{Text: s.Head.Site, To: "site/" + s.ID}}
}

func (a *app) treeTrail(s *notebook.Site, t *notebook.Tree) []view.Link {
	to := strings.TrimPrefix(a.link("site", s.ID, "tree", t.ID), a.Base)
	return append(a.siteTrail(s), view.Link{Text: cmp.Or(t.Name, t.ID), To: to})
}
