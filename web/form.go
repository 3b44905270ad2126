package web

import (
	"cmp"
	"errors"
	"net/http"
	"slices"
	"strings"

	"boughline/notebook"
	"boughline/store"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// form is a page with a form that has not been sent or was refused.
func (a *app) form(w http.ResponseWriter, r *http.Request, e *entry, f view.Form) error {
	f.ID, f.Action = a.NewID(), a.here(r)
	if e.listed {
		f.ID = e.text("form")
	}
	f.Submit = cmp.Or(f.Submit, words.Save)
	status := http.StatusOK
	if len(f.Problems) > 0 || len(e.faults) > 0 {
		status = http.StatusUnprocessableEntity
		if len(f.Problems) == 0 {
			f.Problems = faultLines(e)
		}
	}
	if status == http.StatusOK {
		return a.sendDrawn(w, r, f.Page, f.Drawings, view.FormPage(f))
	}
	return a.send(w, r, status, view.FormPage(f))
}

// here is the address of a request with the base in front.
func (a *app) here(r *http.Request) string {
	return a.Base + strings.TrimPrefix(r.URL.EscapedPath(), "/")
}

func faultLines(e *entry) []string {
	var lines []string
	for name, fault := range e.faults {
		label := words.Fields[strings.TrimRight(name, "0123456789_")].Name
		lines = append(lines, cmp.Or(label, name)+": "+fault)
	}
	slices.Sort(lines)
	return lines
}

// saved answers a form after its change was tried: with the next page, with
// the form and its problems, or with the question what shall stand.
func (a *app) saved(w http.ResponseWriter, r *http.Request, err error, next string, anew func(problems []string) error) error {
	var again *notebook.Again
	var invalid *notebook.Invalid
	var changed *notebook.Changed
	var conflict *store.Conflict
	var entered *refusedEntry
	switch {
	case err == nil:
		return a.moveOn(w, r, kept(next))
	case errors.As(err, &again):
		return a.moveOn(w, r, cmp.Or(again.To, next))
	case errors.As(err, &entered):
		return anew(nil)
	case errors.As(err, &invalid):
		return anew(problemTexts(invalid.Problems))
	case errors.As(err, &changed):
		return a.askWhatStands(w, r, changed, next)
	case errors.As(err, &conflict):
		return anew([]string{words.TakenMeanwhile})
	}
	return err
}

// refusedEntry says that the faults of an entry tell what is wrong.
type refusedEntry struct{}

// Error implements error.
func (*refusedEntry) Error() string { return "what was typed cannot be taken" }

// taken returns an error where an entry has faults.
func (e *entry) taken() error {
	if len(e.faults) > 0 {
		return &refusedEntry{}
	}
	return nil
}

// askWhatStands shows what was changed meanwhile beside what was typed.
func (a *app) askWhatStands(w http.ResponseWriter, r *http.Request, c *notebook.Changed, back string) error {
	page := view.Conflict{
		Page: a.newPage(r, words.ChangedTitle), Action: a.here(r), Form: a.NewID(), Revision: c.Now.Revision, Back: back,
	}
	page.Theirs = differences(&c.Before.Tree, &c.Now.Tree)
	for name, values := range r.PostForm {
		if name == "form" || name == "revision" {
			continue
		}
		for _, v := range values {
			page.Hidden = append(page.Hidden, view.Choice{Value: name, Text: v})
			if label := words.Fields[strings.TrimRight(name, "0123456789_")].Name; label != "" && v != "" {
				page.Mine = append(page.Mine, view.Choice{Value: label, Text: v})
			}
		}
	}
	byName := func(a, b view.Choice) int { return cmp.Or(cmp.Compare(a.Value, b.Value), cmp.Compare(a.Text, b.Text)) }
	slices.SortFunc(page.Hidden, byName)
	slices.SortFunc(page.Mine, byName)
	return a.send(w, r, http.StatusConflict, view.ConflictPage(page))
}

func problemTexts(problems []survey.Problem) []string {
	var texts []string
	for _, p := range problems {
		texts = append(texts, problemText(p))
	}
	return texts
}

// problemText words a problem for somebody who sees a form, not a document.
func problemText(p survey.Problem) string {
	last := p.Path[strings.LastIndexByte(p.Path, '.')+1:]
	last, _, _ = strings.Cut(last, "[")
	name := cmp.Or(words.Fields[last].Name, strings.ReplaceAll(last, "_", " "))
	text := p.Fault + "; " + words.Expected + " " + p.Expected + "; " + p.Do
	if p.Value != "" {
		text = strings.Trim(p.Value, `"`) + ": " + text
	}
	if name != "" {
		text = name + ", " + text
	}
	return text
}
