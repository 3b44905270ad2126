package notebook

import (
	"slices"

	"boughline/survey"
)

// Near is the site with one tree and those that matter to its hangs, as a
// document: what is worked out on demand sees the same trees as its outcome.
// Lines stand in it with all the trees that hold them, or not at all.
func (s *Site) Near(t *Tree) *survey.Survey {
	trees := s.around(t)
	_, others := s.linesOn(t.ID)
	for _, other := range others {
		if !slices.ContainsFunc(trees, func(t *Tree) bool { return t.ID == other.ID }) {
			held, _ := s.Tree(other.ID) // it was found there
			trees = append(trees, held)
		}
	}
	near := s.among(trees)
	near.Lines = slices.DeleteFunc(slices.Clone(near.Lines), func(l survey.Line) bool {
		return slices.ContainsFunc(l.Ends, func(e survey.LineEnd) bool {
			return !slices.ContainsFunc(trees, func(t *Tree) bool { return t.ID == e.Tree })
		})
	})
	return &near
}
