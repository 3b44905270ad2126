package web

import (
	"net/http"
	"slices"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/words"
)

func (a *app) createHang(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		start := startHang(s, t, e.text("member"))
		return a.change(w, r, e, s, t, words.DidAddHang+start.ID, a.treeLink(s, t, "hang", start.ID), hangPart(start.ID),
			func(t *notebook.Tree) error { readHang(e, t, start.ID); return e.taken() },
			func(problems []string) error { return a.hangForm(w, r, e, s, t, start, problems) })
	})
}

func (a *app) saveHang(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.change(w, r, e, s, t, words.DidEditHang+h.ID, a.treeLink(s, t, "hang", h.ID), hangPart(h.ID),
			func(t *notebook.Tree) error { readHang(e, t, h.ID); return e.taken() },
			func(problems []string) error { return a.hangForm(w, r, e, s, t, h, problems) })
	})
}

func hangPart(id string) func(*notebook.Tree) any {
	return func(t *notebook.Tree) any { return hangOf(t, id) }
}

func (a *app) deleteHang(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		err := a.Notebook.ChangeTree(r.Context(), s.ID, t.ID, e.edit(words.DidDeleteHang+h.ID, nil), func(t *notebook.Tree) error {
			t.Hangs = slices.DeleteFunc(t.Hangs, func(other survey.Hang) bool { return other.ID == h.ID })
			return nil
		})
		return a.saved(w, r, err, a.treeLink(s, t), func(problems []string) error { return a.hangForm(w, r, e, s, t, h, problems) })
	})
}
