package web

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"net/http"
	"strings"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) exportSite(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := a.Notebook.Export(r.Context(), &b, s.ID); err != nil {
		return err
	}
	w.Header().Set("Content-Type", "application/json")
	w.Header().Set("Content-Disposition", fmt.Sprintf(`attachment; filename="%s-%s.boughline.json"`, fileName(s.Head.Site), a.Today()))
	w.Header().Set("Cache-Control", "no-store")
	_, err = w.Write(b.Bytes())
	return err
}

// fileName leaves letters and digits of a name.
func fileName(name string) string {
	kept := strings.Map(func(c rune) rune {
		switch {
		case c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9':
			return c
		case c == ' ' || c == '-':
			return '-'
		}
		return -1
	}, name)
	if kept == "" {
		return "site"
	}
	return kept
}

func (a *app) importFile(w http.ResponseWriter, r *http.Request) error {
	return a.importForm(w, r, http.StatusOK, nil)
}

func (a *app) importForm(w http.ResponseWriter, r *http.Request, status int, problems []string) error {
	page := view.Import{Page: a.newPage(r, words.ImportFile), Action: a.link("import"), Form: a.NewID(), Problems: problems}
	return a.send(w, r, status, view.ImportPage(page))
}

func (a *app) takeFile(w http.ResponseWriter, r *http.Request) error {
	data, form, err := fileOf(r)
	if err != nil {
		return err
	}
	done, err := a.Notebook.Import(r.Context(), data, form, notebook.Edit{Form: form, What: words.DidImport, To: a.link("site") + "/"})
	var invalid *notebook.Invalid
	var again *notebook.Again
	switch {
	case errors.As(err, &again):
		return a.moveOn(w, r, again.To)
	case err == nil:
		return a.moveOn(w, r, a.link("site", done.Site)+"?done=import")
	case errors.As(err, &invalid):
		return a.importForm(w, r, http.StatusUnprocessableEntity, problemTexts(invalid.Problems))
	}
	return err
}

// fileOf is a JSON body, or the file of a form.
func fileOf(r *http.Request) (data []byte, form string, err error) {
	if r.Header.Get("Content-Type") == "application/json" {
		data, err = io.ReadAll(r.Body)
		return data, r.URL.Query().Get("form"), err
	}
	file, _, err := r.FormFile("file")
	if err != nil {
		return nil, "", err
	}
	defer file.Close()
	data, err = io.ReadAll(file)
	return data, r.FormValue("form"), err
}
