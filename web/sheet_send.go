package web

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"slices"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
)

// Sheets are what the host can put on paper. They weigh too much for a phone, which
// prints its pages.
type Sheets struct {
	Kinds []SheetKind
	// Style is the only style that a sheet as a page has.
	Style string
	// Write makes a sheet of a site.
	Write func(context.Context, io.Writer, *notebook.Copy, SheetAsk) error
}

// SheetKind is one kind of sheet: of a tree, or of the whole site.
type SheetKind struct {
	Name, Says string
	OfTree     bool
}

// SheetAsk is which sheet is asked for, in which form.
type SheetAsk struct {
	Kind, Tree string
	Form       string // one of SheetForms
}

// SheetForms are the forms of a sheet, as they stand in the address.
var SheetForms = []string{"a4", "letter", "page"}

// sendSheet makes a sheet and sends it.
func (a *app) sendSheet(w http.ResponseWriter, r *http.Request) error {
	ask := SheetAsk{Kind: r.PathValue("kind"), Form: r.PathValue("form"), Tree: r.URL.Query().Get("tree")}
	known := slices.ContainsFunc(a.Sheets.Kinds, func(k SheetKind) bool { return k.Name == ask.Kind && k.OfTree == (ask.Tree != "") })
	if !known || !slices.Contains(SheetForms, ask.Form) {
		return errNoPage
	}
	site, err := a.Notebook.Copy(r.Context(), r.PathValue("site"))
	if err != nil {
		return err
	}
	if ask.Tree != "" && !slices.ContainsFunc(site.Survey.Trees, func(t survey.Tree) bool { return t.ID == ask.Tree }) {
		return errNoPage
	}
	var b bytes.Buffer
	if err := a.Sheets.Write(r.Context(), &b, site, ask); err != nil {
		return fmt.Errorf("the sheet cannot be made: %w", err)
	}
	if ask.Form != "page" {
		name := fileName(site.Survey.Site) + "-" + ask.Kind
		if ask.Tree != "" {
			name += "-" + fileName(ask.Tree)
		}
		return sendFile(w, "application/pdf", name+".pdf", b.Bytes())
	}
	hash := sha256.Sum256([]byte(a.Sheets.Style))
	w.Header().Set("Content-Security-Policy", "default-src 'none'; img-src data:; style-src 'sha256-"+base64.StdEncoding.EncodeToString(hash[:])+"'; base-uri 'none'; frame-ancestors 'none'")
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	_, err = w.Write(b.Bytes())
	return err
}

// sheetLines lists the sheets of a tree, or those of a site where none is named.
func (a *app) sheetLines(site, tree string) []view.SheetLine {
	var lines []view.SheetLine
	for _, k := range a.Sheets.Kinds {
		if k.OfTree != (tree != "") {
			continue
		}
		to := func(form string) string {
			address := a.link("site", site, "sheet", k.Name, form)
			if tree != "" {
				address += "?" + url.Values{"tree": {tree}}.Encode()
			}
			return address
		}
		lines = append(lines, view.SheetLine{Says: k.Says, A4: to("a4"), Letter: to("letter"), Page: to("page")})
	}
	return lines
}
