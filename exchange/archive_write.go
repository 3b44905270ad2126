package exchange

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"strings"
	"time"

	"boughline/notebook"
	"boughline/survey"
)

// ArchiveOptions is what goes into an archive beside the site itself.
type ArchiveOptions struct {
	// Reading are files for people, by name, such as trees.csv. They are not
	// read back.
	Reading []Sheet
	// Strip takes what a camera wrote out of a photo; nil leaves it in. A
	// photo that it fails on is left out, and the archive says so.
	Strip func(data []byte) ([]byte, error)
	// Progress is told how many photos are done; nil for nobody.
	Progress func(done, total int)
}

// Sheet is a file for people.
type Sheet struct {
	Name string
	Data []byte
}

type archiveWriter struct {
	zip      *zip.Writer
	manifest Manifest
}

// WriteArchive writes a site as one file, photo by photo: no more than one is
// held at a time. The same site gives the same bytes. It returns what the
// archive says of itself.
func WriteArchive(ctx context.Context, w io.Writer, c *notebook.Copy, o ArchiveOptions) (Manifest, error) {
	a := archiveWriter{zip: zip.NewWriter(w), manifest: Manifest{Version: ArchiveVersion, ID: c.ID, Site: c.Survey.Site, Stripped: o.Strip != nil}}
	for _, d := range c.Damaged {
		a.leaveOut("tree %s: its record cannot be read (%v)", d.Tree, d.Cause)
	}
	if err := a.documents(c); err != nil {
		return a.manifest, err
	}
	kept, err := a.photos(ctx, c, o)
	if err != nil {
		return a.manifest, err
	}
	if err := a.json(photosFile, kept); err != nil {
		return a.manifest, err
	}
	for _, sheet := range o.Reading {
		if err := a.add(readFolder+sheet.Name, zip.Deflate, sheet.Data); err != nil {
			return a.manifest, err
		}
	}
	return a.manifest, a.close()
}

func (a *archiveWriter) documents(c *notebook.Copy) error {
	var document bytes.Buffer
	if err := survey.Write(&document, c.Survey); err != nil {
		return err
	}
	if err := a.add(surveyFile, zip.Deflate, document.Bytes()); err != nil {
		return err
	}
	if len(c.Answers) == 0 {
		return nil
	}
	return a.json(answersFile, c.Answers)
}

func (a *archiveWriter) photos(ctx context.Context, c *notebook.Copy, o ArchiveOptions) ([]notebook.Photo, error) {
	kept := []notebook.Photo{}
	for i, p := range c.Photos {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		data, err := c.PhotoBytes(ctx, p)
		if err != nil {
			return nil, fmt.Errorf("photo %s of tree %s: %w", p.ID, p.Tree, err)
		}
		if o.Progress != nil {
			o.Progress(i+1, len(c.Photos))
		}
		if o.Strip != nil {
			if data, err = o.Strip(data); err != nil {
				a.leaveOut("photo %s of tree %s: %v", p.ID, p.Tree, err)
				continue
			}
			p.Taken = time.Time{} // it was read from the photo
		}
		// Pictures are packed already; stored, they need no work and no room
		// in memory when they are read.
		if err := a.add(photoName(p), zip.Store, data); err != nil {
			return nil, err
		}
		kept = append(kept, p)
	}
	return kept, nil
}

func (a *archiveWriter) leaveOut(format string, values ...any) {
	a.manifest.LeftOut = append(a.manifest.LeftOut, fmt.Sprintf(format, values...))
}

func (a *archiveWriter) json(name string, value any) error {
	data, err := json.MarshalIndent(value, "", " ")
	if err != nil {
		return err
	}
	return a.add(name, zip.Deflate, append(data, '\n'))
}

func (a *archiveWriter) add(name string, method uint16, data []byte) error {
	if !isName(name) {
		return fmt.Errorf("%q is no name for a file of an archive", name)
	}
	if err := a.write(name, method, data); err != nil {
		return err
	}
	a.manifest.Files = append(a.manifest.Files, fileOf(name, data))
	return nil
}

func (a *archiveWriter) write(name string, method uint16, data []byte) error {
	entry, err := a.zip.CreateHeader(&zip.FileHeader{Name: name, Method: method})
	if err != nil {
		return fmt.Errorf("writing %s: %w", name, err)
	}
	if _, err := entry.Write(data); err != nil {
		return fmt.Errorf("writing %s: %w", name, err)
	}
	return nil
}

// close writes the manifest behind what it lists.
func (a *archiveWriter) close() error {
	data, err := json.MarshalIndent(a.manifest, "", " ")
	if err != nil {
		return err
	}
	if err := a.write(manifestFile, zip.Deflate, append(data, '\n')); err != nil {
		return err
	}
	return a.zip.Close()
}

// Count is how many files of the archive lie in its folder of photos, and
// their size.
func (m Manifest) Count() (photos int, size int64) {
	for _, f := range m.Files {
		if strings.HasPrefix(f.Name, photoFolder) {
			photos, size = photos+1, size+f.Size
		}
	}
	return photos, size
}
