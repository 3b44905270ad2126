package survey

import (
	"fmt"

	"boughline/quantity"
)

// checkPlaces wants every place along a member to lie on it.
func (c *checker) checkPlaces(at path, tree *Tree) {
	on := c.memberLengths(at, tree)
	for at, m := range items(c, at.field("members"), tree.Members) {
		for at, s := range items(c, at.field("stations"), m.Stations) {
			c.checkPlace(at.field("at"), s.At.Value, on, m.ID)
		}
		if m.RisesAt != nil {
			c.checkPlace(at.field("rises_at"), m.RisesAt.Value, on, m.Parent)
		}
	}
	for at, f := range items(c, at.field("findings"), tree.Findings) {
		if f.At == nil {
			continue
		}
		ok := c.checkPlace(at.field("at"), f.At.Value, on, f.Member)
		if ok && f.Extent != nil {
			c.checkPlace(at.field("extent"), f.At.Value+f.Extent.Value, on, f.Member)
		}
	}
	for at, h := range items(c, at.field("hangs"), tree.Hangs) {
		c.checkPlace(at.field("at"), h.At.Value, on, h.Member)
	}
}

// memberLengths holds the lengths that are known, by the names of the members.
func (c *checker) memberLengths(at path, tree *Tree) map[string]quantity.Length {
	on := map[string]quantity.Length{}
	for at, m := range items(c, at.field("members"), tree.Members) {
		length, known := c.lengthOf(at, m)
		if _, twice := on[m.ID]; known && !twice {
			on[m.ID] = length
		}
	}
	return on
}

// checkPlace reports whether a place lies on its member, as far as one knows.
func (c *checker) checkPlace(at path, place quantity.Length, on map[string]quantity.Length, member string) bool {
	const rounding quantity.Length = 1e-6
	length, known := on[member]
	if !known || c.isLost(at) || place <= length+rounding {
		return true
	}
	c.report(Problem{
		Code: CodeBeyondEnd, Path: string(at),
		Fault:    fmt.Sprintf("that is %.3g m beyond the end of %q", float64(place-length), member),
		Expected: fmt.Sprintf("a place up to %.4g m", float64(length)), Do: "check the place and the length of the member",
	})
	return false
}

// checkFinding wants a member for a place along it, and days in their order.
func (c *checker) checkFinding(at path, f *Finding) {
	if (f.At != nil || f.Extent != nil) && !c.given(at, "member", f.Member != "") {
		c.report(Problem{
			Code: CodeFindingPlace, Path: string(at), Fault: "it is at a place along a member but names none",
			Expected: "member and at, or height, side and distance", Do: "name the member, or give the height instead",
		})
	}
	c.checkFindingDays(at, f)
}

// checkCrown wants the crown to begin below the top of the tree.
func (c *checker) checkCrown(at path, tree *Tree) {
	if tree.Crown == nil || tree.Crown.BaseHeight == nil || tree.Height == nil || tree.Crown.BaseHeight.Value <= tree.Height.Value {
		return
	}
	base := at.field("crown").field("base_height")
	if c.isLost(base) || c.isLost(at.field("height")) {
		return
	}
	c.report(Problem{
		Code: CodeCrown, Path: string(base), Fault: "the crown begins above the top of the tree",
		Expected: "at most " + quantity.Format(tree.Height.Value), Do: "check the two heights",
	})
}
