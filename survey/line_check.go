package survey

import "strconv"

// checkLines holds the rules for the other hangs of the site.
func (c *checker) checkLines() {
	checkNames(c, "lines", c.survey.Lines, "id", "the site", func(l *Line) string { return l.ID })
	trees := targetsOf(c, "tree", "trees", c.survey.Trees, func(t *Tree) string { return t.ID })
	// What is kept of a site apart from its trees names them all the same.
	trees.closed = trees.closed && len(c.survey.Trees) > 0
	for at, line := range items(c, "lines", c.survey.Lines) {
		c.checkReference(at.field("riders"), line.Riders, c.riders)
		c.checkReference(at.field("chain"), line.Chain, c.chains)
		c.checkLineFields(at, line)
		for at, end := range items(c, at.field("ends"), line.Ends) {
			c.checkReference(at.field("tree"), end.Tree, trees)
			c.checkAnchor(at, line, end.Tree, end.Member, end.Anchor, end.At)
		}
		if r := line.Redirect; r != nil && len(line.Ends) > 0 && !c.isLost(at.field("redirect")) {
			c.checkAnchor(at.field("redirect"), line, line.Ends[0].Tree, r.Member, r.Anchor, r.At)
		}
	}
}

// checkAnchor wants an anchor to be on a member of its tree and held by a part
// of the chain.
func (c *checker) checkAnchor(at path, line *Line, tree, member, anchor string, along MeasuredLength) {
	for treeAt, t := range items(c, "trees", c.survey.Trees) {
		if t.ID != tree {
			continue
		}
		members := targetsOf(c, "member of "+strconv.Quote(tree), treeAt.field("members"), t.Members, func(m *Member) string { return m.ID })
		c.checkReference(at.field("member"), member, members)
		c.checkPlace(at.field("at"), along.Value, c.memberLengths(treeAt, t), member)
	}
	for chainAt, chain := range items(c, "chains", c.survey.Chains) {
		if chain.ID == line.Chain {
			parts := targetsOf(c, "part of the chain "+strconv.Quote(chain.ID), chainAt.field("parts"), chain.Parts, func(p *Part) string { return p.Name })
			c.checkReference(at.field("anchor"), anchor, parts)
		}
	}
}

// checkLineFields wants what the kind of a line needs, and nothing that does not
// go with it.
func (c *checker) checkLineFields(at path, l *Line) {
	between := l.Kind == HammockLine || l.Kind == TraverseLine
	ends := 1
	if between {
		ends = 2
	}
	if l.Kind != "" && len(l.Ends) != ends && !c.isLost(at.field("ends")) {
		c.lineProblem(at.field("ends"), "a "+l.Kind+" line has not this many ends", strconv.Itoa(ends), "add the missing end or take one out")
	}
	sag, pretension := c.given(at, "sag", l.Sag != nil), c.given(at, "pretension", l.Pretension != nil)
	switch {
	case l.Kind == HammockLine && !sag:
		c.lineProblem(at.field("sag"), "a hammock needs its sag", "how far its body hangs below the straight line between the anchors", "measure or choose it")
	case l.Kind == HammockLine && !c.given(at, "body", l.Body != nil):
		c.lineProblem(at.field("body"), "a hammock needs the length of its body", "the length between its straps", "measure it")
	case l.Kind == TraverseLine && sag == pretension:
		c.lineProblem(at.field("sag"), "a traverse is put up to a sag or to a pretension", "one of the two", "state sag or pretension, not both")
	}
	for name, odd := range map[string]bool{
		"pretension": l.Pretension != nil && l.Kind != TraverseLine, "body": l.Body != nil && l.Kind != HammockLine,
		"sag": l.Sag != nil && !between, "span": l.Span != nil && !between, "rise": l.Rise != nil && !between,
		"fixed": l.Fixed != "" && between, "redirect": l.Redirect != nil && between,
	} {
		if odd && l.Kind != "" {
			c.lineProblem(at.field(name), "it does not go with a "+l.Kind+" line", "nothing here", "leave it out, or correct the kind")
		}
	}
	c.checkLineDirection(at, l)
}

// checkLineDirection wants to know which way a line goes, as its pull does.
func (c *checker) checkLineDirection(at path, l *Line) {
	if len(l.Ends) != 2 || c.given(at, "azimuth", l.Azimuth != nil) || l.Ends[0].Tree == l.Ends[1].Tree {
		return
	}
	for i, end := range l.Ends {
		for treeAt, t := range items(c, "trees", c.survey.Trees) {
			if t.ID == end.Tree && !(c.given(treeAt, "east", t.East != nil) && c.given(treeAt, "north", t.North != nil)) {
				c.lineProblem(at.field("azimuth"), "nothing says which way the line goes from end "+strconv.Itoa(i+1)+", as the place of "+strconv.Quote(t.ID)+" is not known",
					"an azimuth from the first end to the second", "take it with the compass, or give east and north of both trees")
				return
			}
		}
	}
}

func (c *checker) lineProblem(at path, fault, expected, do string) {
	c.report(Problem{Code: CodeLine, Path: string(at), Fault: fault, Expected: expected, Do: do})
}
