package web

import (
	"errors"
	"io"
	"net/http"

	"boughline/notebook"
	"boughline/web/view"
	"boughline/web/words"
)

// addPhoto takes a picture as the body of a request, which is how the script
// of the page sends it after making it smaller, or as a file of a form.
func (a *app) addPhoto(w http.ResponseWriter, r *http.Request) error {
	s, err := a.site(r)
	if err != nil {
		return err
	}
	t, err := s.Tree(r.PathValue("tree"))
	if err != nil {
		return err
	}
	data, form, err := photoOf(r)
	if err != nil {
		return err
	}
	err = a.Notebook.AddPhoto(r.Context(), s.ID, notebook.Edit{Form: form, What: words.DidAddPhoto}, notebook.Photo{ID: a.NewID(), Tree: t.ID}, data)
	var not *notebook.NotAPhoto
	var again *notebook.Again
	switch {
	case errors.As(err, &not):
		m := view.Message{Page: a.newPage(r, words.AddPhoto, a.treeTrail(s, t)...), Text: not.Error()}
		return a.send(w, r, http.StatusUnprocessableEntity, view.MessagePage(m))
	case err != nil && !errors.As(err, &again):
		return err
	}
	return a.moveOn(w, r, a.treeLink(s, t)+"?done=photo")
}

func photoOf(r *http.Request) (data []byte, form string, err error) {
	if kind := r.Header.Get("Content-Type"); len(kind) >= 6 && kind[:6] == "image/" {
		data, err = io.ReadAll(io.LimitReader(r.Body, notebook.MaxPhoto+1))
		return data, r.URL.Query().Get("form"), err
	}
	file, _, err := r.FormFile("photo")
	if errors.Is(err, http.ErrMissingFile) {
		return nil, r.FormValue("form"), nil
	}
	if err != nil {
		return nil, "", err
	}
	defer file.Close()
	data, err = io.ReadAll(io.LimitReader(file, notebook.MaxPhoto+1))
	return data, r.FormValue("form"), err
}

func (a *app) showPhoto(w http.ResponseWriter, r *http.Request) error {
	data, err := a.Notebook.PhotoBytes(r.Context(), r.PathValue("site"), r.PathValue("id"))
	if err != nil {
		return err
	}
	return sendForEver(w, http.DetectContentType(data), data)
}

func (a *app) photoLine(s *notebook.Site, p notebook.Photo) view.PhotoLine {
	about := p.At.Local().Format(stamp)
	if p.Note != "" {
		about += ", " + p.Note
	}
	return view.PhotoLine{From: a.link("site", s.ID, "photo", p.ID), About: about}
}

func (a *app) photoLines(s *notebook.Site, t *notebook.Tree, photos []notebook.Photo) []view.PhotoLine {
	var lines []view.PhotoLine
	for _, p := range photos {
		line := a.photoLine(s, p)
		line.Delete = a.formButton(words.DeletePhoto, a.treeLink(s, t, "photo", p.ID, "delete"))
		lines = append(lines, line)
	}
	return lines
}

func (a *app) deletePhoto(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		err := a.Notebook.DeletePhoto(r.Context(), s.ID, t.ID, r.PathValue("id"), e.edit(words.DidDeletePhoto, nil))
		return a.saved(w, r, err, a.treeLink(s, t), a.cannot(err))
	})
}
