package notebook

import (
	"context"
	"errors"
	"fmt"

	"boughline/store"
	"boughline/survey"
)

// Versions lists what is kept of a tree, the newest first. Versions that
// cannot be read have a What and no members.
func (n *Notebook) Versions(ctx context.Context, site, tree string) ([]Tree, error) {
	objects, err := store.Versions(ctx, n.store, treeKey(site, tree))
	if err != nil {
		return nil, err
	}
	if len(objects) == 0 {
		return nil, fmt.Errorf("%q: %w", tree, ErrNoTree)
	}
	list := make([]Tree, len(objects))
	for i, o := range objects {
		t, err := decodeTree(o)
		if err != nil {
			t = Tree{Revision: o.Revision, At: o.At, What: o.What}
		}
		list[i] = t
	}
	return list, nil
}

// Version reads one version of a tree.
func (n *Notebook) Version(ctx context.Context, site, tree string, revision int) (Tree, error) {
	o, err := store.Version(ctx, n.store, treeKey(site, tree), revision)
	if err != nil {
		return Tree{}, err
	}
	t, err := decodeTree(o)
	if err != nil {
		return Tree{}, damagedTree(o, err)
	}
	return t, nil
}

// Restore makes an earlier version the newest one; what stood before stays a
// version. It also mends a record that cannot be read and brings back a
// deleted tree.
func (n *Notebook) Restore(ctx context.Context, site, tree string, revision int, e Edit) error {
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	earlier, err := n.Version(ctx, site, tree, revision)
	if err != nil {
		return err
	}
	put, err := n.putTree(s, &earlier, e.What)
	if err != nil {
		return err
	}
	newest, err := store.Get(ctx, n.store, put.Key)
	if err != nil && !errors.Is(err, store.ErrNotFound) {
		return err
	}
	put.Rests = newest.Revision
	return n.apply(ctx, e, put)
}

// RestoreSite makes an earlier version of the head of a site the newest one; its
// trees stay as they are, and must be right with it. Where Edit.Base is not the newest
// revision somebody wrote in between, and nothing is changed.
func (n *Notebook) RestoreSite(ctx context.Context, site string, revision int, e Edit) error {
	o, err := store.Version(ctx, n.store, siteKey(site), revision)
	if err != nil {
		return err
	}
	earlier, err := decodeHead(o.Data)
	if err != nil {
		return &Damaged{Key: o.Key, Revision: o.Revision, Cause: err}
	}
	return n.ChangeSite(ctx, site, e, func(now *survey.Survey) error {
		trees := now.Trees
		*now = *earlier
		now.Trees = trees
		return nil
	})
}

// DeleteTree takes a tree off its site. Its versions stay.
func (n *Notebook) DeleteTree(ctx context.Context, site, tree string, e Edit) error {
	o, err := store.Get(ctx, n.store, treeKey(site, tree))
	if errors.Is(err, store.ErrNotFound) {
		return fmt.Errorf("%q: %w", tree, ErrNoTree)
	}
	if err != nil {
		return err
	}
	return n.apply(ctx, e, store.Put{Key: o.Key, Rests: o.Revision, What: e.What, Gone: true})
}

// Deleted lists the trees that were taken off a site.
func (n *Notebook) Deleted(ctx context.Context, site string) ([]string, error) {
	all, err := n.store.List(ctx, treesKey(site))
	var ids []string
	for _, o := range all {
		if o.Gone {
			ids = append(ids, damagedTree(o, nil).Tree)
		}
	}
	return ids, err
}
