package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/register"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) editOwner(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error { return a.ownerForm(w, r, e, g, nil) })
}

func (a *app) ownerForm(w http.ResponseWriter, r *http.Request, e *entry, g *notebook.Gear, problems []string) error {
	loler := ""
	if g.LOLER != nil {
		loler = words.No
		if *g.LOLER {
			loler = words.Yes
		}
	}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.GearOwner, a.gearTrail()...), Back: a.link("gear"), Problems: problems, Revision: g.Revision,
		Groups: []view.Group{{Fields: []view.Field{
			e.field("owner", view.Text, g.Owner), e.selectField("loler", loler, choices(words.NotChosen, words.Yes, words.No)), e.field("note", view.Long, g.Note),
		}}},
	})
}

func (a *app) saveOwner(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(e *entry, g *notebook.Gear) error {
		owner := needText(e, "owner")
		return a.changeGear(w, r, e, words.DidEditOwner, "", a.link("gear"), func(now register.Register) (register.Register, error) {
			now.Owner, now.Note, now.LOLER = owner, e.text("note"), nil
			if said := e.text("loler"); said != "" {
				yes := said == words.Yes
				now.LOLER = &yes
			}
			return now, nil
		}, func(problems []string) error { return a.ownerForm(w, r, e, g, problems) })
	})
}

// changeGear makes a change of the register and answers the form it came from.
// item is the one that is edited, for comparing with what the person saw.
func (a *app) changeGear(w http.ResponseWriter, r *http.Request, e *entry, what, item, next string, change func(register.Register) (register.Register, error), anew func([]string) error) error {
	err := e.taken()
	if err == nil {
		edit := e.edit(what, nil)
		edit.To = next
		err = a.Notebook.ChangeGear(r.Context(), edit, item, func(now register.Register) (register.Register, error) {
			if now.Owner == "" {
				now.Owner = words.DefaultOwner
				if name := a.Notebook.Settings(r.Context()).Name; name != "" {
					now.Owner = name
				}
			}
			return change(now)
		})
	}
	return a.saved(w, r, err, next, anew)
}

// needText reads a text that may not be left out.
func needText(e *entry, name string) string {
	text := e.text(name)
	if text == "" {
		e.faults[name] = words.WantValue
	}
	return text
}
