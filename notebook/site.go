package notebook

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"boughline/store"
	"boughline/survey"
)

// Site is a site with all its trees.
type Site struct {
	ID       string
	Revision int           // of the head
	What     string        // what made it
	Head     survey.Survey // without trees
	Trees    []Tree        // in their order on the site
	Damaged  []*Damaged    // records of trees that cannot be read
}

// Entry is one line of the list of sites.
type Entry struct {
	ID, Name string
	Day      survey.Date
	Damaged  error
}

// Sites lists all sites by name.
func (n *Notebook) Sites(ctx context.Context) ([]Entry, error) {
	heads, err := store.List(ctx, n.store, "site/")
	if err != nil {
		return nil, err
	}
	var list []Entry
	for _, o := range heads {
		id := unsegment(strings.TrimPrefix(o.Key, "site/"))
		e := Entry{ID: id, Name: id}
		if head, err := decodeHead(o.Data); err != nil {
			e.Damaged = err
		} else {
			e.Name, e.Day = head.Site, head.Day
		}
		list = append(list, e)
	}
	slices.SortStableFunc(list, func(a, b Entry) int { return cmp.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name)) })
	return list, nil
}

// Site reads a site with its trees. A tree that cannot be read stands among
// the damaged ones and hides no other.
func (n *Notebook) Site(ctx context.Context, id string) (*Site, error) {
	o, err := store.Get(ctx, n.store, siteKey(id))
	if errors.Is(err, store.ErrNotFound) {
		return nil, fmt.Errorf("%q: %w", id, ErrNoSite)
	}
	if err != nil {
		return nil, err
	}
	head, err := decodeHead(o.Data)
	if err != nil {
		return nil, &Damaged{Key: o.Key, Revision: o.Revision, Cause: err}
	}
	s := &Site{ID: id, Revision: o.Revision, What: o.What, Head: *head}
	objects, err := store.List(ctx, n.store, treesKey(id))
	if err != nil {
		return nil, err
	}
	for _, o := range objects {
		t, err := n.decode(o)
		if err != nil {
			s.Damaged = append(s.Damaged, damagedTree(o, err))
			continue
		}
		s.Trees = append(s.Trees, t)
	}
	slices.SortStableFunc(s.Trees, func(a, b Tree) int {
		return cmp.Or(cmp.Compare(a.Order, b.Order), cmp.Compare(a.ID, b.ID))
	})
	return s, nil
}

func damagedTree(o store.Object, cause error) *Damaged {
	last := o.Key[strings.LastIndexByte(o.Key, '/')+1:]
	return &Damaged{Key: o.Key, Tree: unsegment(last), Revision: o.Revision, Cause: cause}
}

// decode reads a record of a tree, or remembers it from before. What it
// returns is shared and must not be changed.
func (n *Notebook) decode(o store.Object) (Tree, error) {
	n.mu.Lock()
	known, ok := n.decoded[o.Key]
	n.mu.Unlock()
	if ok && known.Revision == o.Revision && known.At.Equal(o.At) {
		return known, nil
	}
	t, err := decodeTree(o)
	if err != nil {
		return Tree{}, err
	}
	n.mu.Lock()
	defer n.mu.Unlock()
	n.decoded[o.Key] = t
	return t, nil
}

// Tree finds a tree of the site.
func (s *Site) Tree(id string) (*Tree, error) {
	for i := range s.Trees {
		if s.Trees[i].ID == id {
			return &s.Trees[i], nil
		}
	}
	for _, d := range s.Damaged {
		if d.Tree == id {
			return nil, d
		}
	}
	return nil, fmt.Errorf("%q: %w", id, ErrNoTree)
}

// Survey is the whole site as one document.
func (s *Site) Survey() *survey.Survey {
	whole := s.Head
	whole.Trees = nil
	whole.Lines, _ = s.standing()
	for i := range s.Trees {
		whole.Trees = append(whole.Trees, s.Trees[i].Tree)
	}
	return &whole
}

// unsegment turns a part of a key back into text.
func unsegment(part string) string {
	var b strings.Builder
	for i := 0; i < len(part); i++ {
		var c byte
		if part[i] == '_' && i+2 < len(part) {
			if _, err := fmt.Sscanf(part[i+1:i+3], "%02x", &c); err == nil {
				b.WriteByte(c)
				i += 2
				continue
			}
		}
		b.WriteByte(part[i])
	}
	return b.String()
}
