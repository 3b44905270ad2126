package web

import (
	"errors"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// entry is what a person typed into a form, and what is wrong with it.
type entry struct {
	values url.Values
	units  units
	faults map[string]string
	// listed is false for a form that was never sent: its fields show what is
	// kept.
	listed bool
}

func (a *app) entry(r *http.Request) (*entry, error) {
	e := &entry{units: a.units(r), faults: map[string]string{}}
	if r.Method != http.MethodPost {
		e.values = r.URL.Query()
		return e, nil
	}
	if err := r.ParseForm(); err != nil {
		return nil, err
	}
	e.values, e.listed = r.PostForm, true
	return e, nil
}

func (a *app) units(r *http.Request) units {
	return units{feet: a.Notebook.Settings(r.Context()).Units == unitFeet}
}

// edit is what the notebook asks of a change.
func (e *entry) edit(what string, part func(*notebook.Tree) any) notebook.Edit {
	base, err := strconv.Atoi(e.values.Get("revision"))
	if err != nil {
		base = 0
	}
	return notebook.Edit{Form: e.values.Get("form"), Base: base, What: what, Part: part}
}

func (e *entry) text(name string) string { return strings.TrimSpace(e.values.Get(name)) }

func (e *entry) fault(name string, err error) {
	var t *quantity.TextError
	if errors.As(err, &t) {
		e.faults[name] = t.Error()
		return
	}
	e.faults[name] = err.Error()
}

// wholeNumber reads a whole number, nil for nothing.
func (e *entry) wholeNumber(name string) *int {
	text := e.text(name)
	if text == "" {
		return nil
	}
	n, err := strconv.Atoi(text)
	if err != nil {
		e.faults[name] = words.WantWhole
		return nil
	}
	return &n
}

func (e *entry) day(name string) survey.Date {
	text := e.text(name)
	if text == "" {
		return survey.Date{}
	}
	d, err := survey.ParseDate(text)
	if err != nil {
		e.fault(name, err)
	}
	return d
}

// measured reads a measured value. What stands there unchanged is kept to the
// last digit, whatever the unit it is shown in.
func measured[Q quantity.Kind](e *entry, name, unit string, kept *quantity.Measured[Q]) *quantity.Measured[Q] {
	text, how := e.text(name), quantity.How(e.values.Get(name+"_how"))
	if text == "" {
		return nil
	}
	if kept != nil && text == show(kept, unit) {
		same := *kept
		same.How = how
		return &same
	}
	text = typed(text, unit)
	if how != quantity.NotStated && !endsInHow(text) {
		text += " " + string(how)
	}
	m, err := quantity.Parse[Q](text)
	if err != nil {
		e.fault(name, err)
		return nil
	}
	return &m
}

// endsInHow reports whether a person typed the way of measuring too.
func endsInHow(text string) bool {
	for _, how := range quantity.Hows() {
		if strings.Contains(text, string(how)) {
			return true
		}
	}
	return false
}

// chosen reads a value that was decided.
func chosen[Q quantity.Kind](e *entry, name, unit string, kept *quantity.Chosen[Q]) *quantity.Chosen[Q] {
	text := e.text(name)
	if text == "" {
		return nil
	}
	if kept != nil && text == number(kept.Value, unit) {
		return kept
	}
	c, err := quantity.ParseChosen[Q](typed(text, unit))
	if err != nil {
		e.fault(name, err)
		return nil
	}
	return &c
}

// need is chosen or measured, with a fault where it is missing.
func need[T any](e *entry, name string, value *T) T {
	if value == nil {
		if e.faults[name] == "" {
			e.faults[name] = words.WantValue
		}
		var none T
		return none
	}
	return *value
}

// Fields, filled with what is kept and, after a form was sent, with what was
// typed.

func (e *entry) field(name string, kind view.Kind, value string) view.Field {
	label := words.Fields[strings.TrimRight(name, "0123456789_")]
	f := view.Field{Name: name, Label: label.Name, Help: label.Help, Kind: kind, Value: value, Fault: e.faults[name]}
	if e.listed {
		f.Value = e.values.Get(name)
	}
	return f
}

func measuredField[Q quantity.Kind](e *entry, name, unit string, m *quantity.Measured[Q], usual quantity.How) view.Field {
	f := e.field(name, view.Number, show(m, unit))
	f.Unit, f.Hows, f.How = unit, hows, string(usual)
	if m != nil {
		f.How = string(m.How)
	}
	if e.listed {
		f.How = e.values.Get(name + "_how")
	}
	return f
}

func chosenField[Q quantity.Kind](e *entry, name, unit string, c *quantity.Chosen[Q]) view.Field {
	value := ""
	if c != nil {
		value = number(c.Value, unit)
	}
	f := e.field(name, view.Number, value)
	f.Unit = unit
	return f
}

func (e *entry) selectField(name, value string, choices []view.Choice) view.Field {
	f := e.field(name, view.Select, value)
	f.Choices = choices
	return f
}

// hows are the ways of measuring as a form offers them.
var hows = func() []view.Choice {
	list := []view.Choice{{Value: "", Text: words.NotChosen}}
	for _, h := range quantity.Hows() {
		list = append(list, view.Choice{Value: string(h), Text: string(h)})
	}
	return list
}()

// choices makes a list of names to choose from.
func choices(none string, names ...string) []view.Choice {
	var list []view.Choice
	if none != "" {
		list = append(list, view.Choice{Text: none})
	}
	for _, n := range names {
		list = append(list, view.Choice{Value: n, Text: n})
	}
	return list
}
