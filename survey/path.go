package survey

import (
	"strconv"
	"strings"
)

// path leads to a value of the document, for example trees[2].members[0].id.
// The path of the whole document is empty.
type path string

// field is the path of a field; a name that is no plain word is quoted, so
// that two paths never look alike.
func (p path) field(name string) path {
	switch {
	case !isPlain(name):
		return p + "[" + path(strconv.Quote(name)) + "]"
	case p == "":
		return path(name)
	}
	return p + "." + path(name)
}

func isPlain(name string) bool {
	for _, r := range name {
		if r != '_' && (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') && (r < '0' || r > '9') {
			return false
		}
	}
	return name != ""
}

func (p path) item(i int) path { return p + "[" + path(strconv.Itoa(i)) + "]" }

// parent is the path of the object or list that holds p.
func (p path) parent() path { return p[:max(0, strings.LastIndexAny(string(p), ".["))] }
