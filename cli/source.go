package cli

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"boughline/knowledge"
	"boughline/notebook"
)

// Why a site of the records cannot be told.
var (
	errSeveral  = errors.New("--site is missing: the records hold several sites")
	errNotNamed = errors.New("no site of the records is named so")
)

// isDatabase reports whether a file is one of the app's records: SQLite, by
// the first bytes of its format.
func isDatabase(name string) (bool, error) {
	head, err := headOf(name)
	return bytes.HasPrefix(head, []byte("SQLite format 3\x00")), err
}

// headOf is the first bytes of a file, as far as it has them.
func headOf(name string) ([]byte, error) {
	file, err := os.Open(name)
	if err != nil {
		return nil, fmt.Errorf("cannot open the file: %w", err)
	}
	defer file.Close()
	head := make([]byte, 512)
	n, err := io.ReadFull(file, head)
	if err != nil && !errors.Is(err, io.EOF) && !errors.Is(err, io.ErrUnexpectedEOF) {
		return nil, fmt.Errorf("cannot read %s: %w", name, err)
	}
	return head[:n], nil
}

// openRecords opens the records of the app.
func openRecords(env Env, name string, k *knowledge.Base) (n *notebook.Notebook, closed func() error, err error) {
	if env.OpenStore == nil {
		return nil, nil, refusal{fmt.Errorf("%s: this program was built without records", name)}
	}
	kept, err := env.OpenStore(name)
	if err != nil {
		return nil, nil, err
	}
	return notebook.New(kept, k, time.Now), kept.Close, nil
}

// siteOf finds a site of the records by its id or its name; asked may be empty
// where there is one only.
func siteOf(ctx context.Context, n *notebook.Notebook, asked string) (string, error) {
	sites, err := n.Sites(ctx)
	if err != nil {
		return "", err
	}
	var names, found []string
	for _, s := range sites {
		names = append(names, fmt.Sprintf("%s (%s)", s.ID, s.Name))
		if asked == "" || s.ID == asked || strings.EqualFold(s.Name, asked) {
			found = append(found, s.ID)
		}
	}
	switch expected := strings.Join(names, ", "); {
	case len(found) == 1:
		return found[0], nil
	case len(sites) == 0:
		return "", refusal{fmt.Errorf("the records are empty: %w", errNotNamed)}
	case len(found) == 0:
		return "", refusal{fmt.Errorf("--site %q: %w; expected one of %s", asked, errNotNamed, expected)}
	case asked == "":
		return "", refusal{fmt.Errorf("%w; expected one of %s", errSeveral, expected)}
	}
	return "", refusal{fmt.Errorf("--site: %q names %d sites; expected the id of one of %s", asked, len(found), strings.Join(names, ", "))}
}

// openSite reads a whole site from a survey document or from records.
func openSite(env Env, name, site string, k *knowledge.Base) (c *notebook.Copy, closed func() error, err error) {
	database, err := isDatabase(name)
	if err != nil {
		return nil, nil, err
	}
	if !database {
		s, err := readSurvey(env, name, k)
		return &notebook.Copy{Survey: s}, func() error { return nil }, err
	}
	n, closed, err := openRecords(env, name, k)
	if err != nil {
		return nil, nil, err
	}
	id, err := siteOf(env.context(), n, site)
	if err == nil {
		c, err = n.Copy(env.context(), id)
	}
	if err != nil {
		closed()
		return nil, nil, err
	}
	return c, closed, nil
}

// context is that of the environment, one without an end where it has none.
func (e Env) context() context.Context {
	if e.Context == nil {
		return context.Background()
	}
	return e.Context
}
