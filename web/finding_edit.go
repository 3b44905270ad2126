package web

import (
	"net/http"
	"slices"

	"boughline/engine/signs"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func findingOf(t *notebook.Tree, id string) *survey.Finding {
	for i := range t.Findings {
		if t.Findings[i].ID == id {
			return &t.Findings[i]
		}
	}
	return nil
}

func (a *app) withFinding(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *notebook.Tree, *survey.Finding) error) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		f := findingOf(t, r.PathValue("finding"))
		if f == nil {
			return errNoPage
		}
		return then(e, s, t, f)
	})
}

func (a *app) editFinding(w http.ResponseWriter, r *http.Request) error {
	return a.withFinding(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding) error {
		return a.findingForm(w, r, e, s, t, f, nil)
	})
}

func (a *app) findingForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding, problems []string) error {
	form := view.Form{
		Page: a.newPage(r, capital(a.signName(f.Sign)), a.treeTrail(s, t)...), Back: a.treeLink(s, t), Problems: problems, Revision: t.Revision,
	}
	sign, known := a.Notebook.Knowledge().Sign(f.Sign)
	if known {
		form.Intro = sign.LookFor
		form.Back = a.treeLink(s, t, "look", string(sign.Zone)) + "#" + sign.ID
	}
	long := e.units.long()
	form.Aside = &view.Link{Text: words.FungusOnIt, To: a.findingKeyLink(s, t, f)}
	if slices.Contains(fungusSigns, f.Sign) {
		form.Aside.Text = words.WhichFungus
	}
	place := []view.Field{
		e.selectField("member", f.Member, append(choices(words.SomewhereInZone), parentChoices(t, "")...)),
		measuredField(e, "along", long, f.At, quantity.ByEye), measuredField(e, "side", degrees, f.Side, quantity.Compass),
		measuredField(e, "spot_height", long, f.Height, quantity.ByEye), measuredField(e, "distance", long, f.Distance, quantity.ByEye),
		e.field("note", view.Long, f.Note),
	}
	form.Groups = []view.Group{{Legend: words.TheFinding, Fields: place}, {Legend: words.AfterFinding, Fields: a.afterFields(e, f, sign)}}
	return a.form(w, r, e, form)
}

func (a *app) afterFields(e *entry, f *survey.Finding, sign signs.Sign) []view.Field {
	result, how, cleared := "", "", ""
	if f.Closer != nil {
		result, how = f.Closer.Result, f.Closer.How
	}
	if f.Cleared != nil {
		cleared = f.Cleared.How
	}
	closer := e.selectField("closer", result, choices(words.NotChosen, survey.CloserClear, survey.CloserWorse, survey.CloserUnclear))
	if sign.CloserLook != "" {
		closer.Help = sign.CloserLook
	}
	fungus := e.field("fungus", view.Text, f.Fungus)
	for _, known := range a.Notebook.Knowledge().Fungi() {
		fungus.Suggest = append(fungus.Suggest, known.Name)
	}
	return []view.Field{closer, e.field("closer_how", view.Text, how), e.field("cleared", view.Text, cleared), fungus}
}

func (a *app) saveFinding(w http.ResponseWriter, r *http.Request) error {
	return a.withFinding(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, f *survey.Finding) error {
		next := a.treeLink(s, t)
		if sign, ok := a.Notebook.Knowledge().Sign(f.Sign); ok {
			next = a.treeLink(s, t, "look", string(sign.Zone)) + "#" + sign.ID
		}
		by := a.Notebook.Settings(r.Context()).Name
		return a.change(w, r, e, s, t, words.DidEditFinding+a.signName(f.Sign), next,
			func(t *notebook.Tree) any { return findingOf(t, f.ID) },
			func(t *notebook.Tree) error {
				i := slices.IndexFunc(t.Findings, func(other survey.Finding) bool { return other.ID == f.ID })
				if i < 0 {
					return errNoPage
				}
				a.readFinding(e, &t.Findings[i], by)
				return e.taken()
			},
			func(problems []string) error { return a.findingForm(w, r, e, s, t, f, problems) })
	})
}

func (a *app) readFinding(e *entry, f *survey.Finding, by string) {
	long, today := e.units.long(), a.looker("").On
	f.Member, f.Note, f.Fungus = e.text("member"), e.text("note"), e.text("fungus")
	f.At, f.Side = measured(e, "along", long, f.At), measured(e, "side", degrees, f.Side)
	f.Height, f.Distance = measured(e, "spot_height", long, f.Height), measured(e, "distance", long, f.Distance)
	if result := e.text("closer"); result == "" {
		f.Closer = nil
	} else if f.Closer == nil || f.Closer.Result != result || f.Closer.How != e.text("closer_how") {
		f.Closer = &survey.CloserLook{On: today, How: e.text("closer_how"), Result: result, By: by}
	}
	if how := e.text("cleared"); how == "" {
		f.Cleared = nil
	} else if f.Cleared == nil || f.Cleared.How != how {
		f.Cleared = &survey.Cleared{On: today, How: how, By: by}
	}
}
