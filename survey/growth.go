package survey

import (
	"fmt"
	"slices"
	"strings"
)

// checkGrowth holds a tree together: one stem, and every other member grows
// from it in the end. It keeps silent where members or parents were lost.
func (c *checker) checkGrowth(at path, tree *Tree) {
	list := at.field("members")
	if c.lost.incomplete(list, len(tree.Members), "parent") || c.lost.incomplete(list, len(tree.Members), "id") {
		return
	}
	stem := ""
	for at, m := range items(c, list, tree.Members) {
		switch {
		case m.Parent != "":
		case stem == "":
			stem = m.ID
		default:
			c.report(Problem{
				Code: CodeStem, Path: string(at.field("parent")),
				Fault: fmt.Sprintf("%q has no parent, and neither has %q", m.ID, stem), Expected: "one stem for each tree",
				Do: "name the member it grows from, or make it a tree of its own",
			})
		}
	}
	c.checkCycles(list, tree.Members)
	c.checkUnions(at, tree)
}

// checkCycles reports each ring of parents once, at its first member.
func (c *checker) checkCycles(list path, members []Member) {
	parent := parentIndices(members)
	met := make([]int, len(members)) // from which start, counted from 1
	for start := range members {
		i := start
		for i >= 0 && met[i] == 0 {
			met[i] = start + 1
			i = parent[i]
		}
		if i < 0 || met[i] != start+1 {
			continue
		}
		ring := []int{i}
		for j := parent[i]; j != i; j = parent[j] {
			ring = append(ring, j)
		}
		c.reportCycle(list, members, ring)
	}
}

// parentIndices holds the place of each member's parent, -1 for none.
func parentIndices(members []Member) []int {
	place := map[string]int{}
	for i, m := range slices.Backward(members) {
		place[m.ID] = i
	}
	parent := make([]int, len(members))
	for i, m := range members {
		parent[i] = -1
		if j, known := place[m.Parent]; known && m.Parent != "" {
			parent[i] = j
		}
	}
	return parent
}

func (c *checker) reportCycle(list path, members []Member, ring []int) {
	names := make([]string, 0, len(ring)+1)
	for _, i := range ring {
		names = append(names, members[i].ID)
	}
	names = append(names, names[0])
	c.report(Problem{
		Code: CodeCycle, Path: string(list.item(slices.Min(ring)).field("parent")),
		Fault:    "the parents go round in a ring: " + shorten(strings.Join(names, " from ")),
		Expected: "parents that lead to the stem", Do: "correct one parent of the ring",
	})
}

// checkUnions refuses a union of the stem, which joins nothing.
func (c *checker) checkUnions(at path, tree *Tree) {
	stems := map[string]bool{}
	for _, m := range tree.Members {
		stems[m.ID] = m.Parent == ""
	}
	for at, u := range items(c, at.field("unions"), tree.Unions) {
		if u.Member != "" && stems[u.Member] {
			c.report(Problem{
				Code: CodeUnion, Path: string(at.field("member")), Fault: "the stem joins no parent",
				Expected: "a member that has a parent", Do: "name the limb at this union",
			})
		}
	}
}
