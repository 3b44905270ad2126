package notebook

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"time"

	"boughline/store"
)

// MaxPhoto is the greatest photo that is taken, bytes.
const MaxPhoto = 40 << 20

// Photo is a picture of a tree.
type Photo struct {
	Version int       `json:"boughline_photo"`
	ID      string    `json:"id"`
	Tree    string    `json:"tree"`
	Finding string    `json:"finding,omitempty"` // of what, where it is of one finding
	At      time.Time `json:"at"`
	// Taken is the time of the camera's clock, where the picture says one.
	Taken time.Time `json:"taken,omitzero"`
	Type  string    `json:"type"`
	Note  string    `json:"note,omitempty"`
}

// photoTypes are the kinds of picture that every browser shows.
var photoTypes = map[string]bool{"image/jpeg": true, "image/png": true, "image/webp": true, "image/gif": true}

// NotAPhoto says that bytes are no picture that can be kept.
type NotAPhoto struct{ Fault string }

// Error implements error.
func (e *NotAPhoto) Error() string { return "the photo was not kept: " + e.Fault }

// AddPhoto keeps a picture as it is, with its tree.
func (n *Notebook) AddPhoto(ctx context.Context, site string, e Edit, p Photo, data []byte) error {
	var err error
	if p.Type, err = pictureType(data); err != nil {
		return err
	}
	p.Version, p.At = 1, n.now()
	record, err := json.Marshal(p)
	if err != nil {
		return err
	}
	return n.apply(ctx, e,
		store.Put{Key: bytesKey(site, p.ID), Data: data, Once: true},
		store.Put{Key: photosKey(site, p.Tree) + store.Segment(p.ID), What: e.What, Data: record})
}

// pictureType refuses bytes that are no picture, whatever a file says of them:
// a browser would show them as what they are.
func pictureType(data []byte) (string, error) {
	switch {
	case len(data) == 0:
		return "", &NotAPhoto{"no bytes of it arrived; take it again"}
	case len(data) > MaxPhoto:
		return "", &NotAPhoto{fmt.Sprintf("it has %d MB; at most %d MB can be kept: send a smaller one", len(data)>>20, MaxPhoto>>20)}
	}
	kind := http.DetectContentType(data)
	if !photoTypes[kind] {
		return "", &NotAPhoto{fmt.Sprintf("it is of the type %s; expected JPEG, PNG, WebP or GIF", kind)}
	}
	return kind, nil
}

// Photos lists the pictures of a tree in the order of their ids. Records that
// cannot be read are left out; their bytes stay.
func (n *Notebook) Photos(ctx context.Context, site, tree string) ([]Photo, error) {
	objects, err := store.List(ctx, n.store, photosKey(site, tree))
	if err != nil {
		return nil, err
	}
	var list []Photo
	for _, o := range objects {
		var p Photo
		if json.Unmarshal(o.Data, &p) == nil && p.Version == 1 {
			list = append(list, p)
		}
	}
	return list, nil
}

// PhotoBytes reads a picture.
func (n *Notebook) PhotoBytes(ctx context.Context, site, photo string) ([]byte, error) {
	o, err := store.Get(ctx, n.store, bytesKey(site, photo))
	return o.Data, err
}

// DeletePhoto takes a picture off its tree. Its bytes stay kept.
func (n *Notebook) DeletePhoto(ctx context.Context, site, tree, photo string, e Edit) error {
	o, err := store.Get(ctx, n.store, photosKey(site, tree)+store.Segment(photo))
	if err != nil {
		return err
	}
	return n.apply(ctx, e, store.Put{Key: o.Key, Rests: o.Revision, What: e.What, Gone: true})
}
