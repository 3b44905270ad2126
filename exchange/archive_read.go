package exchange

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"

	"boughline/notebook"
	"boughline/survey"
)

// mostFiles bounds the files of an archive: a site of a thousand trees with
// twenty photos each.
const mostFiles = 20_000

// Archive is an archive that was opened and found in form. Its files are
// checked against the manifest as they are read.
type Archive struct {
	Manifest Manifest
	entries  map[string]*zip.File
	listed   map[string]File
}

// IsArchive reports whether a file begins as an archive does.
func IsArchive(head []byte) bool { return bytes.HasPrefix(head, []byte("PK\x03\x04")) }

// OpenArchive reads the table and the manifest of an archive. It refuses with a
// *Refusal what is cut off, holds names that lead elsewhere or anything that
// the manifest does not list, or is larger than a site can be; and with a
// *notebook.Invalid what a later program wrote.
func OpenArchive(r io.ReaderAt, size int64) (*Archive, error) {
	z, err := zip.NewReader(r, size)
	if err != nil && !errors.Is(err, zip.ErrInsecurePath) {
		return nil, &Refusal{"", "cannot be read (" + err.Error() + "): it is cut off or no archive", getAnew}
	}
	a := &Archive{entries: map[string]*zip.File{}, listed: map[string]File{}}
	if err := a.index(z, uint64(size)); err != nil {
		return nil, err
	}
	if a.entries[manifestFile] == nil {
		return nil, &Refusal{"", "has no " + manifestFile, "check that it is an archive of this program"}
	}
	data, err := a.unpack(manifestFile, mostBytes(manifestFile))
	if err != nil {
		return nil, err
	}
	m, err := readManifest(data)
	if err != nil {
		return nil, err
	}
	a.Manifest = *m
	return a, a.compare()
}

// index takes the entries by name. All packed entries together cannot be
// larger than the archive, but where they lie over one another.
func (a *Archive) index(z *zip.Reader, size uint64) error {
	if len(z.File) > mostFiles {
		return &Refusal{"", fmt.Sprintf("holds %d files, more than the %d of a site", len(z.File), mostFiles), "check that it is an archive of this program"}
	}
	var packed uint64
	for _, f := range z.File {
		if !isName(f.Name) {
			return &Refusal{f.Name, "is no name that a site has; it might lead out of a folder", "do not use the archive; " + getAnew}
		}
		if a.entries[f.Name] != nil {
			return &Refusal{f.Name, "stands there twice", "do not use the archive; " + getAnew}
		}
		if f.UncompressedSize64 > uint64(mostBytes(f.Name)) {
			return tooLarge(f.Name)
		}
		if packed += f.CompressedSize64; packed > size || f.CompressedSize64 > size {
			return &Refusal{f.Name, "lies over another file", "do not use the archive; " + getAnew}
		}
		a.entries[f.Name] = f
	}
	return nil
}

func tooLarge(name string) error {
	return &Refusal{name, fmt.Sprintf("unpacks to more than %d MB, more than a site has there", mostBytes(name)>>20), "do not use the archive; " + getAnew}
}

// compare holds the table against the manifest.
func (a *Archive) compare() error {
	for _, f := range a.Manifest.Files {
		if a.entries[f.Name] == nil || f.Name == manifestFile {
			return &Refusal{f.Name, "is listed in the manifest and missing", getAnew}
		}
		if _, twice := a.listed[f.Name]; twice {
			return &Refusal{f.Name, "is listed twice in the manifest", getAnew}
		}
		a.listed[f.Name] = f
	}
	for name := range a.entries {
		if _, ok := a.listed[name]; !ok && name != manifestFile {
			return &Refusal{name, "is not listed in the manifest", getAnew}
		}
	}
	if a.entries[surveyFile] == nil {
		return &Refusal{surveyFile, "is missing", makeAnew}
	}
	return nil
}

// unpack reads a file, whatever its header says, no farther than most.
func (a *Archive) unpack(name string, most int64) ([]byte, error) {
	r, err := a.entries[name].Open()
	if err != nil {
		return nil, &Refusal{name, "cannot be read (" + err.Error() + ")", getAnew}
	}
	defer r.Close()
	data, err := io.ReadAll(io.LimitReader(r, most+1))
	if err != nil {
		return nil, &Refusal{name, "cannot be read (" + err.Error() + ")", getAnew}
	}
	if int64(len(data)) > most {
		return nil, tooLarge(name)
	}
	return data, nil
}

// Bytes reads a file and compares it with its checksum.
func (a *Archive) Bytes(name string) ([]byte, error) {
	listed, ok := a.listed[name]
	if !ok {
		return nil, &Refusal{name, "is missing", getAnew}
	}
	data, err := a.unpack(name, mostBytes(name))
	if err != nil {
		return nil, err
	}
	if fileOf(name, data) != listed {
		return nil, &Refusal{name, "is not what the manifest says (its checksum differs)", getAnew}
	}
	return data, nil
}

// Copy reads the site. Its photos stay in the archive until they are asked
// for, which must stay open as long. Check reads them all.
func (a *Archive) Copy() (*notebook.Copy, error) {
	document, err := a.Bytes(surveyFile)
	if err != nil {
		return nil, err
	}
	s, problems, err := survey.Read(bytes.NewReader(document))
	if err != nil {
		return nil, err
	}
	if len(problems) > 0 {
		return nil, &notebook.Invalid{Problems: problems}
	}
	c := &notebook.Copy{ID: a.Manifest.ID, Survey: s}
	if err := a.optional(answersFile, &c.Answers); err != nil {
		return nil, err
	}
	if err := a.optional(photosFile, &c.Photos); err != nil {
		return nil, err
	}
	for _, p := range c.Photos {
		if _, ok := a.listed[photoName(p)]; !ok {
			return nil, &Refusal{photoName(p), "is missing, though " + photosFile + " tells of it", getAnew}
		}
	}
	c.PhotoBytes = func(_ context.Context, p notebook.Photo) ([]byte, error) { return a.Bytes(photoName(p)) }
	return c, nil
}

func (a *Archive) optional(name string, into any) error {
	if a.entries[name] == nil {
		return nil
	}
	data, err := a.Bytes(name)
	if err != nil {
		return err
	}
	if err := json.Unmarshal(data, into); err != nil {
		return &Refusal{name, "cannot be read: " + err.Error(), getAnew}
	}
	return nil
}

// Check reads every file once and returns the first that is not whole.
func (a *Archive) Check(ctx context.Context, progress func(done, total int)) error {
	for i, f := range a.Manifest.Files {
		if err := ctx.Err(); err != nil {
			return err
		}
		if _, err := a.Bytes(f.Name); err != nil {
			return err
		}
		if progress != nil {
			progress(i+1, len(a.Manifest.Files))
		}
	}
	return nil
}
