package web

import (
	"net/http"
	"strconv"
	"strings"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) editSettings(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	return a.settingsForm(w, r, e, a.Notebook.Settings(r.Context()))
}

func (a *app) settingsForm(w http.ResponseWriter, r *http.Request, e *entry, s notebook.Settings) error {
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
			paceField(e, s),
		}}},
	})
}

func (a *app) saveSettings(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	s := notebook.Settings{Units: e.text("units"), Ink: e.text("ink"), Name: e.text("person"), Pace: readPace(e)}
	if e.taken() != nil {
		return a.settingsForm(w, r, e, s)
	}
	if err := a.Notebook.ChangeSettings(r.Context(), s); err != nil {
		return err
	}
	return a.moveOn(w, r, a.link("settings")+"?done=settings")
}

func paceField(e *entry, s notebook.Settings) view.Field {
	f := view.Field{Name: "pace", Label: words.DayPace, Help: words.DayPaceHelp, Kind: view.Number, Fault: e.faults["pace"]}
	if s.Pace > 0 {
		f.Value = decimal(s.Pace)
	}
	if e.listed {
		f.Value = e.text("pace")
	}
	return f
}

// readPace reads the length of a step, 0 for nothing.
func readPace(e *entry) float64 {
	text := strings.TrimSpace(typed(e.text("pace"), ""))
	if text == "" {
		return 0
	}
	pace, err := strconv.ParseFloat(text, 64)
	if err != nil || !(pace >= 0.3 && pace <= 1.5) {
		e.faults["pace"] = words.DayWantPace
	}
	return pace
}
