package web

import (
	"net/http"

	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) listSites(w http.ResponseWriter, r *http.Request) error {
	sites, err := a.Notebook.Sites(r.Context())
	if err != nil {
		return err
	}
	page := view.Sites{Page: a.newPage(r, words.Sites)}
	for _, s := range sites {
		line := view.SiteLine{ID: s.ID, Name: s.Name, Day: s.Day.String()}
		if s.Damaged != nil {
			line.Fault = s.Damaged.Error()
		}
		page.List = append(page.List, line)
	}
	return a.send(w, r, http.StatusOK, view.SitesPage(page))
}
