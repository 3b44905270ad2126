package cli

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"boughline/notebook"
	"boughline/survey"
)

// makeSurvey writes a site as a survey document, with its photos in a folder
// beside it. A document that is there already is never written over.
func (c importCommand) makeSurvey(env Env, site *notebook.Copy) error {
	var text bytes.Buffer
	if err := survey.Write(&text, site.Survey); err != nil {
		return err
	}
	there, err := os.ReadFile(c.Into)
	if err == nil && !bytes.Equal(there, text.Bytes()) {
		return refusal{fmt.Errorf("--into %s: the file is there and differs; give another name, or take both into records, which keep both versions", c.Into)}
	}
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return fmt.Errorf("cannot read %s: %w", c.Into, err)
	}
	if err := replace(c.Into, text.Bytes()); err != nil {
		return err
	}
	fmt.Fprintf(env.Stdout, "%s: %s, %d %s\n", c.Into, site.Survey.Site, len(site.Survey.Trees), plural("tree", len(site.Survey.Trees)))
	if len(site.Answers) > 0 {
		fmt.Fprintf(env.Stdout, "did not come in: answers of looks in progress on %d %s; only records keep them\n", len(site.Answers), plural("tree", len(site.Answers)))
	}
	return c.unpackPhotos(env, site)
}

func (c importCommand) unpackPhotos(env Env, site *notebook.Copy) error {
	if len(site.Photos) == 0 {
		return nil
	}
	folder := strings.TrimSuffix(c.Into, filepath.Ext(c.Into)) + "-photos"
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return fmt.Errorf("cannot make the folder of the photos: %w", err)
	}
	for _, p := range site.Photos {
		if err := unpackPhoto(env.context(), folder, site, p); err != nil {
			return err
		}
	}
	fmt.Fprintf(env.Stdout, "%s: %d %s\n", folder, len(site.Photos), plural("photo", len(site.Photos)))
	return nil
}

func unpackPhoto(ctx context.Context, folder string, site *notebook.Copy, p notebook.Photo) error {
	data, err := site.PhotoBytes(ctx, p)
	if err != nil {
		return err
	}
	return replace(filepath.Join(folder, photoFileName(p)), data)
}

// photoFileName begins with the tree; what a file's name may not hold becomes
// an underscore.
func photoFileName(p notebook.Photo) string {
	plain := strings.Map(func(r rune) rune {
		if r == '-' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' {
			return r
		}
		return '_'
	}, p.Tree+"-"+p.ID)
	return plain + "." + strings.Replace(strings.TrimPrefix(p.Type, "image/"), "jpeg", "jpg", 1)
}
