package web

import (
	"errors"
	"fmt"
	"net/http"
	"slices"
	"strconv"

	"boughline/notebook"
	"boughline/store"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// movePart moves a part up or down the chain, or takes it out.
func (a *app) movePart(w http.ResponseWriter, r *http.Request) error {
	move := r.PathValue("move")
	step, known := map[string]int{"up": -1, "down": 1, "out": 0}[move]
	if !known {
		return errNoPage
	}
	return a.withPart(w, r, func(e *entry, s *notebook.Site, c *survey.Chain, n int) error {
		what := words.DidMovePart
		if move == "out" {
			what = words.DidTakeOutPart
		}
		to := min(max(n+step, 0), len(c.Parts)-1)
		return a.pressed(w, r, e, s, what+c.ID, a.chainLink(s, c.ID)+fmt.Sprintf("#part-%d", to), func(now *survey.Survey) error {
			return changeParts(now, c.ID, func(parts []survey.Part) []survey.Part {
				if move == "out" {
					return slices.Delete(parts, n, n+1)
				}
				parts[n], parts[to] = parts[to], parts[n]
				return parts
			})
		})
	})
}

// pressed makes a change that a single button asks for, on the site as it was
// shown: what was changed meanwhile is shown instead.
func (a *app) pressed(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, what, next string, change func(*survey.Survey) error) error {
	edit := e.edit(what, nil)
	if edit.Base == 0 {
		edit.Base = s.Revision
	}
	edit.To = next
	err := a.Notebook.ChangeSite(r.Context(), s.ID, edit, change)
	return a.saved(w, r, err, next, func([]string) error {
		var meanwhile *store.Conflict
		if errors.As(err, &meanwhile) {
			return a.moveOn(w, r, next)
		}
		return err
	})
}

// changeParts changes the parts of one chain of a survey.
func changeParts(now *survey.Survey, chain string, change func([]survey.Part) []survey.Part) error {
	now.Chains = slices.Clone(now.Chains)
	c := chainOf(now, chain)
	if c == nil {
		return errNoPage
	}
	c.Parts = change(slices.Clone(c.Parts))
	return nil
}

func (a *app) deleteChain(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		return a.pressed(w, r, e, s, words.DidDeleteChain+c.ID, a.link("site", s.ID, "chains"), func(now *survey.Survey) error {
			now.Chains = slices.DeleteFunc(slices.Clone(now.Chains), func(other survey.Chain) bool { return other.ID == c.ID })
			return nil
		})
	})
}

func (a *app) nameChain(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error { return a.nameChainForm(w, r, e, s, c, nil) })
}

func (a *app) nameChainForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, c *survey.Chain, problems []string) error {
	return a.form(w, r, e, view.Form{
		Page: a.newPage(r, words.RenameChain, a.chainTrail(s, c)...), Back: a.chainLink(s, c.ID), Problems: problems, Revision: s.Revision,
		Groups: []view.Group{{Fields: []view.Field{e.field("chain_name", view.Text, c.ID)}}},
	})
}

func (a *app) renameChain(w http.ResponseWriter, r *http.Request) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		to := needText(e, "chain_name")
		next := a.chainLink(s, to)
		err := e.taken()
		if err == nil && to != c.ID {
			edit := e.edit(words.DidRenameChain+c.ID+", "+to, nil)
			edit.To = next
			err = a.Notebook.RenameChain(r.Context(), s.ID, c.ID, to, edit)
		}
		return a.saved(w, r, err, next, func(problems []string) error { return a.nameChainForm(w, r, e, s, c, problems) })
	})
}

// withPart finds the part of an address by its place in the chain.
func (a *app) withPart(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *survey.Chain, int) error) error {
	return a.withChain(w, r, func(e *entry, s *notebook.Site, c *survey.Chain) error {
		n, err := strconv.Atoi(r.PathValue("part"))
		if err != nil || n < 0 || n >= len(c.Parts) {
			return errNoPage
		}
		return then(e, s, c, n)
	})
}
