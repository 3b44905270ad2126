package notebook

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"

	"boughline/store"
	"boughline/survey"
)

// Imported tells what an import did.
type Imported struct {
	Site                string
	New, Changed, Equal []string // ids of trees
	Photos              int      // that came in
	PhotosKept          int      // that were here before, or had been taken off
}

// Take brings a whole site in. Where it is kept already, trees that differ
// become new versions, with the earlier ones beside them; trees that the copy
// does not hold stay. fresh is the id of a site that is not kept yet and has
// none of its own. The id is added to the end of e.To.
//
// The bytes of photos are written one by one before all records are, as one
// batch: where it fails, nothing of the site is seen.
func (n *Notebook) Take(ctx context.Context, c *Copy, fresh string, e Edit) (Imported, error) {
	if err := n.taken(ctx, e); err != nil {
		return Imported{}, err
	}
	if problems := n.problems(c.Survey); len(problems) > 0 {
		return Imported{}, &Invalid{problems}
	}
	to := *c
	if to.ID == "" {
		to.ID = fresh
	}
	done := Imported{Site: to.ID}
	e.To += to.ID
	puts, err := n.takeTrees(ctx, &to, &done, e.What)
	if err != nil {
		return Imported{}, err
	}
	photos, err := n.takePhotos(ctx, &to, &done, e.What)
	if err != nil {
		return Imported{}, err
	}
	return done, n.apply(ctx, e, append(puts, photos...)...)
}

func (n *Notebook) takeTrees(ctx context.Context, c *Copy, done *Imported, what string) ([]store.Put, error) {
	head, err := encodeHead(c.Survey)
	if err != nil {
		return nil, err
	}
	puts, _, err := n.takeRecord(ctx, siteKey(c.ID), head, what)
	if err != nil {
		return nil, err
	}
	for i := range c.Survey.Trees {
		t := Tree{Order: i + 1, Tree: c.Survey.Trees[i], Answers: c.Answers[c.Survey.Trees[i].ID]}
		data, err := encodeTree(&t)
		if err != nil {
			return nil, err
		}
		put, fresh, err := n.takeRecord(ctx, treeKey(c.ID, t.ID), data, what)
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
	return puts, nil
}

// takeRecord writes data under a key unless just that lies there.
func (n *Notebook) takeRecord(ctx context.Context, key string, data []byte, what string) (puts []store.Put, fresh bool, err error) {
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

// takePhotos keeps the bytes of new photos and returns their records. One that
// is here, or was taken off its tree here, stays as it is.
func (n *Notebook) takePhotos(ctx context.Context, c *Copy, done *Imported, what string) ([]store.Put, error) {
	var puts []store.Put
	for _, p := range c.Photos {
		key := photosKey(c.ID, p.Tree) + store.Segment(p.ID)
		if _, err := n.store.Get(ctx, key); err == nil {
			done.PhotosKept++
			continue
		} else if !errors.Is(err, store.ErrNotFound) {
			return nil, err
		}
		if err := n.takeBytes(ctx, c, p); err != nil {
			return nil, err
		}
		record, err := json.Marshal(p)
		if err != nil {
			return nil, err
		}
		puts = append(puts, store.Put{Key: key, What: what, Data: record})
		done.Photos++
	}
	return puts, nil
}

func (n *Notebook) takeBytes(ctx context.Context, c *Copy, p Photo) error {
	key := bytesKey(c.ID, p.ID)
	if _, err := n.store.Get(ctx, key); !errors.Is(err, store.ErrNotFound) {
		return err
	}
	data, err := c.PhotoBytes(ctx, p)
	if err != nil {
		return fmt.Errorf("photo %s of tree %s: %w", p.ID, p.Tree, err)
	}
	if _, err := pictureType(data); err != nil {
		return fmt.Errorf("photo %s of tree %s: %w", p.ID, p.Tree, err)
	}
	return store.Apply(ctx, n.store, n.now(), []store.Put{{Key: key, Data: data, Once: true}})
}

// AddTrees keeps new trees at the end of a site, all or none. An id that a
// tree has or had is refused.
func (n *Notebook) AddTrees(ctx context.Context, site string, e Edit, trees []survey.Tree) error {
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	order := 0
	for i := range s.Trees {
		order = max(order, s.Trees[i].Order)
	}
	var puts []store.Put
	for i := range trees {
		t := Tree{Order: order + 1 + i, Tree: trees[i]}
		put, err := n.putTree(s, &t, e.What)
		if err != nil {
			return err
		}
		if _, err := n.store.Get(ctx, put.Key); !errors.Is(err, store.ErrNotFound) {
			return errors.Join(fmt.Errorf("tree %q is on this site, or was and has been taken off; give it another id", t.ID), err)
		}
		puts = append(puts, put)
	}
	return n.apply(ctx, e, puts...)
}
