package notebook

import "boughline/survey"

// Near is the site with one tree and those that matter to its hangs, as a
// document: what is worked out on demand sees the same trees as its outcome.
func (s *Site) Near(t *Tree) *survey.Survey {
	near := s.among(s.around(t))
	return &near
}
