package survey

import "fmt"

// targets are the names that a reference may point to. Where some of them were
// lost, or one was given twice in place of another, an unknown name may be one
// of those, and nothing is said.
type targets struct {
	what   string
	names  []string
	known  map[string]bool
	closed bool
}

func targetsOf[T any](c *checker, what string, list path, all []T, name func(*T) string) targets {
	t := targets{what: what, known: map[string]bool{}, closed: !c.lost.incomplete(list, len(all), "id")}
	for _, item := range items(c, list, all) {
		id := name(item)
		t.closed = t.closed && !t.known[id]
		t.known[id] = true
		t.names = append(t.names, id)
	}
	return t
}

// checkReferences follows every name in a tree that points to something else.
func (c *checker) checkReferences(at path, tree *Tree) {
	members := targetsOf(c, "member of this tree", at.field("members"), tree.Members, func(m *Member) string { return m.ID })
	for at, m := range items(c, at.field("members"), tree.Members) {
		c.checkReference(at.field("parent"), m.Parent, members)
	}
	for at, u := range items(c, at.field("unions"), tree.Unions) {
		c.checkReference(at.field("member"), u.Member, members)
	}
	for at, look := range items(c, at.field("looks"), tree.Looks) {
		for at, name := range items(c, at.field("members"), look.Members) {
			c.checkReference(at, *name, members)
		}
	}
	for at, f := range items(c, at.field("findings"), tree.Findings) {
		c.checkReference(at.field("member"), f.Member, members)
	}
	c.checkHangReferences(at.field("hangs"), tree.Hangs, members)
	hangs := targetsOf(c, "hang of this tree", at.field("hangs"), tree.Hangs, func(h *Hang) string { return h.ID })
	for at, test := range items(c, at.field("load_tests"), tree.LoadTests) {
		c.checkReference(at.field("hang"), test.Hang, hangs)
	}
}

func (c *checker) checkHangReferences(list path, hangs []Hang, members targets) {
	for at, hang := range items(c, list, hangs) {
		c.checkReference(at.field("member"), hang.Member, members)
		c.checkReference(at.field("riders"), hang.Riders, c.riders)
		c.checkReference(at.field("chain"), hang.Chain, c.chains)
	}
}

func (c *checker) checkReference(at path, name string, t targets) {
	if name == "" || !t.closed || t.known[name] {
		return
	}
	do := fmt.Sprintf("add a %s of that name or correct the name", t.what)
	if likely := nearest(name, t.names); likely != "" {
		do = fmt.Sprintf("perhaps %q is meant", likely)
	}
	expected := "none, as there is no " + t.what
	if len(t.names) > 0 {
		expected = "one of " + list(t.names)
	}
	c.report(Problem{
		Code: CodeReference, Path: string(at), Fault: "there is no " + t.what + " of that name", Expected: expected, Do: do,
	})
}
