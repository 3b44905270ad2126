package web

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"net/http"
	"net/url"
	"strings"

	"boughline/notebook"
	"boughline/store"
	"boughline/web/view"
	"boughline/web/words"

	"github.com/a-h/templ"
)

// handler answers one request or says why it cannot.
type handler func(http.ResponseWriter, *http.Request) error

// most is the greatest body that is read, bytes: a photo with some air, or the
// file of a site with its photos.
const most = 256 << 20

// page turns a handler's error into a page that says what to do.
func (a *app) page(h handler) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		r.Body = http.MaxBytesReader(w, r.Body, most)
		if err := h(w, r); err != nil {
			a.fail(w, r, err)
		}
	}
}

func (a *app) fail(w http.ResponseWriter, r *http.Request, err error) {
	status, title, text := http.StatusInternalServerError, words.BrokenTitle, words.Broken
	var tooLarge *http.MaxBytesError
	var damaged *notebook.Damaged
	var invalid *notebook.Invalid
	var more []string
	switch {
	case errors.Is(err, notebook.ErrNoSite), errors.Is(err, notebook.ErrNoTree), errors.Is(err, notebook.ErrNoOuting), errors.Is(err, notebook.ErrNoChain),
		errors.Is(err, store.ErrNotFound), errors.Is(err, errNoPage):
		status, title, text = http.StatusNotFound, words.NotFoundTitle, words.NotFound
	case errors.Is(err, store.ErrFull):
		status, title, text = http.StatusInsufficientStorage, words.FullTitle, store.ErrFull.Error()
	case errors.As(err, &tooLarge):
		status, title = http.StatusRequestEntityTooLarge, words.TooLargeTitle
	case errors.As(err, &damaged):
		text, more = words.CannotBeRead, []string{damaged.Cause.Error()}
	case errors.As(err, &invalid):
		status = http.StatusUnprocessableEntity
		for _, p := range invalid.Problems {
			more = append(more, problemText(p))
		}
	default:
		more = []string{err.Error()}
		if a.Log != nil {
			a.Log(fmt.Errorf("%s %s: %w", r.Method, r.URL.Path, err))
		}
	}
	m := view.Message{Page: a.newPage(r, title), Text: text, More: more}
	if sendErr := a.send(w, r, status, view.MessagePage(m)); sendErr != nil && a.Log != nil {
		a.Log(sendErr)
	}
}

// errNoPage says that an address names a thing that is not there.
var errNoPage = errors.New("nothing has that address")

func (a *app) notFound(http.ResponseWriter, *http.Request) error { return errNoPage }

func (a *app) refused(w http.ResponseWriter, _ *http.Request) {
	http.Error(w, words.Refused, http.StatusForbidden)
}

// newPage is what every page has.
func (a *app) newPage(r *http.Request, title string, trail ...view.Link) view.Page {
	s := a.Notebook.Settings(r.Context())
	page := view.Page{
		Title: title, Base: a.Base, Field: a.Field, Ink: cmp.Or(s.Ink, "auto"), Trail: trail,
		Asset:  view.Assets{Style: a.Base + a.asset.style, Script: a.Base + a.asset.script},
		Notice: notices[r.URL.Query().Get("done")], Still: a.still(r),
	}
	if notice, undo := a.undo(r); notice != "" {
		page.Notice, page.Undo = notice, undo
	}
	return page
}

// notices are the lines that an address may ask for after something was done.
var notices = map[string]string{"import": words.ImportDone, "settings": words.SettingsSaved, "photo": words.PhotoKept}

// send draws a page as a whole before its first byte goes out.
func (a *app) send(w http.ResponseWriter, r *http.Request, status int, page templ.Component) error {
	var b bytes.Buffer
	if err := page.Render(r.Context(), &b); err != nil {
		return err
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	_, err := w.Write(b.Bytes())
	return err
}

// moveOn answers a form that was taken with the page to see next.
func (a *app) moveOn(w http.ResponseWriter, r *http.Request, to string) error {
	http.Redirect(w, r, to, http.StatusSeeOther)
	return nil
}

// wantsPart reports whether the script of a page asks for a part of it.
func wantsPart(r *http.Request) bool { return r.Header.Get("X-Part") != "" }

// link is an address of the app; parts of names are escaped.
func (a *app) link(parts ...string) string {
	for i, p := range parts {
		parts[i] = url.PathEscape(p)
	}
	return a.Base + strings.Join(parts, "/")
}

// secured sets what a browser may do with the pages: run and fetch nothing
// that is not from here.
func (a *app) secured(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		head := w.Header()
		head.Set("Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'")
		head.Set("X-Content-Type-Options", "nosniff")
		head.Set("Referrer-Policy", "same-origin")
		head.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.ServeHTTP(w, r)
	})
}
