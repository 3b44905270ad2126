package cli

import (
	"bytes"
	"cmp"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"time"

	"boughline/exchange"
	"boughline/exchange/calendar"
	"boughline/exchange/picture"
	"boughline/knowledge"
	"boughline/notebook"
)

type exportCommand struct {
	From        string `arg:"" help:"Survey document (JSON), or the file of the app's records."`
	As          string `required:"" enum:"archive,geojson,csv,calendar" help:"What to write: archive (the whole site with its photos, to be taken in elsewhere), geojson (a map), csv (lists of trees, hangs and findings), calendar (its days)."`
	Out         string `short:"o" required:"" help:"File to write; for csv a folder." placeholder:"OUT" type:"path"`
	Site        string `help:"Which site of the records, by id or name." placeholder:"SITE"`
	StripPhotos bool   `help:"Take position, time, names and all else that a camera wrote out of the photos; the pixels stay."`
}

// Run writes the site in the form asked for.
func (c exportCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	site, closed, err := openSite(env, c.From, c.Site, k)
	if err != nil {
		return err
	}
	defer closed()
	for _, d := range site.Damaged {
		fmt.Fprintf(env.Stderr, "left out: tree %s: its record cannot be read (%v)\n", d.Tree, d.Cause)
	}
	switch c.As {
	case "archive":
		return c.archive(env, site, k)
	case "csv":
		return c.lists(env, site, k)
	case "geojson":
		return c.written(env, site, func(w io.Writer) error { return exchange.WriteGeoJSON(w, site.Survey, k) })
	}
	return c.written(env, site, func(w io.Writer) error {
		name := site.Survey.Site
		return calendar.Write(w, cmp.Or(site.ID, name), name, exchange.Dates(site.Survey, k), time.Now())
	})
}

func (c exportCommand) written(env Env, site *notebook.Copy, write func(io.Writer) error) error {
	var b bytes.Buffer
	if err := write(&b); err != nil {
		return err
	}
	if err := replace(c.Out, b.Bytes()); err != nil {
		return err
	}
	fmt.Fprintf(env.Stdout, "%s: %s, %d %s\n", c.Out, site.Survey.Site, len(site.Survey.Trees), plural("tree", len(site.Survey.Trees)))
	return nil
}

func (c exportCommand) lists(env Env, site *notebook.Copy, k *knowledge.Base) error {
	sheets, err := exchange.Lists(site.Survey, k)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(c.Out, 0o755); err != nil {
		return fmt.Errorf("cannot make the folder of the lists: %w", err)
	}
	for _, sheet := range sheets {
		name := filepath.Join(c.Out, sheet.Name)
		if err := replace(name, sheet.Data); err != nil {
			return err
		}
		fmt.Fprintln(env.Stdout, name)
	}
	return nil
}

// archive writes photo by photo into a file beside the one asked for, which
// takes its place when it is whole.
func (c exportCommand) archive(env Env, site *notebook.Copy, k *knowledge.Base) error {
	sheets, err := exchange.Lists(site.Survey, k)
	if err != nil {
		return err
	}
	o := exchange.ArchiveOptions{Reading: sheets, Progress: progressOn(env.Stderr, "photos")}
	if c.StripPhotos {
		o.Strip = picture.Strip
	}
	file, err := os.CreateTemp(filepath.Dir(c.Out), filepath.Base(c.Out)+".*")
	if err != nil {
		return fmt.Errorf("cannot write the archive: %w", err)
	}
	defer os.Remove(file.Name()) // gone already where all went well
	m, err := exchange.WriteArchive(env.context(), file, site, o)
	if closed := file.Close(); err == nil {
		err = closed
	}
	if err == nil {
		err = os.Rename(file.Name(), c.Out)
	}
	if err != nil {
		return fmt.Errorf("cannot write the archive: %w", err)
	}
	photos, size := m.Count()
	fmt.Fprintf(env.Stdout, "%s: %s, %d %s, %d %s (%.1f MB)%s\n", c.Out, m.Site, len(site.Survey.Trees), plural("tree", len(site.Survey.Trees)),
		photos, plural("photo", photos), float64(size)/1e6, map[bool]string{true: ", without what cameras wrote"}[m.Stripped])
	for _, left := range m.LeftOut {
		fmt.Fprintln(env.Stdout, "left out:", left)
	}
	return nil
}
