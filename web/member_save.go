package web

import (
	"net/http"
	"slices"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/words"
)

func (a *app) createLimb(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		id := e.text("limb")
		if id == "" {
			id = freeLimbID(t)
		}
		fresh := &survey.Member{ID: id, Parent: stemOf(t)}
		return a.change(w, r, e, s, t, words.DidAddLimb+id, a.treeLink(s, t), memberPart(id),
			func(t *notebook.Tree) error {
				if memberOf(t, id) != nil {
					e.faults["limb"] = words.NameTaken
					return e.taken()
				}
				readMember(e, t, id)
				return e.taken()
			},
			func(problems []string) error { return a.memberForm(w, r, e, s, t, fresh, problems) })
	})
}

func (a *app) saveMember(w http.ResponseWriter, r *http.Request) error {
	return a.withMember(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, m *survey.Member) error {
		return a.change(w, r, e, s, t, words.DidEditLimb+m.ID, a.treeLink(s, t), memberPart(m.ID),
			func(t *notebook.Tree) error { readMember(e, t, m.ID); return e.taken() },
			func(problems []string) error { return a.memberForm(w, r, e, s, t, m, problems) })
	})
}

// memberPart is a member with its union, for comparing.
func memberPart(id string) func(*notebook.Tree) any {
	return func(t *notebook.Tree) any { return []any{memberOf(t, id), unionOf(t, id)} }
}

// deleteMember takes a limb off with its union. Whatever still hangs from it
// or stands on it keeps it: the survey would not be right.
func (a *app) deleteMember(w http.ResponseWriter, r *http.Request) error {
	return a.withMember(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, m *survey.Member) error {
		err := a.Notebook.ChangeTree(r.Context(), s.ID, t.ID, e.edit(words.DidDeleteLimb+m.ID, nil), func(t *notebook.Tree) error {
			t.Members = slices.DeleteFunc(t.Members, func(other survey.Member) bool { return other.ID == m.ID })
			t.Unions = slices.DeleteFunc(t.Unions, func(u survey.Union) bool { return u.Member == m.ID })
			notebook.LimbGone(t, m.ID)
			return nil
		})
		return a.saved(w, r, err, a.treeLink(s, t), func(problems []string) error { return a.memberForm(w, r, e, s, t, m, problems) })
	})
}
