package store

import (
	"context"
	"errors"
	"fmt"
	"time"
)

// Object is what lies under one key.
type Object struct {
	Key string
	// Revision counts the writes of the key from 1 on; 0 is that of a key
	// under which nothing was ever written.
	Revision int
	At       time.Time // when it was written, to the millisecond
	What     string    // what was changed, for people
	Gone     bool      // it was deleted with this revision
	Data     []byte
}

// Write puts an object in place of the revision before it.
type Write struct{ Object }

// rests is the revision that the write rests on.
func (w Write) rests() int { return w.Revision - 1 }

// Backend keeps objects. Its methods may be called from several goroutines.
type Backend interface {
	// Get returns the object under a key, ErrNotFound where there is none.
	Get(ctx context.Context, key string) (Object, error)
	// List returns the objects whose keys begin with prefix, in the order of
	// their keys.
	List(ctx context.Context, prefix string) ([]Object, error)
	// Apply writes all objects or none. It returns a *Conflict where one of
	// them does not have the revision after the one that is kept.
	Apply(ctx context.Context, batch []Write) error
	Close() error
}

// ErrNotFound says that nothing lies under a key.
var ErrNotFound = errors.New("nothing is kept under this key")

// ErrFull says that the disk or the browser's share of it is full.
var ErrFull = errors.New("there is no room left on this device; free some and try again, what was kept before is still there")

// Conflict says that a batch rests on a revision which is not the newest.
type Conflict struct {
	Key          string
	Rests, Found int
}

// Error implements error.
func (c *Conflict) Error() string {
	return fmt.Sprintf("%s: the write rests on revision %d, but revision %d is kept; read it again and repeat the change", c.Key, c.Rests, c.Found)
}

// Check compares a write with the revision that is kept; backends call it
// inside their transaction.
func (w Write) Check(found int) error {
	if w.rests() != found {
		return &Conflict{Key: w.Key, Rests: w.rests(), Found: found}
	}
	return nil
}
