package notebook

import (
	"fmt"
	"math"
	"strings"

	"boughline/assess"
	"boughline/survey"
)

// outcome is what follows for the hangs of a tree, with the revisions it was
// worked out from.
type outcome struct {
	from       string
	assessment assess.Assessment
	err        error
}

// mostOutcomes bounds how many are remembered.
const mostOutcomes = 2000

// reach is how far from a tree another one may stand and still come down where
// its people are, m: the tallest tree that a survey takes, and the people's
// own distance from the stem. nearBy is how far its wood and its swings may
// matter to a swing here, m.
const (
	reach  = 130 + 60
	nearBy = 60
)

// Outcomes works out what follows for the hangs of one tree among its
// neighbours, or remembers it.
func (n *Notebook) Outcomes(s *Site, t *Tree) (assess.Assessment, error) {
	if o, ok := n.Known(s, t); ok {
		return o, nil
	}
	around := s.around(t)
	among := s.among(around)
	o := outcome{from: s.from(around)}
	o.assessment, o.err = assess.AssessTree(&among, n.knowledge, t.ID)
	n.mu.Lock()
	defer n.mu.Unlock()
	if len(n.outcomes) >= mostOutcomes {
		clear(n.outcomes)
	}
	n.outcomes[treeKey(s.ID, t.ID)] = o
	return o.assessment, o.err
}

// Known returns the outcomes of a tree where they were worked out from just
// these revisions.
func (n *Notebook) Known(s *Site, t *Tree) (assess.Assessment, bool) {
	from := s.from(s.around(t))
	n.mu.Lock()
	defer n.mu.Unlock()
	o, ok := n.outcomes[treeKey(s.ID, t.ID)]
	return o.assessment, ok && o.from == from && o.err == nil
}

// around is the tree and those that matter to its hangs: near by for their wood
// and their swings, farther off for findings that could come down.
func (s *Site) around(t *Tree) []*Tree {
	list := []*Tree{t}
	for i := range s.Trees {
		other := &s.Trees[i]
		if other == t {
			continue
		}
		if apart := distance(&t.Tree, &other.Tree); apart <= nearBy || apart <= reach && len(other.Findings) > 0 {
			list = append(list, other)
		}
	}
	return list
}

// among is the site with some of its trees.
func (s *Site) among(trees []*Tree) survey.Survey {
	some := s.Head
	some.Trees = nil
	for _, t := range trees {
		some.Trees = append(some.Trees, t.Tree)
	}
	return some
}

// distance is without end where the place of either is not known.
func distance(a, b *survey.Tree) float64 {
	if a.East == nil || a.North == nil || b.East == nil || b.North == nil {
		return math.Inf(1)
	}
	return math.Hypot(float64(a.East.Value-b.East.Value), float64(a.North.Value-b.North.Value))
}

// from names the revisions of the head and of trees.
func (s *Site) from(trees []*Tree) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%d", s.Revision)
	for _, t := range trees {
		fmt.Fprintf(&b, " %s@%d", t.ID, t.Revision)
	}
	return b.String()
}

// Try works out what would follow for a tree with a change that is not kept.
// Problems say why it cannot be tried.
func (n *Notebook) Try(s *Site, t *Tree, change func(*Tree) error) (assess.Assessment, error) {
	tried, err := t.clone()
	if err != nil {
		return assess.Assessment{}, err
	}
	if err := change(&tried); err != nil {
		return assess.Assessment{}, err
	}
	alone := s.alone(&tried)
	if problems := n.problems(&alone); len(problems) > 0 {
		return assess.Assessment{}, &Invalid{problems}
	}
	around := s.around(t)
	around[0] = &tried
	among := s.among(around)
	return assess.AssessTree(&among, n.knowledge, tried.ID)
}
