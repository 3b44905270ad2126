package store

import (
	"context"
	"errors"
	"fmt"
	"time"
)

// Put is one change of a batch.
type Put struct {
	Key string
	// Rests is the revision that the change rests on, 0 for a new key.
	Rests int
	What  string
	Gone  bool
	Data  []byte
	// Once marks bytes that are written once and never changed, such as a
	// photo: no earlier version needs a place.
	Once bool
}

// versions is where the versions of keys lie.
const versions = "version/"

func versionKey(key string, revision int) string {
	return fmt.Sprintf("%s%s@%09d", versions, key, revision)
}

// Apply writes a batch, all of it or nothing, and keeps a version of each put.
func Apply(ctx context.Context, b Backend, at time.Time, batch []Put) error {
	var writes []Write
	for _, p := range batch {
		if err := CheckKey(p.Key); err != nil {
			return err
		}
		o := Object{Key: p.Key, Revision: p.Rests + 1, At: at.Truncate(time.Millisecond), What: p.What, Gone: p.Gone, Data: p.Data}
		writes = append(writes, Write{o})
		if p.Once {
			continue
		}
		o.Key, o.Revision = versionKey(p.Key, o.Revision), 1
		writes = append(writes, Write{o})
	}
	return b.Apply(ctx, writes)
}

// Get returns the newest version under a key. For a key that never was, and
// for a deleted one, it returns ErrNotFound; the object of a deleted key still
// has its revision.
func Get(ctx context.Context, b Backend, key string) (Object, error) {
	o, err := b.Get(ctx, key)
	if err == nil && o.Gone {
		return Object{Key: key, Revision: o.Revision, Gone: true}, fmt.Errorf("%s: %w", key, ErrNotFound)
	}
	return o, err
}

// List returns the newest versions of the keys with a prefix, those that are
// not deleted.
func List(ctx context.Context, b Backend, prefix string) ([]Object, error) {
	all, err := b.List(ctx, prefix)
	kept := all[:0]
	for _, o := range all {
		if !o.Gone {
			kept = append(kept, o)
		}
	}
	return kept, err
}

// Versions returns every version of a key, the newest first.
func Versions(ctx context.Context, b Backend, key string) ([]Object, error) {
	all, err := b.List(ctx, versions+key+"@")
	newest := make([]Object, len(all))
	for i, o := range all {
		o.Key, o.Revision = key, i+1
		newest[len(all)-1-i] = o
	}
	return newest, err
}

// Version returns one version of a key.
func Version(ctx context.Context, b Backend, key string, revision int) (Object, error) {
	o, err := b.Get(ctx, versionKey(key, revision))
	o.Key, o.Revision = key, revision
	return o, err
}

// Update reads a key, lets change work out the batch and writes it, once more
// where somebody else wrote in between. The object given to change has
// revision 0 where nothing lies under the key. change is pure: it may run
// several times.
func Update(ctx context.Context, b Backend, at time.Time, key string, change func(Object) ([]Put, error)) error {
	const tries = 8
	var err error
	for range tries {
		o, missing := Get(ctx, b, key)
		if missing != nil && !errors.Is(missing, ErrNotFound) {
			return missing
		}
		o.Key = key
		var batch []Put
		if batch, err = change(o); err != nil {
			return err
		}
		err = Apply(ctx, b, at, batch)
		var conflict *Conflict
		if !errors.As(err, &conflict) || conflict.Key != key {
			return err
		}
	}
	return err
}
