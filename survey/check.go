package survey

import "iter"

// checker holds the rules that a schema cannot say. Each rule stands in a file
// of its own and keeps silent about what is lost.
type checker struct {
	survey         *Survey
	lost           losses
	riders, chains targets
	problems       []Problem
}

// checkRules returns what is wrong with a survey whose fields are in form.
func checkRules(s *Survey, lost losses) []Problem {
	c := &checker{survey: s, lost: lost}
	c.riders = targetsOf(c, "group of riders", "riders", s.Riders, func(r *Riders) string { return r.ID })
	c.chains = targetsOf(c, "chain", "chains", s.Chains, func(h *Chain) string { return h.ID })
	c.checkSizes()
	c.checkSite()
	for at, tree := range items(c, "trees", s.Trees) {
		c.checkTree(at, tree)
	}
	c.checkLines()
	return c.problems
}

// checkSite holds the rules for what the trees share.
func (c *checker) checkSite() {
	s := c.survey
	checkNames(c, "trees", s.Trees, "id", "the site", func(t *Tree) string { return t.ID })
	checkNames(c, "riders", s.Riders, "id", "the site", func(r *Riders) string { return r.ID })
	checkNames(c, "chains", s.Chains, "id", "the site", func(h *Chain) string { return h.ID })
	c.checkHangNames()
	c.checkHazards()
	for at, riders := range items(c, "riders", s.Riders) {
		c.checkAges(at, riders)
	}
	for at, chain := range items(c, "chains", s.Chains) {
		c.checkParts(at, chain)
	}
}

func (c *checker) checkTree(at path, tree *Tree) {
	checkNames(c, at.field("members"), tree.Members, "id", "the tree", func(m *Member) string { return m.ID })
	checkNames(c, at.field("findings"), tree.Findings, "id", "the tree", func(f *Finding) string { return f.ID })
	checkNames(c, at.field("unions"), tree.Unions, "member", "the unions", func(u *Union) string { return u.Member })
	c.checkReferences(at, tree)
	c.checkGrowth(at, tree)
	c.checkCrown(at, tree)
	for at, member := range items(c, at.field("members"), tree.Members) {
		c.checkShape(at, member)
		c.checkLimb(at, member)
		c.checkStations(at, member)
	}
	for at, finding := range items(c, at.field("findings"), tree.Findings) {
		c.checkFinding(at, finding)
	}
	for at, test := range items(c, at.field("load_tests"), tree.LoadTests) {
		c.checkLoadTest(at, test)
	}
	c.checkPlaces(at, tree)
}

func (c *checker) report(p Problem) { c.problems = append(c.problems, p) }

func (c *checker) isLost(at path) bool { return len(c.lost) > 0 && c.lost[at] }

// given reports whether a field was written, be it right or wrong.
func (c *checker) given(at path, name string, set bool) bool {
	return set || c.isLost(at.field(name))
}

// items goes through a list and leaves out what is lost.
func items[T any](c *checker, list path, all []T) iter.Seq2[path, *T] {
	return func(yield func(path, *T) bool) {
		if c.isLost(list) {
			return
		}
		for i := range all {
			at := list.item(i)
			if !c.isLost(at) && !yield(at, &all[i]) {
				return
			}
		}
	}
}
