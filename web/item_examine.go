package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/register"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) examineItem(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error { return a.examineForm(w, r, e, g, i, nil) })
}

func (a *app) examineForm(w http.ResponseWriter, r *http.Request, e *entry, g *notebook.Gear, i register.Item, problems []string) error {
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.Examine, a.itemTrail(i)...), Back: a.itemLink(i.ID), Problems: problems, Revision: g.Revision, Intro: words.ExamineIntro,
		Groups: []view.Group{{Legend: itemName(i), Fields: []view.Field{
			e.field("examined_on", view.Date, a.Today()), e.field("examined_by", view.Text, ""),
			e.selectField("found", "", choices(words.NotChosen, register.Fit, register.Unfit)),
			e.field("next_examination", view.Date, ""), e.field("note", view.Long, ""),
		}}},
	})
}

func (a *app) saveExamination(w http.ResponseWriter, r *http.Request) error {
	return a.withItem(r, func(e *entry, g *notebook.Gear, i register.Item) error {
		x := register.Examination{On: needDay(e, "examined_on"), By: needText(e, "examined_by"), Found: needText(e, "found"), Next: e.day("next_examination"), Note: e.text("note")}
		return a.changeGear(w, r, e, words.DidExamine+itemName(i), "", a.itemLink(i.ID),
			func(now register.Register) (register.Register, error) { return now.Examined(i.ID, x) },
			func(problems []string) error { return a.examineForm(w, r, e, g, i, problems) })
	})
}

// needDay reads a day that may not be left out.
func needDay(e *entry, name string) survey.Date {
	needText(e, name)
	return e.day(name)
}
