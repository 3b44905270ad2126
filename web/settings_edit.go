package web

import (
	"net/http"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) editSettings(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	s := a.Notebook.Settings(r.Context())
	set := func(name, label, help, value string, choices ...view.Choice) view.Field {
		f := view.Field{Name: name, Label: label, Help: help, Value: value, Choices: choices}
		if len(choices) > 0 {
			f.Kind = view.Select
		}
		return f
	}
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.Settings), Back: a.Base,
		Groups: []view.Group{{Fields: []view.Field{
			set("units", words.Units, words.FeetHelp, s.Units, view.Choice{Text: words.Metric}, view.Choice{Value: unitFeet, Text: words.Feet}),
			set("ink", words.Ink, "", s.Ink, view.Choice{Text: words.InkAuto}, view.Choice{Value: "light", Text: words.InkLight},
				view.Choice{Value: "dark", Text: words.InkDark}, view.Choice{Value: "sun", Text: words.InkSun}),
			set("person", words.YourName, words.YourNameHelp, s.Name),
		}}},
	})
}

func (a *app) saveSettings(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	s := notebook.Settings{Units: e.text("units"), Ink: e.text("ink"), Name: e.text("person")}
	if err := a.Notebook.ChangeSettings(r.Context(), s); err != nil {
		return err
	}
	return a.moveOn(w, r, a.link("settings")+"?done=settings")
}
