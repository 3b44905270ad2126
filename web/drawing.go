package web

import (
	"net/http"
	"strings"

	"boughline/assess"
	"boughline/draw"
	"boughline/draw/svg"
	"boughline/notebook"
	"boughline/sheet/figure"
	"boughline/web/view"
	"boughline/web/words"

	"github.com/a-h/templ"
)

// easel puts scenes into the page of a request.
type easel struct {
	a *app
	r *http.Request
	// link is where a part of a drawing leads, by its key; nil for nowhere.
	link func(key string) string
}

// drawn is a scene with its words and the address where it stands alone.
func (e easel) drawn(scene *draw.Scene) view.Drawing {
	d := view.Drawing{Key: scene.Key, Title: scene.Title, Says: scene.Says, Words: "says-" + slug(scene.Key), Script: e.a.Base + e.a.asset.drawing}
	query := e.r.URL.Query()
	query.Set("drawing", scene.Key)
	d.Alone = e.a.here(e.r) + "?" + query.Encode()
	d.SVG = svg.Text(scene, svg.Options{Link: e.link, Beside: d.Words})
	return d
}

// sendDrawn sends a page with drawings, or one of them by itself where the
// address asks for it.
func (a *app) sendDrawn(w http.ResponseWriter, r *http.Request, page view.Page, list []view.Drawing, whole templ.Component) error {
	query := r.URL.Query()
	key := query.Get("drawing")
	if key == "" {
		return a.send(w, r, http.StatusOK, whole)
	}
	query.Del("drawing")
	back := a.here(r)
	if len(query) > 0 {
		back += "?" + query.Encode()
	}
	for _, d := range list {
		if d.Key == key {
			from := page.Title
			page.Title = d.Title
			return a.send(w, r, http.StatusOK, view.AlonePage(view.Alone{Page: page, Drawing: d, Back: view.Link{Text: words.BackFrom + " " + from, To: back}}))
		}
	}
	return errNoPage
}

// treeLinks are where the parts of a drawing of a tree lead.
func (a *app) treeLinks(s *notebook.Site, t *notebook.Tree) func(key string) string {
	return func(key string) string {
		kind, id, _ := strings.Cut(figure.Named(key), " ")
		switch kind {
		case "member", "finding", "hang":
			return a.treeLink(s, t, kind, id)
		}
		return ""
	}
}

// treeDrawings are the drawings of a tree with all its hangs. What cannot be
// drawn yet is left out: the lists beside them say what is missing.
func (a *app) treeDrawings(r *http.Request, s *notebook.Site, t *notebook.Tree) []view.Drawing {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	tree, err := figures.Tree(t.ID)
	if err != nil {
		return nil
	}
	var hangs []figure.Judged
	if found, err := a.Notebook.Outcomes(s, t); err == nil {
		hangs = judgedHangs(figures, found.Hangs)
	}
	e := easel{a, r, a.treeLinks(s, t)}
	return []view.Drawing{e.drawn(figure.ElevationWith(tree, hangs)), e.drawn(figure.PlanWith(tree, hangs))}
}

// judgedHangs pairs the hangs that can be drawn with what follows for them.
func judgedHangs(figures *assess.Figures, hangs []assess.Hang) []figure.Judged {
	var list []figure.Judged
	for _, h := range hangs {
		if drawn, err := figures.Hang(h.ID); err == nil { // the outcome says why it is not computed
			list = append(list, figure.Judged{Figure: drawn, Assessed: h})
		}
	}
	return list
}

// hangDrawings are the drawings of a hang with what follows for it.
func (a *app) hangDrawings(r *http.Request, s *notebook.Site, t *notebook.Tree, h assess.Hang) []view.Drawing {
	figures, err := a.Notebook.Figures(s, t)
	if err != nil {
		return nil
	}
	tree, err := figures.Tree(t.ID)
	judged := judgedHangs(figures, []assess.Hang{h})
	if err != nil || len(judged) == 0 {
		return nil // the reasons say why it is not computed
	}
	on, plain, linked := judged[0], easel{a, r, nil}, easel{a, r, a.treeLinks(s, t)}
	var list []view.Drawing
	if swing, err := figure.Swing(on); err == nil {
		list = append(list, plain.drawn(swing))
	}
	list = append(list, linked.drawn(figure.Elevation(tree, &on)), linked.drawn(figure.Plan(tree, &on)),
		plain.drawn(figure.Bending(on)), plain.drawn(figure.SectionWorst(on)))
	if rig, err := figure.Rig(on); err == nil {
		list = append(list, plain.drawn(rig))
	}
	return list
}
