package web

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"mime/multipart"
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
	file, size, form, err := fileOf(r)
	if err != nil {
		return err
	}
	defer file.Close()
	edit := notebook.Edit{Form: form, What: words.DidImport, To: a.link("site") + "/"}
	done, isArchive, err := a.takeArchive(r, file, size, form, edit)
	if !isArchive {
		var data []byte
		if data, err = io.ReadAll(file); err != nil {
			return err
		}
		done, err = a.Notebook.Import(r.Context(), data, form, edit)
	}
	var invalid *notebook.Invalid
	var again *notebook.Again
	var not *unread
	var picture *notebook.NotAPhoto
	switch {
	case errors.As(err, &again):
		return a.moveOn(w, r, again.To)
	case err == nil:
		return a.moveOn(w, r, a.link("site", done.Site)+"?done=import")
	case errors.As(err, &invalid):
		return a.importForm(w, r, http.StatusUnprocessableEntity, problemTexts(invalid.Problems))
	case errors.As(err, &not), errors.As(err, &picture):
		return a.importForm(w, r, http.StatusUnprocessableEntity, []string{err.Error()})
	}
	return err
}

// fileOf is a JSON body, or the file of a form.
func fileOf(r *http.Request) (file multipart.File, size int64, form string, err error) {
	if r.Header.Get("Content-Type") == "application/json" {
		data, err := io.ReadAll(r.Body)
		return body{bytes.NewReader(data)}, int64(len(data)), r.URL.Query().Get("form"), err
	}
	file, head, err := r.FormFile("file")
	if err != nil {
		return nil, 0, "", err
	}
	return file, head.Size, r.FormValue("form"), nil
}

// body is the body of a request as a file.
type body struct{ *bytes.Reader }

func (body) Close() error { return nil }
