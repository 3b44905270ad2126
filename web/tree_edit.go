package web

import (
	"net/http"
	"net/url"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func queryEscape(text string) string { return url.QueryEscape(text) }

func (a *app) editTree(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error { return a.treeForm(w, r, e, s, t, nil) })
}

func (a *app) treeForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, problems []string) error {
	crown := survey.Crown{}
	if t.Crown != nil {
		crown = *t.Crown
	}
	species := e.field("species", view.Text, t.Species)
	species.Need, species.Suggest = true, a.speciesNames()
	long := e.units.long()
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.EditTree, a.treeTrail(s, t)...), Back: a.treeLink(s, t), Problems: problems, Revision: t.Revision,
		Groups: []view.Group{
			{Legend: words.TheTree, Fields: []view.Field{
				e.field("name", view.Text, t.Name), species, e.selectField("group", t.Group, groupChoices()), e.field("note", view.Long, t.Note),
			}},
			{Legend: words.TheCrown, Fields: []view.Field{
				measuredField(e, "height", long, t.Height, quantity.Clinometer),
				measuredField(e, "crown_base", long, crown.BaseHeight, quantity.Clinometer),
				measuredField(e, "crown_width", long, crown.Width, quantity.Taped),
			}},
			{Legend: words.ThePlace, Fields: []view.Field{
				measuredField(e, "east", long, t.East, quantity.Taped), measuredField(e, "north", long, t.North, quantity.Taped),
			}},
		},
	})
}

func (a *app) saveTree(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		return a.change(w, r, e, s, t, words.DidEditTree, a.treeLink(s, t),
			func(t *notebook.Tree) any {
				return []any{t.Name, t.Species, t.Group, t.Note, t.Height, t.Crown, t.East, t.North}
			},
			func(t *notebook.Tree) error { a.readTree(e, t); return e.taken() },
			func(problems []string) error { return a.treeForm(w, r, e, s, t, problems) })
	})
}

// change lays what was typed on a tree and answers the form.
func (a *app) change(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, what, next string,
	part func(*notebook.Tree) any, change func(*notebook.Tree) error, again func([]string) error) error {
	edit := e.edit(what, part)
	edit.To = next
	err := a.Notebook.ChangeTree(r.Context(), s.ID, t.ID, edit, change)
	return a.saved(w, r, err, next, again)
}

func (a *app) readTree(e *entry, t *notebook.Tree) {
	long := e.units.long()
	t.Name, t.Species, t.Group, t.Note = e.text("name"), e.text("species"), e.text("group"), e.text("note")
	if t.Species == "" {
		e.faults["species"] = words.WantName
	}
	if known, ok := a.Notebook.Knowledge().Species(t.Species); ok {
		t.Species = known.Scientific
	}
	crown := survey.Crown{}
	if t.Crown != nil {
		crown = *t.Crown
	}
	t.Height = measured(e, "height", long, t.Height)
	crown.BaseHeight = measured(e, "crown_base", long, crown.BaseHeight)
	crown.Width = measured(e, "crown_width", long, crown.Width)
	t.Crown = nil
	if crown.BaseHeight != nil || crown.Width != nil {
		t.Crown = &crown
	}
	t.East, t.North = measured(e, "east", long, t.East), measured(e, "north", long, t.North)
}

func (a *app) deleteTree(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		err := a.Notebook.DeleteTree(r.Context(), s.ID, t.ID, e.edit(words.DidDelete, nil))
		return a.saved(w, r, err, a.link("site", s.ID)+"?gone="+queryEscape(t.ID), a.cannot(err))
	})
}
