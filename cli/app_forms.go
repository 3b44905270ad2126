package cli

import (
	"context"
	"io"
	"time"

	"boughline/assess"
	"boughline/exchange"
	"boughline/exchange/calendar"
	"boughline/exchange/picture"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/web"
)

// siteForms are the forms in which a site leaves the app at a desk.
func siteForms(k *knowledge.Base) []web.Form {
	const csv = "text/csv; charset=utf-8"
	return []web.Form{
		{Name: "archive", Type: "application/zip", File: ".zip", Write: archiveForm(k, nil)},
		{Name: "stripped", Type: "application/zip", File: "-stripped.zip", Write: archiveForm(k, picture.Strip)},
		{Name: "geojson", Type: "application/geo+json", File: ".geojson", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			return exchange.WriteGeoJSON(w, c.Survey, k)
		}},
		{Name: "trees", Type: csv, File: "-trees.csv", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			return exchange.WriteTrees(w, c.Survey)
		}},
		{Name: "hangs", Type: csv, File: "-hangs.csv", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			a, err := assess.Assess(c.Survey, k)
			if err != nil {
				return err
			}
			return exchange.WriteHangs(w, c.Survey, a)
		}},
		{Name: "findings", Type: csv, File: "-findings.csv", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			return exchange.WriteFindings(w, c.Survey, k)
		}},
		{Name: "calendar", Type: "text/calendar; charset=utf-8", File: ".ics", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			return calendar.Write(w, c.ID, c.Survey.Site, exchange.Dates(c.Survey, k), time.Now())
		}},
	}
}

func archiveForm(k *knowledge.Base, strip func([]byte) ([]byte, error)) func(context.Context, io.Writer, *notebook.Copy) error {
	return func(ctx context.Context, w io.Writer, c *notebook.Copy) error {
		sheets, err := exchange.Lists(c.Survey, k)
		if err != nil {
			return err
		}
		_, err = exchange.WriteArchive(ctx, w, c, exchange.ArchiveOptions{Reading: sheets, Strip: strip})
		return err
	}
}

// openArchive reads an archive and checks that all of it is whole.
func openArchive(r io.ReaderAt, size int64) (*notebook.Copy, error) {
	a, err := exchange.OpenArchive(r, size)
	if err != nil {
		return nil, err
	}
	if err := a.Check(context.Background(), nil); err != nil {
		return nil, err
	}
	return a.Copy()
}
