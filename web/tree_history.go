package web

import (
	"fmt"
	"net/http"
	"strconv"
	"time"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// stamp is how a moment is written.
const stamp = "2006-01-02 15:04"

func (a *app) showHistory(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	tree := r.PathValue("tree")
	versions, err := a.Notebook.Versions(r.Context(), s.ID, tree)
	if err != nil {
		return err
	}
	page := view.History{Page: a.newPage(r, words.History, a.trailOf(s, tree)...)}
	for i, v := range versions {
		page.Versions = append(page.Versions, view.VersionLine{
			Revision: v.Revision, When: v.At.Local().Format(stamp), What: v.What, Readable: len(v.Members) > 0, Newest: i == 0,
			Compare: a.link("site", s.ID, "tree", tree, "history", fmt.Sprint(v.Revision)),
		})
	}
	return a.send(w, r, http.StatusOK, view.HistoryPage(page))
}

// trailOf leads back also to a tree that cannot be read.
func (a *app) trailOf(s *notebook.Site, tree string) []view.Link {
	if t, err := s.Tree(tree); err == nil {
		return a.treeTrail(s, t)
	}
	return a.siteTrail(s)
}

func (a *app) compareVersion(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	tree := r.PathValue("tree")
	then, err := a.version(r, s, tree)
	if err != nil {
		return err
	}
	page := view.Compare{
		Page:  a.newPage(r, words.Compare, append(a.trailOf(s, tree), view.Link{Text: words.History, To: a.link("site", s.ID, "tree", tree, "history")[len(a.Base):]})...),
		Intro: fmt.Sprintf(words.SinceVersion, then.Revision, then.At.Local().Format(stamp)),
	}
	now, err := s.Tree(tree)
	if err == nil {
		page.Differences = differences(&then.Tree, &now.Tree)
	}
	if err != nil || now.Revision != then.Revision {
		back := a.formButton(words.GoBack, a.link("site", s.ID, "tree", tree, "history", fmt.Sprint(then.Revision)))
		page.Back = &back
	}
	photos, err := a.Notebook.Photos(r.Context(), s.ID, tree)
	if err != nil {
		return err
	}
	trees := []*survey.Tree{&then.Tree}
	if now != nil {
		trees = append(trees, &now.Tree)
	}
	page.Photos = a.photoPairs(s, photos, then.At, trees...)
	return a.send(w, r, http.StatusOK, view.ComparePage(page))
}

func (a *app) version(r *http.Request, s *notebook.Site, tree string) (notebook.Tree, error) {
	revision, err := strconv.Atoi(r.PathValue("revision"))
	if err != nil {
		return notebook.Tree{}, errNoPage
	}
	return a.Notebook.Version(r.Context(), s.ID, tree, revision)
}

func (a *app) restoreVersion(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		tree := r.PathValue("tree")
		then, err := a.version(r, s, tree)
		if err != nil {
			return err
		}
		what := fmt.Sprintf("%s%d (%s)", words.DidRestore, then.Revision, then.At.Local().Format(time.DateOnly))
		err = a.Notebook.Restore(r.Context(), s.ID, tree, then.Revision, e.edit(what, nil))
		return a.saved(w, r, err, a.link("site", s.ID, "tree", tree), a.cannot(err))
	})
}

// cannot is for forms of one button, which have no fields to show again.
func (a *app) cannot(err error) func([]string) error { return func([]string) error { return err } }

// bringTree brings a deleted tree back as it last was.
func (a *app) bringTree(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		tree := r.PathValue("tree")
		versions, err := a.Notebook.Versions(r.Context(), s.ID, tree)
		if err != nil {
			return err
		}
		for _, v := range versions {
			if len(v.Members) > 0 {
				err = a.Notebook.Restore(r.Context(), s.ID, tree, v.Revision, e.edit(words.Bring, nil))
				return a.saved(w, r, err, a.link("site", s.ID, "tree", tree), a.cannot(err))
			}
		}
		return errNoPage
	})
}
