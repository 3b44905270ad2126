package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/register"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) newUse(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error { return a.useForm(w, r, e, g, nil) })
}

// usedField is the name of the tick of an item.
func usedField(i register.Item) string { return "used:" + i.ID }

func (a *app) useForm(w http.ResponseWriter, r *http.Request, e *entry, g *notebook.Gear, problems []string) error {
	items := view.Group{Legend: words.UsedItems}
	for _, i := range g.Items {
		f := e.field(usedField(i), view.Tick, "")
		f.Label, f.Help = itemName(i), ""
		for _, b := range g.Bars(i.ID, a.day()) {
			f.Help += capital(b.String()) + ". "
		}
		items.Fields = append(items.Fields, f)
	}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.RecordUse, a.gearTrail()...), Back: a.link("gear"), Problems: problems, Revision: g.Revision, Intro: words.UseIntro,
		Groups: []view.Group{items, {Legend: words.TheUse, Fields: []view.Field{
			e.field("used_on", view.Date, a.Today()), e.field("outing", view.Text, ""), e.field("cycles", view.Number, ""),
			e.field("wet", view.Tick, ""), e.field("shock_loaded", view.Tick, ""), e.field("note", view.Long, ""),
		}}},
	})
}

func (a *app) saveUse(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error {
		u := readUse(e, g)
		return a.changeGear(w, r, e, words.DidUse, "", a.link("gear"),
			func(now register.Register) (register.Register, error) { return now.Used(u) },
			func(problems []string) error { return a.useForm(w, r, e, g, problems) })
	})
}

func readUse(e *entry, g *notebook.Gear) register.Use {
	u := register.Use{Date: needDay(e, "used_on"), Outing: e.text("outing"), Wet: e.text("wet") == "yes", Shock: e.text("shock_loaded") == "yes", Note: e.text("note")}
	for _, i := range g.Items {
		if e.text(usedField(i)) == "yes" {
			u.Items = append(u.Items, i.ID)
		}
	}
	if len(u.Items) == 0 {
		e.faults[words.UsedItems] = words.WantUsed
	}
	if n := e.wholeNumber("cycles"); n != nil {
		u.Cycles = *n
		if *n < 0 {
			e.faults["cycles"] = words.WantWhole
		}
	}
	return u
}
