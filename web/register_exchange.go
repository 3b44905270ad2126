package web

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"net/http"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) exportGear(w http.ResponseWriter, r *http.Request) error {
	return a.withGear(r, func(_ *entry, g *notebook.Gear) error {
		if g.Revision == 0 {
			return errNoPage
		}
		var b bytes.Buffer
		if err := g.Write(&b); err != nil {
			return err
		}
		w.Header().Set("Content-Type", "application/json")
		w.Header().Set("Content-Disposition", fmt.Sprintf(`attachment; filename="gear-%s.json"`, a.Today()))
		w.Header().Set("Cache-Control", "no-store")
		_, err := w.Write(b.Bytes())
		return err
	})
}

func (a *app) importGear(w http.ResponseWriter, r *http.Request) error {
	return a.importGearForm(w, r, http.StatusOK, nil)
}

func (a *app) importGearForm(w http.ResponseWriter, r *http.Request, status int, problems []string) error {
	page := view.Import{Page: a.newPage(r, words.ImportGear, a.gearTrail()...), Action: a.link("gear", "import"), Form: a.NewID(), Problems: problems}
	return a.send(w, r, status, view.ImportGearPage(page))
}

func (a *app) takeGear(w http.ResponseWriter, r *http.Request) error {
	file, _, form, err := fileOf(r)
	if err != nil {
		return err
	}
	defer file.Close()
	data, err := io.ReadAll(file)
	if err != nil {
		return err
	}
	err = a.Notebook.ImportGear(r.Context(), data, notebook.Edit{Form: form, What: words.DidImportGear, To: a.link("gear")})
	var invalid *notebook.Invalid
	var again *notebook.Again
	switch {
	case errors.As(err, &invalid):
		var texts []string
		for _, p := range invalid.Problems {
			texts = append(texts, p.String())
		}
		return a.importGearForm(w, r, http.StatusUnprocessableEntity, texts)
	case err == nil, errors.As(err, &again):
		return a.moveOn(w, r, a.link("gear"))
	}
	return err
}
