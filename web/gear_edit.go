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

func (a *app) editGear(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error { return a.gearForm(w, r, e, s, nil) })
}

func (a *app) gearForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, words.Gear, a.siteTrail(s)...), Back: a.link("site", s.ID), Problems: problems,
		Intro: words.GearIntro, Revision: s.Revision, Aside: &view.Link{Text: words.ChainsAside, To: a.link("site", s.ID, "chains")},
	}
	for i, c := range s.Head.Chains {
		for j, p := range c.Parts {
			f.Groups = append(f.Groups, a.partGroup(e, c, p, fmt.Sprintf("_%d_%d", i, j)))
		}
	}
	return a.form(w, r, e, f)
}

func (a *app) partGroup(e *entry, c survey.Chain, p survey.Part, at string) view.Group {
	strength, kind, knot := "", "", ""
	if p.Mark != nil {
		strength, kind = number(p.Mark.Strength.Value, "kN")+" kN", p.Mark.Kind
	}
	if len(p.Ends) > 0 {
		knot = p.Ends[0]
	}
	g := view.Group{Legend: c.ID + ": " + p.Name}
	if p.Item == "" { // of an item the register says what it bears
		g.Fields = []view.Field{
			e.field("mark"+at, view.Text, strength),
			e.selectField("mark_kind"+at, kind, choices(words.NotChosen, survey.MarkBreaking, survey.MarkWorking, survey.MarkUnknown)),
			e.selectField("standard"+at, p.Standard, a.standards()),
		}
	} else {
		g.Legend += " (" + p.Item + ")"
		g.Help = partStrength(p)
	}
	g.Fields = append(g.Fields, e.selectField("condition"+at, p.Condition, choices(words.NotChosen, "good", "worn", "retired", "unknown")))
	switch p.Kind {
	case "sling":
		g.Fields = append(g.Fields, e.selectField("hitch"+at, p.Hitch, choices(words.NotChosen, "straight", "basket", "choker", "girth")))
	case "rope":
		g.Fields = append(g.Fields, e.selectField("knot"+at, knot, a.knots()))
	}
	return g
}

func (a *app) standards() []view.Choice {
	list := []view.Choice{{Text: words.NotChosen}}
	for _, g := range a.Notebook.Knowledge().GearList() {
		list = append(list, view.Choice{Value: g.Standard, Text: g.Standard + ", " + g.Item})
	}
	return list
}

func (a *app) knots() []view.Choice {
	list := []view.Choice{{Text: words.NotChosen}}
	for _, k := range a.Notebook.Knowledge().Knots() {
		list = append(list, view.Choice{Value: k.Name, Text: k.Name})
	}
	return list
}

func (a *app) saveGear(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		chains := readChains(e, s.Head.Chains)
		err := e.taken()
		if err == nil {
			err = a.Notebook.ChangeSite(r.Context(), s.ID, e.edit(words.DidEditGear, nil), func(now *survey.Survey) error {
				now.Chains = chains
				return nil
			})
		}
		return a.saved(w, r, err, a.link("site", s.ID), func(problems []string) error { return a.gearForm(w, r, e, s, problems) })
	})
}

func readChains(e *entry, kept []survey.Chain) []survey.Chain {
	list := make([]survey.Chain, len(kept))
	for i, c := range kept {
		list[i] = survey.Chain{ID: c.ID}
		for j, p := range c.Parts {
			list[i].Parts = append(list[i].Parts, readPart(e, p, fmt.Sprintf("_%d_%d", i, j)))
		}
	}
	return list
}

func readPart(e *entry, p survey.Part, at string) survey.Part {
	if !e.values.Has("condition" + at) {
		return p // a form that does not show it
	}
	p.Condition = e.text("condition" + at)
	if e.values.Has("mark" + at) {
		p.Standard, p.Mark = e.text("standard"+at), readMark(e, at)
	}
	if e.values.Has("hitch" + at) {
		p.Hitch = e.text("hitch" + at)
	}
	if knot := e.text("knot" + at); knot != "" {
		p.Ends = append([]string{knot}, p.Ends[min(1, len(p.Ends)):]...)
	} else if e.values.Has("knot" + at) {
		p.Ends = nil
	}
	return p
}

func readMark(e *entry, at string) *survey.Mark {
	strength := chosen[quantity.Force](e, "mark"+at, "kN", nil)
	if strength == nil {
		return nil
	}
	kind := e.text("mark_kind" + at)
	if kind == "" {
		kind = survey.MarkUnknown
	}
	return &survey.Mark{Strength: *strength, Kind: kind}
}
