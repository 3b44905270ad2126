package notebook

import (
	"boughline/assess"
	"boughline/survey"
)

// Figures hands out what drawings of one tree and its hangs show.
func (n *Notebook) Figures(s *Site, t *Tree) (*assess.Figures, error) {
	alone := s.Head
	alone.Trees = []survey.Tree{t.Tree}
	return assess.NewFigures(&alone, n.knowledge)
}
