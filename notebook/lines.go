package notebook

import (
	"fmt"
	"slices"

	"boughline/assess"
	"boughline/survey"
)

// Line works out what follows for one line of a site, among the trees that hold
// it and those around them, or remembers it.
func (n *Notebook) Line(s *Site, id string) (assess.Line, error) {
	i := slices.IndexFunc(s.Head.Lines, func(l survey.Line) bool { return l.ID == id })
	if i < 0 {
		return assess.Line{}, fmt.Errorf("%q is no line of this site", id)
	}
	around := s.aroundLine(&s.Head.Lines[i])
	key, from := "line/"+siteKey(s.ID)+"/"+id, s.from(around)
	n.mu.Lock()
	known, ok := n.outcomes[key]
	n.mu.Unlock()
	if !ok || known.from != from {
		known = outcome{from: from}
		among := s.among(around)
		known.assessment.Lines, known.err = assess.AssessLines(&among, n.knowledge)
		n.mu.Lock()
		n.outcomes[key] = known
		n.mu.Unlock()
	}
	if known.err != nil {
		return assess.Line{}, known.err
	}
	return known.assessment.Lines[i], nil
}

// aroundLine lists the trees of a line and those that matter to it.
func (s *Site) aroundLine(l *survey.Line) []*Tree {
	var list []*Tree
	for i := range s.Trees {
		t := &s.Trees[i]
		if !slices.ContainsFunc(l.Ends, func(e survey.LineEnd) bool { return e.Tree == t.ID }) {
			continue
		}
		for _, other := range s.around(t) {
			if !slices.Contains(list, other) {
				list = append(list, other)
			}
		}
	}
	return list
}

// alone is the site with one tree, and with the lines that hang on it.
func (s *Site) alone(t *Tree) survey.Survey {
	alone := s.Head
	var others []survey.Tree
	alone.Lines, others = s.linesOn(t.ID)
	alone.Trees = append([]survey.Tree{t.Tree}, others...)
	return alone
}

// linesOn are the lines of a site that hang on a tree and on no tree that is not
// there, with the other trees that hold them.
func (s *Site) linesOn(tree string) (lines []survey.Line, others []survey.Tree) {
	for _, l := range s.Head.Lines {
		if !slices.ContainsFunc(l.Ends, func(e survey.LineEnd) bool { return e.Tree == tree }) {
			continue
		}
		held := true
		for _, e := range l.Ends {
			if e.Tree == tree || slices.ContainsFunc(others, func(t survey.Tree) bool { return t.ID == e.Tree }) {
				continue
			}
			other, err := s.Tree(e.Tree)
			if held = held && err == nil; err == nil {
				others = append(others, other.Tree)
			}
		}
		if held {
			lines = append(lines, l)
		}
	}
	return lines, others
}

// standing are the lines whose trees are all there, and hidden the others: with
// a deleted tree its lines are out of sight until it is brought back.
func (s *Site) standing() (standing, hidden []survey.Line) {
	for _, l := range s.Head.Lines {
		gone := func(e survey.LineEnd) bool {
			_, err := s.Tree(e.Tree)
			return err != nil
		}
		if slices.ContainsFunc(l.Ends, gone) {
			hidden = append(hidden, l)
		} else {
			standing = append(standing, l)
		}
	}
	return standing, hidden
}
