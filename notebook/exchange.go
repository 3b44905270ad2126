package notebook

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"

	"boughline/survey"
)

// exchangeVersion is that of the file of a whole site.
const exchangeVersion = 1

// exchange is the file of a whole site: the survey document, the answers of
// looks, the photos with their bytes.
type exchange struct {
	Version int             `json:"boughline_site"`
	ID      string          `json:"id"`
	Survey  json.RawMessage `json:"survey"`
	Answers Answers         `json:"answers,omitempty"`
	Photos  []photoFile     `json:"photos,omitempty"`
}

type photoFile struct {
	Photo
	Data []byte `json:"data"`
}

// Export writes a whole site as one file.
func (n *Notebook) Export(ctx context.Context, w io.Writer, site string) error {
	c, err := n.Copy(ctx, site)
	if err != nil {
		return err
	}
	file := exchange{Version: exchangeVersion, ID: site, Answers: c.Answers}
	var document bytes.Buffer
	if err := survey.Write(&document, c.Survey); err != nil {
		return err
	}
	file.Survey = document.Bytes()
	for _, p := range c.Photos {
		data, err := c.PhotoBytes(ctx, p)
		if err != nil {
			return fmt.Errorf("photo %s of tree %s: %w", p.ID, p.Tree, err)
		}
		file.Photos = append(file.Photos, photoFile{p, data})
	}
	return json.NewEncoder(w).Encode(file)
}

// Import takes a file that Export wrote, or a survey document alone, as Take
// does.
func (n *Notebook) Import(ctx context.Context, data []byte, fresh string, e Edit) (Imported, error) {
	if err := n.taken(ctx, e); err != nil {
		return Imported{}, err
	}
	c, err := ReadCopy(data)
	if err != nil {
		return Imported{}, err
	}
	return n.Take(ctx, c, fresh, e)
}

// ReadCopy reads a file that Export wrote, or a survey document alone.
func ReadCopy(data []byte) (*Copy, error) {
	file, s, err := readExchange(data)
	if err != nil {
		return nil, err
	}
	c := &Copy{ID: file.ID, Survey: s, Answers: file.Answers}
	pictures := map[string][]byte{}
	for _, p := range file.Photos {
		c.Photos = append(c.Photos, p.Photo)
		pictures[p.ID] = p.Data
	}
	c.PhotoBytes = func(_ context.Context, p Photo) ([]byte, error) { return pictures[p.ID], nil }
	return c, nil
}

// readExchange reads either kind of file.
func readExchange(data []byte) (exchange, *survey.Survey, error) {
	var file exchange
	if err := json.Unmarshal(data, &file); err != nil || file.Version == 0 {
		file = exchange{Survey: data} // a survey alone; its reader says what is wrong
	}
	if file.Version > exchangeVersion {
		return file, nil, Newer("boughline_site", file.Version, exchangeVersion)
	}
	s, problems, err := survey.Read(bytes.NewReader(file.Survey))
	if err == nil && len(problems) > 0 {
		err = &Invalid{problems}
	}
	return file, s, err
}

// Newer refuses a file that a later program wrote; field holds its version.
func Newer(field string, found, most int) error {
	return &Invalid{[]survey.Problem{{
		Code: survey.CodeNewer, Path: field, Value: fmt.Sprint(found),
		Fault:    "the file was written by a later program",
		Expected: fmt.Sprintf("version %d at most", most),
		Do:       "bring this program up to date, then take the file again; nothing was changed here",
	}}}
}
