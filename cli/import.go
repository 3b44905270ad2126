package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"boughline/exchange"
	"boughline/knowledge"
	"boughline/notebook"
)

type importCommand struct {
	From []string `arg:"" help:"An archive, a file the app saved, a survey document, a list of trees (CSV), or photos."`
	Into string   `help:"Survey document (JSON) or file of the app's records; made where it is missing: records for a name that ends in .db, a survey for any other." placeholder:"FILE" type:"path"`
	Site string   `help:"Which site of the records, by id or name; for a list that makes a new site, its name." placeholder:"SITE"`
	Tree string   `help:"For photos, the tree they show; left out, the tree nearest to where they were taken." placeholder:"ID"`
	listOptions
}

// Run takes the file for what its first bytes say it is.
func (c importCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	head, err := headOf(c.From[0])
	if err != nil {
		return err
	}
	if bytes.Contains(head, []byte("[Content_Types].xml")) {
		return refusal{fmt.Errorf("%s is a workbook: save its sheet as CSV (UTF-8) and take that in", c.From[0])}
	}
	if kindOf(head) != listFile && c.Into == "" {
		return refusal{errors.New("--into is missing: expected the survey document or the records to take it into")}
	}
	if kindOf(head) != photoFile && len(c.From) > 1 {
		return refusal{fmt.Errorf("%s and %d more: several files at once can be photos only", c.From[0], len(c.From)-1)}
	}
	switch kindOf(head) {
	case archiveFile:
		return c.archive(env, k)
	case documentFile:
		return c.document(env, k)
	case photoFile:
		return c.photos(env, k)
	}
	return c.list(env, k)
}

// Kinds of files that come in.
const (
	archiveFile  = "archive"
	documentFile = "document"
	photoFile    = "photo"
	listFile     = "list"
)

func kindOf(head []byte) string {
	text := bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\ufeff")), " \t\r\n")
	switch {
	case exchange.IsArchive(head):
		return archiveFile
	case bytes.HasPrefix(text, []byte("{")):
		return documentFile
	case isPicture(head):
		return photoFile
	}
	return listFile
}

// archive checks the whole archive before anything of it is taken.
func (c importCommand) archive(env Env, k *knowledge.Base) error {
	file, err := os.Open(c.From[0])
	if err != nil {
		return fmt.Errorf("cannot open the archive: %w", err)
	}
	defer file.Close()
	info, err := file.Stat()
	if err != nil {
		return err
	}
	a, err := exchange.OpenArchive(file, info.Size())
	if err == nil {
		err = a.Check(env.context(), progressOn(env.Stderr, "checking"))
	}
	var site *notebook.Copy
	if err == nil {
		site, err = a.Copy()
	}
	if err != nil {
		return c.refused(env, err)
	}
	for _, left := range a.Manifest.LeftOut {
		fmt.Fprintln(env.Stdout, "not in the archive:", left)
	}
	return c.take(env, site, k)
}

func (c importCommand) document(env Env, k *knowledge.Base) error {
	file, err := os.Open(c.From[0])
	if err != nil {
		return fmt.Errorf("cannot open the file: %w", err)
	}
	defer file.Close()
	const most = 2 << 30 // photos lie within it as text
	data, err := io.ReadAll(io.LimitReader(file, most))
	if err != nil {
		return fmt.Errorf("cannot read %s: %w", c.From[0], err)
	}
	site, err := notebook.ReadCopy(data)
	if err != nil {
		return c.refused(env, err)
	}
	return c.take(env, site, k)
}

// refused lists what is wrong with a file.
func (c importCommand) refused(env Env, err error) error {
	var invalid *notebook.Invalid
	var not *exchange.Refusal
	if errors.As(err, &invalid) {
		listProblems(env.Stderr, invalid.Problems)
		return refusal{fmt.Errorf("%s: %d %s; nothing was taken in", c.From[0], len(invalid.Problems), plural("problem", len(invalid.Problems)))}
	}
	if errors.As(err, &not) {
		return refusal{fmt.Errorf("%s: %w; nothing was taken in", c.From[0], err)}
	}
	return err
}

// take brings a whole site into records or makes a survey document of it.
func (c importCommand) take(env Env, site *notebook.Copy, k *knowledge.Base) error {
	records, err := c.intoRecords()
	if err != nil {
		return err
	}
	if !records {
		return c.makeSurvey(env, site)
	}
	n, closed, err := openRecords(env, c.Into, k)
	if err != nil {
		return err
	}
	defer closed()
	done, err := n.Take(env.context(), site, newID(), notebook.Edit{What: "taken from " + c.From[0]})
	if err != nil {
		return c.refused(env, err)
	}
	fmt.Fprintf(env.Stdout, "%s: %s came in as %s\n", c.Into, site.Survey.Site, done.Site)
	for _, line := range []struct {
		what string
		ids  []string
	}{{"new", done.New}, {"changed, the earlier versions are kept", done.Changed}, {"the same as here", done.Equal}} {
		if len(line.ids) > 0 {
			fmt.Fprint(env.Stdout, hanging("trees", fmt.Sprintf("%d %s: %s", len(line.ids), line.what, strings.Join(line.ids, ", ")), column))
		}
	}
	fmt.Fprintf(env.Stdout, "photos      %d came in, %d were here before or had been taken off here\n", done.Photos, done.PhotosKept)
	return nil
}

// intoRecords reports whether the file to take into is one of records.
func (c importCommand) intoRecords() (bool, error) {
	if _, err := os.Stat(c.Into); errors.Is(err, os.ErrNotExist) {
		return strings.HasSuffix(strings.ToLower(c.Into), ".db"), nil
	}
	return isDatabase(c.Into)
}
