package notebook

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"

	"boughline/store"
	"boughline/survey"
)

// exchangeVersion is that of the file of a whole site.
const exchangeVersion = 1

// exchange is the file of a whole site: the survey document, the answers of
// looks, the photos with their bytes.
type exchange struct {
	Version int                                     `json:"boughline_site"`
	ID      string                                  `json:"id"`
	Survey  json.RawMessage                         `json:"survey"`
	Answers map[string]map[string]map[string]Answer `json:"answers,omitempty"`
	Photos  []photoFile                             `json:"photos,omitempty"`
}

type photoFile struct {
	Photo
	Data []byte `json:"data"`
}

// Export writes a whole site as one file.
func (n *Notebook) Export(ctx context.Context, w io.Writer, site string) error {
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	file := exchange{Version: exchangeVersion, ID: site, Answers: map[string]map[string]map[string]Answer{}}
	var document bytes.Buffer
	if err := survey.Write(&document, s.Survey()); err != nil {
		return err
	}
	file.Survey = document.Bytes()
	for i := range s.Trees {
		t := &s.Trees[i]
		if len(t.Answers) > 0 {
			file.Answers[t.ID] = t.Answers
		}
		photos, err := n.photoFiles(ctx, site, t.ID)
		if err != nil {
			return err
		}
		file.Photos = append(file.Photos, photos...)
	}
	return json.NewEncoder(w).Encode(file)
}

func (n *Notebook) photoFiles(ctx context.Context, site, tree string) ([]photoFile, error) {
	photos, err := n.Photos(ctx, site, tree)
	if err != nil {
		return nil, err
	}
	var files []photoFile
	for _, p := range photos {
		data, err := n.PhotoBytes(ctx, site, p.ID)
		if err != nil {
			return nil, fmt.Errorf("photo %s of tree %s: %w", p.ID, tree, err)
		}
		files = append(files, photoFile{p, data})
	}
	return files, nil
}

// Imported tells what an import did.
type Imported struct {
	Site                string
	New, Changed, Equal []string // ids of trees
	Photos              int
}

// Import takes a file that Export wrote, or a survey document alone. Where the
// site is kept already, trees that differ become new versions, with the
// earlier ones beside them; trees that the file does not hold stay. fresh is
// the id of a site that is not kept yet and has none of its own. The id is
// added to the end of e.To.
func (n *Notebook) Import(ctx context.Context, data []byte, fresh string, e Edit) (Imported, error) {
	if err := n.taken(ctx, e); err != nil {
		return Imported{}, err
	}
	file, s, err := readExchange(data)
	if err != nil {
		return Imported{}, err
	}
	if problems := n.problems(s); len(problems) > 0 {
		return Imported{}, &Invalid{problems}
	}
	if file.ID == "" {
		file.ID = fresh
	}
	done := Imported{Site: file.ID}
	e.To += file.ID
	puts, err := n.importPuts(ctx, file, s, &done, e.What)
	if err != nil {
		return Imported{}, err
	}
	return done, n.apply(ctx, e, puts...)
}

// readExchange reads either kind of file.
func readExchange(data []byte) (exchange, *survey.Survey, error) {
	var file exchange
	if err := json.Unmarshal(data, &file); err != nil || file.Version == 0 {
		file = exchange{Survey: data} // a survey alone; its reader says what is wrong
	}
	if file.Version > exchangeVersion {
		return file, nil, &Invalid{[]survey.Problem{{
			Code: survey.CodeNewer, Path: "boughline_site", Value: fmt.Sprint(file.Version),
			Fault:    "the file was written by a later program",
			Expected: fmt.Sprintf("version %d at most", exchangeVersion),
			Do:       "bring this program up to date, then take the file again; nothing was changed here",
		}}}
	}
	s, problems, err := survey.Read(bytes.NewReader(file.Survey))
	if err == nil && len(problems) > 0 {
		err = &Invalid{problems}
	}
	return file, s, err
}

func (n *Notebook) importPuts(ctx context.Context, file exchange, s *survey.Survey, done *Imported, what string) ([]store.Put, error) {
	head, err := encodeHead(s)
	if err != nil {
		return nil, err
	}
	put, _, err := n.importPut(ctx, siteKey(file.ID), head, what)
	if err != nil {
		return nil, err
	}
	puts := put
	for i := range s.Trees {
		t := Tree{Order: i + 1, Tree: s.Trees[i], Answers: file.Answers[s.Trees[i].ID]}
		data, err := encodeTree(&t)
		if err != nil {
			return nil, err
		}
		put, fresh, err := n.importPut(ctx, treeKey(file.ID, t.ID), data, what)
		if err != nil {
			return nil, err
		}
		puts = append(puts, put...)
		switch {
		case len(put) == 0:
			done.Equal = append(done.Equal, t.ID)
		case fresh:
			done.New = append(done.New, t.ID)
		default:
			done.Changed = append(done.Changed, t.ID)
		}
	}
	photos, err := n.importPhotos(ctx, file, what)
	done.Photos = len(photos) / 2
	return append(puts, photos...), err
}

// importPut writes data under a key unless just that lies there.
func (n *Notebook) importPut(ctx context.Context, key string, data []byte, what string) (puts []store.Put, fresh bool, err error) {
	o, err := store.Get(ctx, n.store, key)
	switch {
	case errors.Is(err, store.ErrNotFound):
		fresh = true
	case err != nil:
		return nil, false, err
	case bytes.Equal(o.Data, data):
		return nil, false, nil
	}
	return []store.Put{{Key: key, Rests: o.Revision, What: what, Data: data}}, fresh, nil
}

func (n *Notebook) importPhotos(ctx context.Context, file exchange, what string) ([]store.Put, error) {
	var puts []store.Put
	for _, p := range file.Photos {
		if _, err := n.PhotoBytes(ctx, file.ID, p.ID); !errors.Is(err, store.ErrNotFound) {
			if err != nil {
				return nil, err
			}
			continue // it is here
		}
		record, err := json.Marshal(p.Photo)
		if err != nil {
			return nil, err
		}
		puts = append(puts,
			store.Put{Key: bytesKey(file.ID, p.ID), Data: slices.Clone(p.Data), Once: true},
			store.Put{Key: photosKey(file.ID, p.Tree) + store.Segment(p.ID), What: what, Data: record})
	}
	return puts, nil
}
