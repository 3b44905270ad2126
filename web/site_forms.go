package web

import (
	"fmt"
	"io"
	"net/http"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

// exportForm writes a site in one of the further forms, as it is made: a site
// with all its photos is too large to be held.
func (a *app) exportForm(w http.ResponseWriter, r *http.Request) error {
	for _, form := range a.Forms {
		if form.Name == r.PathValue("form") {
			return a.writeForm(w, r, form)
		}
	}
	return errNoPage
}

func (a *app) writeForm(w http.ResponseWriter, r *http.Request, form Form) error {
	site, err := a.Notebook.Copy(r.Context(), r.PathValue("site"))
	if err != nil {
		return err
	}
	w.Header().Set("Content-Type", form.Type)
	w.Header().Set("Content-Disposition", fmt.Sprintf(`attachment; filename="%s-%s%s"`, fileName(site.Survey.Site), a.Today(), form.File))
	w.Header().Set("Cache-Control", "no-store")
	out := &begun{Writer: w}
	err = form.Write(r.Context(), out, site)
	if err == nil || !out.any {
		return err
	}
	if a.Log != nil {
		a.Log(fmt.Errorf("%s: %w", r.URL.Path, err))
	}
	panic(http.ErrAbortHandler) // the browser sees that the file is not whole
}

// begun remembers whether anything was written.
type begun struct {
	io.Writer
	any bool
}

func (b *begun) Write(data []byte) (int, error) {
	b.any = true
	return b.Writer.Write(data)
}

// formLines lists the further forms of a site.
func (a *app) formLines(site string) []view.FormLine {
	var lines []view.FormLine
	for _, form := range a.Forms {
		said := words.Forms[form.Name]
		lines = append(lines, view.FormLine{To: a.link("site", site, "export", form.Name), Text: said.Text, Help: said.Help})
	}
	return lines
}

// takeArchive takes in an archive, false where the file is none.
func (a *app) takeArchive(r *http.Request, file io.ReaderAt, size int64, form string, e notebook.Edit) (done notebook.Imported, is bool, err error) {
	head := make([]byte, 4)
	if n, _ := file.ReadAt(head, 0); n < 4 || string(head) != "PK\x03\x04" {
		return done, false, nil
	}
	if a.Open == nil {
		return done, true, &unread{words.ArchiveAtDesk}
	}
	site, err := a.Open(file, size)
	if err != nil {
		return done, true, &unread{err.Error()}
	}
	done, err = a.Notebook.Take(r.Context(), site, form, e)
	return done, true, err
}

// unread is a file that cannot be taken in, with the reason for people.
type unread struct{ why string }

func (u *unread) Error() string { return u.why }
