package notebook

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"

	"boughline/outing"
	"boughline/store"
)

// ErrNoOuting says that no outing has that id.
var ErrNoOuting = errors.New("there is no such outing")

// Still is a swing that hangs from a tree.
type Still struct {
	Version int    `json:"boughline_up"`
	Site    string `json:"site"`
	ID      string `json:"id"` // of the outing
	outing.Issue
}

// Outing reads an outing with all its events. What follows from them is worked
// out anew, or remembered: records of events are never changed.
func (n *Notebook) Outing(ctx context.Context, site, id string) (*outing.Outing, error) {
	key := outingKey(site, id)
	objects, err := store.List(ctx, n.store, eventsKey(site, id))
	if err != nil {
		return nil, err
	}
	n.mu.Lock()
	known := n.outings[key]
	n.mu.Unlock()
	if known == nil || len(known.Log.Events) > len(objects) {
		if known, err = n.openOuting(ctx, key, id); err != nil {
			return nil, err
		}
	}
	for _, o := range objects[len(known.Log.Events):] {
		var e outing.Event
		if err := json.Unmarshal(o.Data, &e); err != nil {
			return nil, &Damaged{Key: o.Key, Revision: o.Revision, Cause: err}
		}
		if known, err = known.Append(e); err != nil {
			return nil, &Damaged{Key: o.Key, Revision: o.Revision, Cause: err}
		}
	}
	n.mu.Lock()
	defer n.mu.Unlock()
	n.outings[key] = known
	return known, nil
}

// openOuting reads the record that an outing begins with.
func (n *Notebook) openOuting(ctx context.Context, key, id string) (*outing.Outing, error) {
	o, err := store.Get(ctx, n.store, key)
	if errors.Is(err, store.ErrNotFound) {
		return nil, fmt.Errorf("%q: %w", id, ErrNoOuting)
	}
	if err != nil {
		return nil, err
	}
	var l outing.Log
	if err := json.Unmarshal(o.Data, &l); err != nil {
		return nil, &Damaged{Key: key, Revision: o.Revision, Cause: err}
	}
	l.Events = nil
	opened, err := outing.Open(l, n.knowledge)
	if err != nil {
		return nil, &Damaged{Key: key, Revision: o.Revision, Cause: err}
	}
	return opened, nil
}

// StillUp lists the swings that hang, on all sites.
func (n *Notebook) StillUp(ctx context.Context) ([]Still, error) {
	objects, err := store.List(ctx, n.store, "up/")
	var list []Still
	for _, o := range objects {
		var u Still
		if json.Unmarshal(o.Data, &u) == nil && u.Version == 1 {
			list = append(list, u)
		}
	}
	return list, err
}

// hangsAlready refuses where the same hang is up from another outing.
func (n *Notebook) hangsAlready(ctx context.Context, site, id, hang string) error {
	up, err := n.StillUp(ctx)
	if err != nil {
		return err
	}
	for _, u := range up {
		if u.Site == site && u.Hang == hang && u.ID != id {
			return &HangsAlready{u}
		}
	}
	return nil
}

// HangsAlready says that a hang is up from an earlier outing.
type HangsAlready struct{ Still }

// Error implements error.
func (h *HangsAlready) Error() string {
	return fmt.Sprintf("%s is still up from the card of %s: take it down and write that down first", h.Hang, h.Issue.At.Format("2 January 15:04"))
}
