// Package web is the whole app as one http.Handler. It runs in a program at a
// desk and in the service worker of a phone; it knows neither a database nor
// a browser, only a notebook.
package web

import (
	"context"
	"io"
	"net/http"

	"boughline/notebook"
)

// Config is what the handler needs of its host.
type Config struct {
	Notebook *notebook.Notebook
	// Base is the path under which the app is reached, with a slash at its
	// end.
	Base string
	// Field tells the host on a phone from the one at a desk.
	Field bool
	// NewID returns a random id that is never given twice.
	NewID func() string
	// Today returns the day in the form 2026-05-16.
	Today func() string
	// Forms are further forms in which a site leaves; none on a phone, whose
	// download they would make larger.
	Forms []Form
	// Sheets are what the host can put on paper; none on a phone.
	Sheets Sheets
	// Open reads an archive; nil where the host cannot.
	Open func(r io.ReaderAt, size int64) (*notebook.Copy, error)
	// Log takes errors that a page could not explain; nil for none.
	Log func(error)
}

// Form is a form in which a site leaves.
type Form struct {
	Name string // in the address, and of its words
	Type string // media type
	File string // end of the file's name, with its dot
	// Write writes it. What it writes before an error is thrown away.
	Write func(context.Context, io.Writer, *notebook.Copy) error
}

type app struct {
	Config
	asset assets
	plans *plans
}

// New returns the handler. It expects requests with the base path in front.
func New(c Config) http.Handler {
	a := &app{Config: c, asset: newAssets(), plans: newPlans()}
	mux := http.NewServeMux()
	a.routes(mux)
	guarded := http.NewCrossOriginProtection()
	guarded.SetDenyHandler(http.HandlerFunc(a.refused))
	return a.secured(guarded.Handler(http.StripPrefix(c.Base[:len(c.Base)-1], mux)))
}
