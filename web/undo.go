package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"boughline/web/view"
	"boughline/web/words"
)

// kept adds to the page after a change that it says so and offers to undo it.
func kept(next string) string {
	page, fragment, _ := strings.Cut(next, "#")
	join := "?"
	if strings.Contains(page, "?") {
		join = "&"
	}
	if fragment != "" {
		fragment = "#" + fragment
	}
	return page + join + "done=kept" + fragment
}

// undo is the button that takes the last change back, with what the change was:
// that of the tree or else of the site that an address is about.
func (a *app) undo(r *http.Request) (notice string, undo *view.Button) {
	id := r.PathValue("site")
	if r.URL.Query().Get("done") != "kept" || id == "" {
		return "", nil
	}
	s, err := a.Notebook.Site(r.Context(), id)
	if err != nil {
		return "", nil
	}
	button := func(revision int, what string, parts ...string) (string, *view.Button) {
		notice := words.KeptNow + ": " + what + "."
		if revision < 2 {
			return notice, nil
		}
		b := a.formButton(words.UndoThis, a.link(append(parts, "history", fmt.Sprint(revision-1))...))
		b.Hidden = append(b.Hidden, view.Choice{Value: "revision", Text: strconv.Itoa(revision)})
		return notice, &b
	}
	if gone := r.URL.Query().Get("gone"); gone != "" {
		b := a.formButton(words.UndoThis, a.link("site", id, "bring", gone))
		return words.KeptNow + ": " + gone + " " + words.DidDelete + ".", &b
	}
	if t, err := s.Tree(r.PathValue("tree")); err == nil {
		return button(t.Revision, t.What, "site", id, "tree", t.ID)
	}
	return button(s.Revision, s.What, "site", id)
}

// restoreSite takes the site back to an earlier version, where nothing has come
// in between.
func (a *app) restoreSite(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	revision, err := strconv.Atoi(r.PathValue("revision"))
	if err != nil {
		return errNoPage
	}
	site := r.PathValue("site")
	err = a.Notebook.RestoreSite(r.Context(), site, revision, e.edit(fmt.Sprintf("%s%d", words.DidRestore, revision), nil))
	return a.saved(w, r, err, a.link("site", site), a.cannot(err))
}
