package survey

// losses are the paths of values that are missing or were refused. They have
// had their problem; no other rule speaks about them.
type losses map[path]bool

func newLosses(problems []Problem) losses {
	lost := losses{}
	for _, p := range problems {
		lost[path(p.Path)] = true
	}
	return lost
}

// prune takes the lost values out of a tree. An item of a list leaves an empty
// place, so that the others keep their numbers. Empty lists mean none and go
// as well.
func (l losses) prune(node any, at path) any {
	switch node := node.(type) {
	case map[string]any:
		for name, value := range node {
			items, isList := value.([]any)
			if (isList && len(items) == 0) || (len(l) > 0 && l[at.field(name)]) {
				delete(node, name)
				continue
			}
			node[name] = l.descend(value, func() path { return at.field(name) })
		}
	case []any:
		for i, value := range node {
			if len(l) > 0 && l[at.item(i)] {
				node[i] = nil
				continue
			}
			node[i] = l.descend(value, func() path { return at.item(i) })
		}
	}
	return node
}

// descend prunes objects and lists and leaves plain values alone; the path is
// made only where it is needed.
func (l losses) descend(value any, at func() path) any {
	switch value.(type) {
	case map[string]any, []any:
		return l.prune(value, at())
	}
	return value
}

// incomplete reports whether an item of a list, or the field by which it is
// named, was lost, so that a name that is not found may have been among them.
func (l losses) incomplete(list path, n int, key string) bool {
	if len(l) == 0 {
		return false
	}
	if l[list] {
		return true
	}
	for i := range n {
		if item := list.item(i); l[item] || l[item.field(key)] {
			return true
		}
	}
	return false
}
