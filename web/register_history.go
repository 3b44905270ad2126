package web

import (
	"fmt"
	"net/http"
	"strconv"
	"time"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

// showGearHistory also serves where the newest version cannot be read.
func (a *app) showGearHistory(w http.ResponseWriter, r *http.Request) error {
	versions, err := a.Notebook.GearVersions(r.Context())
	if err != nil {
		return err
	}
	page := view.GearHistory{Page: a.newPage(r, words.History, a.gearTrail()...)}
	for i, v := range versions {
		line := view.GearVersion{Number: v.Revision, What: v.What, When: v.At.Local().Format(stamp)}
		switch {
		case v.Version == 0:
			line.When += " · " + words.Unreadable
		case i > 0:
			back := a.formButton(words.GoBack, a.link("gear", "history", fmt.Sprint(v.Revision)))
			line.Back = &back
		default:
			line.When += " · " + words.Newest
		}
		page.Versions = append(page.Versions, line)
	}
	return a.send(w, r, http.StatusOK, view.GearHistoryPage(page))
}

func (a *app) restoreGear(w http.ResponseWriter, r *http.Request) error {
	e, err := a.entry(r)
	if err != nil {
		return err
	}
	revision, err := strconv.Atoi(r.PathValue("revision"))
	if err != nil {
		return errNoPage
	}
	then, err := a.Notebook.GearVersion(r.Context(), revision)
	if err != nil {
		return err
	}
	what := fmt.Sprintf("%s%d (%s)", words.DidRestore, revision, then.At.Local().Format(time.DateOnly))
	err = a.Notebook.RestoreGear(r.Context(), revision, notebook.Edit{Form: e.text("form"), What: what, To: a.link("gear")})
	return a.saved(w, r, err, a.link("gear"), a.cannot(err))
}
