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
// own distance from the stem.
const reach = 130 + 60

// Outcomes works out what follows for the hangs of one tree among its
// neighbours, or remembers it.
func (n *Notebook) Outcomes(s *Site, t *Tree) (assess.Assessment, error) {
	if o, ok := n.Known(s, t); ok {
		return o, nil
	}
	around := s.around(t)
	alone := s.Head
	for _, tree := range around {
		alone.Trees = append(alone.Trees, tree.Tree)
		if tree != t {
			alone.Trees[len(alone.Trees)-1].Hangs = nil
		}
	}
	o := outcome{from: s.from(around)}
	o.assessment, o.err = assess.Assess(&alone, n.knowledge)
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

// around is the tree and those with findings that could reach its people. A
// neighbour without findings changes nothing.
func (s *Site) around(t *Tree) []*Tree {
	list := []*Tree{t}
	for i := range s.Trees {
		other := &s.Trees[i]
		if other != t && len(other.Findings) > 0 && near(&t.Tree, &other.Tree) {
			list = append(list, other)
		}
	}
	return list
}

func near(a, b *survey.Tree) bool {
	if a.East == nil || a.North == nil || b.East == nil || b.North == nil {
		return false
	}
	return math.Hypot(float64(a.East.Value-b.East.Value), float64(a.North.Value-b.North.Value)) <= reach
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
	alone := s.Head
	alone.Trees = []survey.Tree{tried.Tree}
	if problems := n.problems(&alone); len(problems) > 0 {
		return assess.Assessment{}, &Invalid{problems}
	}
	return assess.Assess(&alone, n.knowledge)
}
