package web

import (
	"fmt"
	"net/http"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// stemID is what this app calls a stem.
const stemID = "stem"

func (a *app) newTree(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error { return a.newTreeForm(w, r, e, s, nil) })
}

func (a *app) newTreeForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, problems []string) error {
	species := e.field("species", view.Text, "")
	species.Need, species.Suggest = true, a.speciesNames()
	girth := measuredField[quantity.Length](e, "stem_girth", e.units.thick(), nil, quantity.Taped)
	girth.Need = true
	m := &survey.Member{}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.AddTreeTitle, a.siteTrail(s)...), Back: a.link("site", s.ID), Problems: problems,
		Groups: []view.Group{
			{Legend: words.TheTree, Fields: []view.Field{species, e.selectField("group", "", groupChoices()), e.field("name", view.Text, ""), girth}},
			{Legend: words.FirstLimb, Help: words.FirstLimbHelp, Fields: append(a.shapeFields(r, e, m), a.girthFields(r, e, m, 3)...)},
		},
	})
}

func groupChoices() []view.Choice { return choices(words.NotChosen, "broadleaf", "conifer") }

func (a *app) speciesNames() []string {
	var names []string
	for _, s := range a.Notebook.Knowledge().SpeciesList() {
		names = append(names, s.Common)
	}
	return names
}

func (a *app) createTree(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		t := a.readNewTree(e, s)
		err := e.taken()
		if err == nil {
			edit := e.edit(words.DidAddTree, nil)
			edit.To = a.treeLink(s, &t)
			err = a.Notebook.AddTree(r.Context(), s.ID, edit, t)
		}
		return a.saved(w, r, err, a.link("site", s.ID, "tree", t.ID), func(problems []string) error {
			return a.newTreeForm(w, r, e, s, problems)
		})
	})
}

func (a *app) readNewTree(e *entry, s *notebook.Site) notebook.Tree {
	var t notebook.Tree
	t.ID = freeTreeID(s)
	t.Name, t.Species, t.Group = e.text("name"), e.text("species"), e.text("group")
	if known, ok := a.Notebook.Knowledge().Species(t.Species); ok {
		t.Species = known.Scientific
	}
	girth := measured[quantity.Length](e, "stem_girth", e.units.thick(), nil)
	need(e, "stem_girth", girth)
	t.Members = []survey.Member{{ID: stemID, Stations: []survey.Station{{At: survey.ChosenLength{Value: breastHeight}, Girth: girth}}}}
	limb := survey.Member{ID: "L1", Parent: stemID}
	readShape(e, &limb)
	readGirths(e, &limb)
	if len(limb.Stations) > 0 {
		t.Members = append(t.Members, limb)
	}
	return t
}

// breastHeight is where the girth of a stem is taped, 1.3 m (forest mensuration).
const breastHeight quantity.Length = 1.3

// freeTreeID is T1, T2 and so on, the first that no tree has, those taken off
// the list included.
func freeTreeID(s *notebook.Site) string {
	for i := len(s.Trees) + 1; ; i++ {
		id := fmt.Sprintf("T%d", i)
		if _, err := s.Tree(id); err != nil {
			return id
		}
	}
}
