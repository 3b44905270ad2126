package web_test

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"boughline/notebook"
	"boughline/web"
)

// withForms serves the same notebook with forms of a site.
func (d *desk) withForms(forms []web.Form, open func(io.ReaderAt, int64) (*notebook.Copy, error)) {
	d.t.Helper()
	server := httptest.NewServer(web.New(web.Config{
		Notebook: d.notebook, Base: "/", NewID: func() string { return "new" }, Today: func() string { return "2026-05-16" },
		Forms: forms, Open: open, Log: func(err error) { d.logged = append(d.logged, err) },
	}))
	d.t.Cleanup(server.Close)
	d.Server = server
}

func TestASiteLeavesInFurtherForms(t *testing.T) {
	d := open(t)
	if _, page := d.get("/site/demo"); strings.Contains(page, "Write it for elsewhere") {
		t.Error("a host without forms offers some")
	}
	fail := errors.New("the disk is full")
	d.withForms([]web.Form{
		{Name: "geojson", Type: "application/geo+json", File: ".geojson", Write: func(_ context.Context, w io.Writer, c *notebook.Copy) error {
			_, err := fmt.Fprintf(w, "%s has %d trees", c.Survey.Site, len(c.Survey.Trees))
			return err
		}},
		{Name: "trees", Type: "text/csv", File: ".csv", Write: func(context.Context, io.Writer, *notebook.Copy) error { return fail }},
		{Name: "archive", Type: "application/zip", File: ".zip", Write: func(_ context.Context, w io.Writer, _ *notebook.Copy) error {
			w.Write(make([]byte, 1<<20))
			return fail
		}},
	}, nil)
	_, page := d.get("/site/demo")
	for _, want := range []string{"Write it for elsewhere", `href="/site/demo/export/geojson"`, "Map (GeoJSON)", "List of trees (CSV)"} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	answer, err := http.Get(d.URL + "/site/demo/export/geojson")
	if err != nil {
		t.Fatal(err)
	}
	said, err := io.ReadAll(answer.Body)
	if got := answer.Header.Get("Content-Disposition"); err != nil || string(said) != "Pennow Wood has 11 trees" || got != `attachment; filename="Pennow-Wood-2026-05-16.geojson"` {
		t.Errorf("%q, %s, %v", said, got, err)
	}
	if status, _ := d.get("/site/demo/export/xls"); status != http.StatusNotFound {
		t.Errorf("a form that is none: %d", status)
	}
	if status, _ := d.get("/site/nowhere/export/geojson"); status != http.StatusNotFound {
		t.Errorf("a site that is none: %d", status)
	}
	if status, _ := d.get("/site/demo/export/trees"); status != http.StatusInternalServerError {
		t.Errorf("a form that fails: %d", status)
	}
	if answer, err = http.Get(d.URL + "/site/demo/export/archive"); err == nil {
		if _, err = io.ReadAll(answer.Body); err == nil {
			t.Error("half an archive looks like a whole one")
		}
	}
}

// send posts a file as the form does.
func (d *desk) send(data string) (int, string) {
	d.t.Helper()
	var b bytes.Buffer
	w := multipart.NewWriter(&b)
	w.WriteField("form", "form1")
	part, err := w.CreateFormFile("file", "wood.zip")
	if err != nil {
		d.t.Fatal(err)
	}
	io.WriteString(part, data)
	w.Close()
	return d.read(http.Post(d.URL+"/import", w.FormDataContentType(), &b))
}

func TestAnArchiveIsTakenInAtTheDesk(t *testing.T) {
	d := open(t)
	if status, page := d.send("PK\x03\x04 rest"); status != http.StatusUnprocessableEntity || !strings.Contains(page, "taken in at the desk") {
		t.Errorf("on a phone: %d\n%s", status, page)
	}
	d.withForms(nil, func(r io.ReaderAt, size int64) (*notebook.Copy, error) {
		data, err := io.ReadAll(io.NewSectionReader(r, 0, size))
		if err != nil || string(data) != "PK\x03\x04 whole" {
			return nil, errors.New("the archive is <cut> off")
		}
		c, err := d.notebook.Copy(t.Context(), "demo")
		if err == nil {
			c.ID = "elsewhere"
		}
		return c, err
	})
	if status, page := d.send("PK\x03\x04 half"); status != http.StatusUnprocessableEntity || !strings.Contains(page, "the archive is &lt;cut&gt; off") {
		t.Errorf("half an archive: %d\n%s", status, page)
	}
	if status, page := d.send("PK\x03\x04 whole"); status != http.StatusOK || !strings.Contains(page, "The file was taken in") {
		t.Errorf("an archive: %d\n%s", status, page)
	}
	if s, err := d.notebook.Site(t.Context(), "elsewhere"); err != nil || len(s.Trees) != 11 {
		t.Errorf("it did not come in: %v", err)
	}
}
