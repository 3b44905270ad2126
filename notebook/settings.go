package notebook

import (
	"context"
	"encoding/json"
	"errors"

	"boughline/store"
)

// Settings are those of one device.
type Settings struct {
	Units string `json:"units,omitempty"` // metric or feet
	Ink   string `json:"ink,omitempty"`   // as the device says, light, dark or sun
	Name  string `json:"name,omitempty"`  // who surveys
	// Pace is the length of one step, m; 0 where nobody has counted theirs.
	Pace float64 `json:"pace_m,omitempty"`
}

const settingsKey = "settings/device"

// Settings reads those of this device; the zero value where none are kept or
// they cannot be read.
func (n *Notebook) Settings(ctx context.Context) Settings {
	var s Settings
	if o, err := store.Get(ctx, n.store, settingsKey); err == nil {
		if json.Unmarshal(o.Data, &s) != nil {
			return Settings{}
		}
	}
	return s
}

// ChangeSettings keeps those of this device.
func (n *Notebook) ChangeSettings(ctx context.Context, s Settings) error {
	data, err := json.Marshal(s)
	if err != nil {
		return err
	}
	err = store.Update(ctx, n.store, n.now(), settingsKey, func(o store.Object) ([]store.Put, error) {
		return []store.Put{{Key: settingsKey, Rests: o.Revision, What: "settings", Data: data}}, nil
	})
	var conflict *store.Conflict
	if errors.As(err, &conflict) {
		return nil // another tab was quicker, just now
	}
	return err
}
