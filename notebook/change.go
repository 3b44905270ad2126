package notebook

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"

	"boughline/assess"
	"boughline/store"
	"boughline/survey"
)

// Edit says what a change is about.
type Edit struct {
	// Form is the random id of the form; a second change with it is refused
	// with *Again. Empty for none.
	Form string
	To   string // the page that the form leads to
	// Base is the revision that the person saw, 0 to compare with none.
	Base int
	What string // what is changed, for the history
	// Part picks what is edited, for comparing; nil stands for the whole.
	Part func(*Tree) any
}

// AddSite keeps a new site.
func (n *Notebook) AddSite(ctx context.Context, id string, e Edit, head *survey.Survey) error {
	if problems := n.problems(head); len(problems) > 0 {
		return &Invalid{problems}
	}
	data, err := encodeHead(head)
	if err != nil {
		return err
	}
	return n.apply(ctx, e, store.Put{Key: siteKey(id), What: e.What, Data: data})
}

// ChangeSite changes the head of a site. The site must stay right with all
// its trees.
func (n *Notebook) ChangeSite(ctx context.Context, id string, e Edit, change func(*survey.Survey) error) error {
	if err := n.taken(ctx, e); err != nil {
		return err
	}
	site, err := n.Site(ctx, id)
	if err != nil {
		return err
	}
	if e.Base != 0 && e.Base != site.Revision {
		return &store.Conflict{Key: siteKey(id), Rests: e.Base, Found: site.Revision}
	}
	whole := site.Survey()
	if err := change(whole); err != nil {
		return err
	}
	if problems := n.problems(whole); len(problems) > 0 {
		return &Invalid{problems}
	}
	_, hidden := site.standing()
	whole.Lines = append(whole.Lines, hidden...)
	data, err := encodeHead(whole)
	if err != nil {
		return err
	}
	return n.apply(ctx, e, store.Put{Key: siteKey(id), Rests: site.Revision, What: e.What, Data: data})
}

// AddTree keeps a new tree at the end of a site.
func (n *Notebook) AddTree(ctx context.Context, site string, e Edit, t Tree) error {
	if err := n.taken(ctx, e); err != nil {
		return err
	}
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	t.Order = 1
	for i := range s.Trees {
		t.Order = max(t.Order, s.Trees[i].Order+1)
	}
	put, err := n.putTree(s, &t, e.What)
	if err != nil {
		return err
	}
	before, err := store.Get(ctx, n.store, put.Key)
	if err != nil && !errors.Is(err, store.ErrNotFound) {
		return err
	}
	put.Rests = before.Revision
	if err == nil {
		return &store.Conflict{Key: put.Key, Found: before.Revision}
	}
	return n.apply(ctx, e, put)
}

// ChangeTree lays a change on the newest version of a tree.
func (n *Notebook) ChangeTree(ctx context.Context, site, tree string, e Edit, change func(*Tree) error) error {
	if err := n.taken(ctx, e); err != nil {
		return err
	}
	s, err := n.Site(ctx, site)
	if err != nil {
		return err
	}
	base, err := n.base(ctx, site, tree, e)
	if err != nil {
		return err
	}
	key := treeKey(site, tree)
	return n.again(ctx, e, store.Update(ctx, n.store, n.now(), key, func(o store.Object) ([]store.Put, error) {
		if o.Revision == 0 || o.Gone {
			return nil, fmt.Errorf("%q: %w", tree, ErrNoTree)
		}
		now, err := decodeTree(o)
		if err != nil {
			return nil, damagedTree(o, err)
		}
		if base != nil && !samePart(e.Part, base, &now) {
			return nil, &Changed{Before: *base, Now: now}
		}
		if err := change(&now); err != nil {
			return nil, err
		}
		put, err := n.putTree(s, &now, e.What)
		put.Rests = o.Revision
		return n.withForm(e, put), err
	}))
}

// base is the version that the person saw, nil where it is the newest anyway
// or nobody asks.
func (n *Notebook) base(ctx context.Context, site, tree string, e Edit) (*Tree, error) {
	if e.Base == 0 {
		return nil, nil
	}
	t, err := n.Version(ctx, site, tree, e.Base)
	if errors.Is(err, store.ErrNotFound) {
		return nil, nil
	}
	return &t, err
}

func samePart(part func(*Tree) any, a, b *Tree) bool {
	if part == nil {
		part = func(t *Tree) any { return t.Tree }
	}
	x, errX := json.Marshal(part(a))
	y, errY := json.Marshal(part(b))
	return errX == nil && errY == nil && string(x) == string(y)
}

// putTree checks a tree with the head of its site.
func (n *Notebook) putTree(s *Site, t *Tree, what string) (store.Put, error) {
	alone := s.alone(t)
	if problems := n.problems(&alone); len(problems) > 0 {
		return store.Put{}, &Invalid{problems}
	}
	data, err := encodeTree(t)
	return store.Put{Key: treeKey(s.ID, t.ID), What: what, Data: data}, err
}

// problems are all those of a survey, of its form and of its names.
func (n *Notebook) problems(s *survey.Survey) []survey.Problem {
	if problems := survey.Validate(s); len(problems) > 0 {
		return problems
	}
	return assess.Problems(s, n.knowledge)
}

func (n *Notebook) apply(ctx context.Context, e Edit, puts ...store.Put) error {
	return n.again(ctx, e, store.Apply(ctx, n.store, n.now(), n.withForm(e, puts...)))
}

// withForm adds the record of a form, which can be written once only.
func (n *Notebook) withForm(e Edit, puts ...store.Put) []store.Put {
	if e.Form == "" {
		return puts
	}
	return append([]store.Put{{Key: formKey(e.Form), What: e.What, Data: []byte(e.To), Once: true}}, puts...)
}

// taken returns *Again for a form that was taken before.
func (n *Notebook) taken(ctx context.Context, e Edit) error {
	if e.Form == "" {
		return nil
	}
	o, err := n.store.Get(ctx, formKey(e.Form))
	switch {
	case err == nil:
		return &Again{To: string(o.Data)}
	case errors.Is(err, store.ErrNotFound):
		return nil
	}
	return err
}

// again tells a form that was taken at the same moment from other conflicts.
func (n *Notebook) again(ctx context.Context, e Edit, err error) error {
	var conflict *store.Conflict
	if errors.As(err, &conflict) && e.Form != "" && conflict.Key == formKey(e.Form) {
		return n.taken(ctx, e)
	}
	return err
}
