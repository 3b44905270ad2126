package cli

import (
	"context"
	"fmt"
	"io"

	"boughline/knowledge"
	"boughline/notebook"
	"boughline/sheet"
	"boughline/sheet/html"
	"boughline/sheet/pdf"
	"boughline/web"
)

// siteSheets are the sheets that the app puts on paper at a desk.
func siteSheets(k *knowledge.Base) web.Sheets {
	s := web.Sheets{Style: html.Style(), Write: func(ctx context.Context, w io.Writer, c *notebook.Copy, ask web.SheetAsk) error {
		return writeSheet(ctx, w, k, c, ask)
	}}
	for _, kind := range sheet.Kinds() {
		if !kind.NeedsHang && kind.Takes == sheet.TakesSurvey {
			s.Kinds = append(s.Kinds, web.SheetKind{Name: kind.Name, Says: kind.Says, OfTree: kind.NeedsTree})
		}
	}
	return s
}

func writeSheet(ctx context.Context, w io.Writer, k *knowledge.Base, c *notebook.Copy, ask web.SheetAsk) error {
	made, err := madeBy()
	if err != nil {
		return err
	}
	photos, err := photosOf(ctx, c, ask.Tree)
	if err != nil {
		return err
	}
	one, err := sheet.Make(ask.Kind, sheet.Input{Survey: c.Survey, Knowledge: k, Made: made, Tree: ask.Tree, Photos: photos})
	if err != nil {
		return err
	}
	switch ask.Form {
	case "page":
		return html.Write(w, one)
	case "letter":
		return pdf.Write(w, one, pdf.Letter)
	}
	return pdf.Write(w, one, pdf.A4)
}

// photosOf reads the photos of a tree, or of all trees, and makes them small.
func photosOf(ctx context.Context, c *notebook.Copy, tree string) ([]sheet.Photo, error) {
	var list []sheet.Photo
	for _, p := range c.Photos {
		if tree != "" && p.Tree != tree {
			continue
		}
		data, err := c.PhotoBytes(ctx, p)
		if err != nil {
			return nil, fmt.Errorf("photo %s of tree %s: %w", p.ID, p.Tree, err)
		}
		photo, err := smallPhoto(data)
		if err != nil {
			continue // a form of picture that no sheet can show; it stays in the records
		}
		photo.Tree, photo.Of, photo.Caption = p.Tree, p.Finding, p.Note
		if taken := p.Taken; !taken.IsZero() {
			photo.Taken = taken.Format("2006-01-02")
		}
		list = append(list, photo)
	}
	return list, nil
}
