package web

import (
	"fmt"
	"net/http"
	"strconv"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) editRiders(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error { return a.ridersForm(w, r, e, s, nil) })
}

func (a *app) ridersForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, words.RidersTitle, a.siteTrail(s)...), Back: a.link("site", s.ID), Problems: problems,
		Intro: words.RidersIntro, Revision: s.Revision,
	}
	for i, g := range append(append([]survey.Riders{}, s.Head.Riders...), survey.Riders{}) {
		f.Groups = append(f.Groups, ridersGroup(e, i, g))
	}
	return a.form(w, r, e, f)
}

func ridersGroup(e *entry, i int, g survey.Riders) view.Group {
	at := func(name string) string { return fmt.Sprintf("%s_%d", name, i) }
	count, from, to := "", "", ""
	if g.Count > 0 {
		count = strconv.Itoa(g.Count)
	}
	if g.Ages != nil {
		from, to = strconv.Itoa(g.Ages.From), strconv.Itoa(g.Ages.To)
	}
	legend := g.ID
	if g.ID == "" {
		legend = words.NewRiders
	}
	return view.Group{Legend: legend, Fields: []view.Field{
		e.field(at("group_name"), view.Text, g.ID), e.field(at("count"), view.Number, count),
		e.field(at("ages_from"), view.Number, from), e.field(at("ages_to"), view.Number, to),
		measuredField(e, at("each"), e.units.mass(), g.Each, quantity.Weighed),
		measuredField(e, at("seat"), e.units.mass(), g.Seat, quantity.Weighed),
		e.selectField(at("posture"), g.Posture, choices(words.NotChosen, survey.Seated, survey.Straddled, survey.Standing)),
	}}
}

func (a *app) saveRiders(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		riders := readRiders(e, s.Head.Riders)
		err := e.taken()
		if err == nil {
			err = a.Notebook.ChangeSite(r.Context(), s.ID, e.edit(words.DidEditRiders, nil), func(now *survey.Survey) error {
				now.Riders = riders
				return nil
			})
		}
		return a.saved(w, r, err, a.link("site", s.ID), func(problems []string) error { return a.ridersForm(w, r, e, s, problems) })
	})
}

// readRiders reads the groups; one without a name is left out.
func readRiders(e *entry, kept []survey.Riders) []survey.Riders {
	var list []survey.Riders
	for i := 0; e.values.Has(fmt.Sprintf("group_name_%d", i)); i++ {
		var g survey.Riders
		if i < len(kept) {
			g = kept[i]
		}
		at := func(name string) string { return fmt.Sprintf("%s_%d", name, i) }
		if g.ID = e.text(at("group_name")); g.ID == "" {
			continue
		}
		g.Count = need(e, at("count"), e.wholeNumber(at("count")))
		g.Ages = nil
		if from, to := e.wholeNumber(at("ages_from")), e.wholeNumber(at("ages_to")); from != nil || to != nil {
			g.Ages = &survey.Ages{From: need(e, at("ages_from"), from), To: need(e, at("ages_to"), to)}
		}
		g.Each = measured(e, at("each"), e.units.mass(), g.Each)
		g.Seat = measured(e, at("seat"), e.units.mass(), g.Seat)
		g.Posture = e.text(at("posture"))
		list = append(list, g)
	}
	return list
}
