package notebook

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"boughline/register"
	"boughline/store"
	"boughline/survey"
)

// gearKey is where the register of gear lies: one in each notebook.
const gearKey = "gear/register"

// Gear is the register of gear as it is kept.
type Gear struct {
	Revision int // 0 where none was ever kept
	At       time.Time
	What     string
	register.Register
}

// Gear reads the register; an empty one where none is kept.
func (n *Notebook) Gear(ctx context.Context) (*Gear, error) {
	o, err := store.Get(ctx, n.store, gearKey)
	if errors.Is(err, store.ErrNotFound) {
		return &Gear{Register: register.Register{Version: register.Version}}, nil
	}
	if err != nil {
		return nil, err
	}
	return decodeGear(o)
}

func decodeGear(o store.Object) (*Gear, error) {
	r, problems, err := register.Read(bytes.NewReader(o.Data))
	if err == nil && len(problems) > 0 {
		err = &Invalid{problems}
	}
	if err != nil {
		return nil, &Damaged{Key: o.Key, Revision: o.Revision, Cause: err}
	}
	return &Gear{Revision: o.Revision, At: o.At, What: o.What, Register: *r}, nil
}

// ChangeGear lays a change on the newest register. Where item is named and
// e.Base is the revision that the person saw, the change is refused with a
// *store.Conflict if that item was changed since; other items may have been.
func (n *Notebook) ChangeGear(ctx context.Context, e Edit, item string, change func(register.Register) (register.Register, error)) error {
	if err := n.taken(ctx, e); err != nil {
		return err
	}
	return n.again(ctx, e, store.Update(ctx, n.store, n.now(), gearKey, func(o store.Object) ([]store.Put, error) {
		now := &Gear{Register: register.Register{Version: register.Version}}
		if o.Revision > 0 {
			var err error
			if now, err = decodeGear(o); err != nil {
				return nil, err
			}
		}
		if err := n.sameItem(ctx, e, item, now); err != nil {
			return nil, err
		}
		changed, err := change(now.Register)
		if err != nil {
			return nil, err
		}
		put, err := putGear(changed, o.Revision, e.What)
		return n.withForm(e, put), err
	}))
}

// sameItem refuses a change of an item that somebody else changed since it was
// opened.
func (n *Notebook) sameItem(ctx context.Context, e Edit, id string, now *Gear) error {
	if id == "" || e.Base == 0 || e.Base == now.Revision {
		return nil
	}
	then, err := n.GearVersion(ctx, e.Base)
	if err != nil {
		return err
	}
	a, errA := then.Item(id)
	b, errB := now.Item(id)
	x, errX := json.Marshal(a)
	y, errY := json.Marshal(b)
	if err := errors.Join(errX, errY); err != nil {
		return err
	}
	if (errA == nil) != (errB == nil) || string(x) != string(y) {
		return &store.Conflict{Key: gearKey, Rests: e.Base, Found: now.Revision}
	}
	return nil
}

func putGear(r register.Register, rests int, what string) (store.Put, error) {
	if problems := r.Validate(); len(problems) > 0 {
		return store.Put{}, &Invalid{problems}
	}
	var b bytes.Buffer
	err := r.Write(&b)
	return store.Put{Key: gearKey, Rests: rests, What: what, Data: b.Bytes()}, err
}

// ImportGear takes in a register as a file: see register.Merged.
func (n *Notebook) ImportGear(ctx context.Context, data []byte, e Edit) error {
	r, problems, err := register.Read(bytes.NewReader(data))
	if err != nil {
		return err
	}
	if len(problems) > 0 {
		return &Invalid{problems}
	}
	return n.ChangeGear(ctx, e, "", func(now register.Register) (register.Register, error) {
		merged, err := now.Merged(*r)
		if err != nil {
			err = &Invalid{[]survey.Problem{{Code: survey.CodeDuplicateID, Path: "items", Fault: err.Error(),
				Expected: "the same gear under the same ids", Do: "rename the item in the file or here; nothing was changed"}}}
		}
		return merged, err
	})
}

// GearVersions lists what is kept of the register, the newest first. A version
// that cannot be read has a What and no version of its document.
func (n *Notebook) GearVersions(ctx context.Context) ([]Gear, error) {
	objects, err := store.Versions(ctx, n.store, gearKey)
	if err != nil {
		return nil, err
	}
	list := make([]Gear, len(objects))
	for i, o := range objects {
		g, err := decodeGear(o)
		if err != nil {
			g = &Gear{Revision: o.Revision, At: o.At, What: o.What}
		}
		list[i] = *g
	}
	return list, nil
}

// GearVersion reads one version of the register.
func (n *Notebook) GearVersion(ctx context.Context, revision int) (*Gear, error) {
	o, err := store.Version(ctx, n.store, gearKey, revision)
	if err != nil {
		return nil, err
	}
	return decodeGear(o)
}

// RestoreGear makes an earlier version the newest one; what stood before stays
// a version. It is how a slip is undone, a wrong retirement among them.
func (n *Notebook) RestoreGear(ctx context.Context, revision int, e Edit) error {
	earlier, err := n.GearVersion(ctx, revision)
	if err != nil {
		return err
	}
	newest, err := store.Get(ctx, n.store, gearKey)
	if err != nil {
		return fmt.Errorf("restoring the register of gear: %w", err)
	}
	put, err := putGear(earlier.Register, newest.Revision, e.What)
	if err != nil {
		return err
	}
	return n.apply(ctx, e, put)
}
