package web

import (
	"net/http"
	"strings"

	"boughline/engine/measure"
	"boughline/web/view"
	"boughline/web/words"
)

// wanted groups the kinds of measuring by what a person wants to know. Every
// kind stands in one group.
var wanted = []struct {
	id    string
	kinds []string
}{
	{"heights", []string{"height-by-tangents", "height-by-tangents-on-slope", "height-by-sines", "height-by-one-sine", "height-by-staff"}},
	{"thickness", []string{"thickness-by-angular-width", "girth"}},
	{"lean", []string{"lean-by-plumb-line", "lean-from-two-sides", "crown-size"}},
	{"slope", []string{"slope-by-level-distance", "slope-by-length"}},
	{"distance", []string{"distance-on-slope", "distance-by-staff", "distance-by-sagging-tape", "distance-between-points"}},
	{"repeats", []string{"repeated-lengths", "repeated-angles"}},
}

func (a *app) listKinds(w http.ResponseWriter, r *http.Request) error {
	back, query := a.measuredFor(r)
	page := view.Measuring{Page: a.newPage(r, words.Measuring), Back: back}
	for _, g := range wanted {
		group := view.Ways{ID: g.id, Title: words.Wanted[g.id]}
		for _, name := range g.kinds {
			if kind, ok := measure.ByName(name); ok {
				group.List = append(group.List, view.Way{To: a.link("measure", name) + query, Name: capital(kind.Does), Needs: needs(kind)})
			}
		}
		page.Groups = append(page.Groups, group)
	}
	return a.send(w, r, http.StatusOK, view.MeasuringPage(page))
}

// needs names what must be read, in one line.
func needs(kind measure.Kind) string {
	var list []string
	for _, f := range kind.Fields {
		if f.Default == "" {
			list = append(list, f.Label)
		}
	}
	return strings.Join(list, "; ")
}

// formPath is how the address of a form begins that something is measured for.
const formPath = "site/"

// measuredFor is the form that a page of measuring was opened from, and the
// query that carries it on. Only a form of this app is taken.
func (a *app) measuredFor(r *http.Request) (back, query string) {
	path := r.URL.Query().Get("back")
	if !strings.HasPrefix(path, formPath) {
		return "", ""
	}
	return a.Base + path, "?back=" + queryEscape(path)
}

// measurable adds to a field of a form the way to the kinds of measuring that
// find its value.
func (a *app) measurable(r *http.Request, f view.Field, group string) view.Field {
	back := strings.TrimPrefix(r.URL.EscapedPath(), "/")
	if r.URL.RawQuery != "" {
		back += "?" + r.URL.RawQuery
	}
	f.Measure = a.link("measure") + "?back=" + queryEscape(back) + "#" + group
	return f
}
