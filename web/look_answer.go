package web

import (
	"errors"
	"net/http"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

// answerSign keeps one answer at once. The script of the page gets the sign
// back as it stands now, a browser without it the whole zone.
func (a *app) answerSign(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		zone, sign, answer := r.PathValue("zone"), e.text("sign"), notebook.Answer(e.text("answer"))
		looker := a.looker(a.Notebook.Settings(r.Context()).Name)
		err := a.answer(r, e, s, t, words.DidAnswer+words.Zone(zone)+", "+a.signName(sign)+" "+string(answer), func(t *notebook.Tree) error {
			return looker.Answer(t, zone, sign, answer)
		})
		if err != nil {
			return err
		}
		if !wantsPart(r) {
			return a.moveOn(w, r, a.treeLink(s, t, "look", zone)+"#"+sign)
		}
		return a.sendSign(w, r, looker, zone, sign)
	})
}

func (a *app) sendSign(w http.ResponseWriter, r *http.Request, looker notebook.Looker, zone, id string) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	t, err := s.Tree(r.PathValue("tree"))
	if err != nil {
		return err
	}
	sign, ok := a.Notebook.Knowledge().Sign(id)
	if !ok {
		return errNoPage
	}
	part := view.SignPart{Sign: a.signBlock(s, t, sign, looker.AnswersOf(t, zone)[id]), State: zoneState(looker, t, zone)}
	return a.send(w, r, http.StatusOK, view.SignAndState(part))
}

func (a *app) signName(id string) string {
	if sign, ok := a.Notebook.Knowledge().Sign(id); ok {
		return sign.Name
	}
	return id
}

// answer lays an answer on the newest version of a tree: answers of two
// people to two signs do not disturb each other.
func (a *app) answer(r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, what string, change func(*notebook.Tree) error) error {
	edit := e.edit(what, nil)
	edit.Base = 0
	err := a.Notebook.ChangeTree(r.Context(), s.ID, t.ID, edit, change)
	var again *notebook.Again
	if errors.As(err, &again) {
		return nil
	}
	return err
}

func (a *app) answerRest(w http.ResponseWriter, r *http.Request) error {
	zone := r.PathValue("zone")
	return a.changeZone(w, r, words.DidAnswerRest+words.Zone(zone), func(l notebook.Looker, t *notebook.Tree) { l.Rest(t, zone) })
}

func (a *app) lookAfresh(w http.ResponseWriter, r *http.Request) error {
	zone := r.PathValue("zone")
	return a.changeZone(w, r, words.Afresh+": "+words.Zone(zone), func(l notebook.Looker, t *notebook.Tree) { l.Afresh(t, zone) })
}

func (a *app) changeZone(w http.ResponseWriter, r *http.Request, what string, change func(notebook.Looker, *notebook.Tree)) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		looker := a.looker(a.Notebook.Settings(r.Context()).Name)
		err := a.answer(r, e, s, t, what, func(t *notebook.Tree) error {
			change(looker, t)
			return nil
		})
		if err != nil {
			return err
		}
		return a.moveOn(w, r, a.treeLink(s, t, "look", r.PathValue("zone")))
	})
}
