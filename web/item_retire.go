package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/register"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) retireItem(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error { return a.retireForm(w, r, e, g, i, nil) })
}

func (a *app) retireForm(w http.ResponseWriter, r *http.Request, e *entry, g *notebook.Gear, i register.Item, problems []string) error {
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.Retire, a.itemTrail(i)...), Back: a.itemLink(i.ID), Problems: problems, Revision: g.Revision, Intro: words.RetireIntro,
		Submit: words.Retire,
		Groups: []view.Group{{Legend: itemName(i), Fields: []view.Field{e.field("retired_on", view.Date, a.Today()), e.field("why", view.Long, "")}}},
	})
}

func (a *app) saveRetirement(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error {
		on, why := needDay(e, "retired_on"), needText(e, "why")
		return a.changeGear(w, r, e, words.DidRetire+itemName(i), "", a.itemLink(i.ID),
			func(now register.Register) (register.Register, error) {
				if kept, err := now.Item(i.ID); err == nil && kept.Retired != nil {
					e.faults["why"] = words.RetiredOn + " " + kept.Retired.On.String()
					return now, e.taken()
				}
				return now.Retire(i.ID, on, why)
			},
			func(problems []string) error { return a.retireForm(w, r, e, g, i, problems) })
	})
}
