package survey

import "fmt"

// checkNames refuses a second item of the same name in a list.
func checkNames[T any](c *checker, list path, all []T, field, where string, name func(*T) string) {
	names := nameSet{}
	for at, item := range items(c, list, all) {
		c.checkName(names, at.field(field), name(item), where)
	}
}

// checkHangNames holds all hangs of the site against one another: they are
// spoken of without their trees.
func (c *checker) checkHangNames() {
	names := nameSet{}
	for at, tree := range items(c, "trees", c.survey.Trees) {
		for at, hang := range items(c, at.field("hangs"), tree.Hangs) {
			c.checkName(names, at.field("id"), hang.ID, "the site")
		}
	}
}

// nameSet holds the names that were met, with the first place of each.
type nameSet map[string]path

func (c *checker) checkName(names nameSet, at path, name, where string) {
	if name == "" {
		return
	}
	first, taken := names[name]
	if !taken {
		names[name] = at
		return
	}
	c.report(Problem{
		Code: CodeDuplicateID, Path: string(at),
		Fault:    fmt.Sprintf("%s has the same name", first),
		Expected: fmt.Sprintf("a name used once in %s", where), Do: "rename one of them, and what points to it",
	})
}
