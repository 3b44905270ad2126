package cli

import (
	"bytes"
	"fmt"
	"image"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"boughline/sheet"
	"boughline/survey"

	"github.com/disintegration/imaging"
)

// Photos are made this small for paper, pixels along the longer side: 300 to
// the inch across half a page.
const (
	photoSide    = 1100
	photoQuality = 80
	mostPixels   = 120_000_000
)

// readPhotos reads the pictures of a folder in the order of their names, turned
// upright and made small. A name that begins with the id of a tree belongs to
// it, and its next word may be one of its findings, members or zones.
func readPhotos(folder string, s *survey.Survey, progress func(done, total int)) ([]sheet.Photo, error) {
	if folder == "" {
		return nil, nil
	}
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, fmt.Errorf("cannot read the photos: %w", err)
	}
	var list []sheet.Photo
	for i, e := range entries {
		if progress != nil {
			progress(i+1, len(entries))
		}
		if e.IsDir() || strings.HasPrefix(e.Name(), ".") {
			continue
		}
		photo, err := readPhoto(filepath.Join(folder, e.Name()))
		if err != nil {
			return nil, err
		}
		photo.Tree, photo.Of, photo.Caption = namedPhoto(e.Name(), s)
		list = append(list, photo)
	}
	return list, nil
}

func readPhoto(name string) (sheet.Photo, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return sheet.Photo{}, fmt.Errorf("cannot read the photo: %w", err)
	}
	photo, err := smallPhoto(data)
	if err != nil {
		return photo, refusal{fmt.Errorf("--photos: %s %w", name, err)}
	}
	return photo, nil
}

// smallPhoto turns a picture upright and makes it small.
func smallPhoto(data []byte) (sheet.Photo, error) {
	size, _, err := image.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return sheet.Photo{}, fmt.Errorf("is no picture that can be read (%w); expected JPEG, PNG or GIF: convert it, or take it out of the folder", err)
	}
	if size.Width*size.Height > mostPixels {
		return sheet.Photo{}, fmt.Errorf("has %d by %d pixels; expected %d million at most: make it smaller", size.Width, size.Height, mostPixels/1_000_000)
	}
	picture, err := imaging.Decode(bytes.NewReader(data), imaging.AutoOrientation(true))
	if err != nil {
		return sheet.Photo{}, fmt.Errorf("is damaged (%w); take it out of the folder, or give a whole copy", err)
	}
	small := imaging.Fit(picture, photoSide, photoSide, imaging.Box)
	flat := imaging.Overlay(imaging.New(small.Rect.Dx(), small.Rect.Dy(), image.White.C), small, image.Point{}, 1)
	var b bytes.Buffer
	if err := imaging.Encode(&b, flat, imaging.JPEG, imaging.JPEGQuality(photoQuality)); err != nil {
		return sheet.Photo{}, fmt.Errorf("cannot be made smaller: %w", err)
	}
	return sheet.Photo{Data: b.Bytes(), Width: flat.Rect.Dx(), Height: flat.Rect.Dy()}, nil
}

// namedPhoto reads what a photo is of from its name.
func namedPhoto(name string, s *survey.Survey) (tree, of, caption string) {
	words := strings.Fields(strings.TrimSuffix(name, filepath.Ext(name)))
	if len(words) == 0 {
		return "", "", ""
	}
	i := slices.IndexFunc(s.Trees, func(t survey.Tree) bool { return t.ID == words[0] })
	if i < 0 {
		return "", "", strings.Join(words, " ")
	}
	if len(words) > 1 && partOf(&s.Trees[i], words[1]) {
		return words[0], words[1], strings.Join(words[2:], " ")
	}
	return words[0], "", strings.Join(words[1:], " ")
}

// partOf reports whether a word names a finding, a member or a zone of a tree.
func partOf(t *survey.Tree, word string) bool {
	return slices.Contains(survey.Zones, word) ||
		slices.ContainsFunc(t.Findings, func(f survey.Finding) bool { return f.ID == word }) ||
		slices.ContainsFunc(t.Members, func(m survey.Member) bool { return m.ID == word })
}
