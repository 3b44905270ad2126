package notebook

import (
	"context"
	"fmt"
	"slices"

	"boughline/store"
	"boughline/survey"
)

// RenameChain gives a chain of a site another name, in the chain itself and in
// every hang that is put up with it, all of it or nothing.
func (n *Notebook) RenameChain(ctx context.Context, site, from, to string, e Edit) error {
	if err := n.taken(ctx, e); err != nil {
		return err
	}
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	if e.Base != 0 && e.Base != s.Revision {
		return &store.Conflict{Key: siteKey(site), Rests: e.Base, Found: s.Revision}
	}
	whole := s.Survey()
	whole.Chains = slices.Clone(whole.Chains)
	at := slices.IndexFunc(whole.Chains, func(c survey.Chain) bool { return c.ID == from })
	if at < 0 {
		return fmt.Errorf("chain %q: %w", from, ErrNoChain)
	}
	whole.Chains[at].ID = to
	var trees []store.Put
	for i := range s.Trees {
		put, changed, err := renamedChain(s, &s.Trees[i], from, to, e.What)
		if err != nil {
			return err
		}
		if changed != nil {
			whole.Trees[i], trees = changed.Tree, append(trees, put)
		}
	}
	if problems := n.problems(whole); len(problems) > 0 {
		return &Invalid{problems}
	}
	data, err := encodeHead(whole)
	if err != nil {
		return err
	}
	return n.apply(ctx, e, append([]store.Put{{Key: siteKey(site), Rests: s.Revision, What: e.What, Data: data}}, trees...)...)
}

// renamedChain is a tree whose hangs name the chain anew, nil where none does.
func renamedChain(s *Site, t *Tree, from, to, what string) (store.Put, *Tree, error) {
	if !slices.ContainsFunc(t.Hangs, func(h survey.Hang) bool { return h.Chain == from }) {
		return store.Put{}, nil, nil
	}
	changed, err := t.clone()
	if err != nil {
		return store.Put{}, nil, err
	}
	for i := range changed.Hangs {
		if changed.Hangs[i].Chain == from {
			changed.Hangs[i].Chain = to
		}
	}
	data, err := encodeTree(&changed)
	return store.Put{Key: treeKey(s.ID, t.ID), Rests: t.Revision, What: what, Data: data}, &changed, err
}
