package web

import (
	"net/http"
	"slices"
	"strconv"

	"boughline/engine/fungi"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// unknownFungus is what a finding holds for a fungus that cannot be named.
const unknownFungus = "unknown"

// findingKey is the key for the fungus of a finding.
func (a *app) findingKey(w http.ResponseWriter, r *http.Request) error {
	return a.withFinding(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding) error {
		return a.findingKeyPage(w, r, e, s, t, f, nil)
	})
}

func (a *app) findingKeyPage(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding, problems []string) error {
	page := view.FungusKey{
		Page: a.newPage(r, words.WhichFungus, a.treeTrail(s, t)...), Path: a.here(r), Afresh: a.findingKeyLink(s, t, f),
		Back: view.Link{Text: words.FungusToFinding, To: a.treeLink(s, t, "finding", f.ID)}, Problems: problems,
	}
	if sign, ok := a.Notebook.Knowledge().Sign(f.Sign); ok {
		page.Sketch, page.SignName = a.sketchOf(sign.ID), sign.Name
	}
	talk := fungusTalkOf(a.Notebook.Knowledge(), e.values)
	id, status := a.fungusPage(&page, e, talk)
	page.Write = &view.FungusWrite{Now: f.Fungus}
	for _, name := range a.namesToWrite(id) {
		text := words.FungusUnknown
		if name != unknownFungus {
			text = words.FungusWriteName + name
		}
		b := a.formButton(text, page.Path)
		b.Hidden = append(b.Hidden, view.Choice{Value: "revision", Text: strconv.Itoa(t.Revision)}, view.Choice{Value: "fungus", Text: name})
		b.Hidden = append(b.Hidden, talk.fields()...)
		page.Write.Buttons = append(page.Write.Buttons, b)
	}
	return a.send(w, r, status, view.FungusPage(page))
}

// namesToWrite lists unknown and, where the key names something, what remains.
// Where those that remain differ in weight only the worst of them is offered: a
// milder name might put aside what must not be.
func (a *app) namesToWrite(id knowledge.Identification) []string {
	names := []string{unknownFungus}
	switch {
	case id.Answer != fungi.Named:
		return names
	case !id.Meaning.Agreed:
		return append(names, id.Meaning.Worst)
	}
	return append(names, id.Meaning.Remaining...)
}

// nameFungus writes a name into a finding, as the form of the finding does.
func (a *app) nameFungus(w http.ResponseWriter, r *http.Request) error {
	return a.withFinding(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding) error {
		name := e.text("fungus")
		if known, ok := a.Notebook.Knowledge().Fungus(name); ok {
			name = known.Name
		} else if name != unknownFungus {
			return a.findingKeyPage(w, r, e, s, t, f, []string{"“" + name + "” " + words.FungusNoName})
		}
		return a.change(w, r, e, s, t, words.DidEditFinding+a.signName(f.Sign), a.treeLink(s, t, "finding", f.ID),
			func(t *notebook.Tree) any { return findingOf(t, f.ID) },
			func(t *notebook.Tree) error {
				i := slices.IndexFunc(t.Findings, func(other survey.Finding) bool { return other.ID == f.ID })
				if i < 0 {
					return errNoPage
				}
				t.Findings[i].Fungus = name
				return nil
			},
			func(problems []string) error { return a.findingKeyPage(w, r, e, s, t, f, problems) })
	})
}
