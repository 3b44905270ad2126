package survey

import "fmt"

// step turns the generic tree of one version into that of the next.
type step func(root map[string]any)

// steps holds the way from version 1 to 2 at index 0, and so on.
var steps = []step{toVersion2}

// toVersion2 adds nothing: version 2 has room for leaves, air and covers at a
// look and for the hazards of the site. What version 1 did not say stays
// unsaid, and so never counts in favour.
func toVersion2(map[string]any) {}

// upgrade brings an older document up to the version of the last step.
func upgrade(root map[string]any, field string, steps []step) {
	version, ok := root[field].(float64)
	if !ok || version < 1 {
		return // the schema refuses it
	}
	for i := int(version) - 1; i < len(steps); i++ {
		steps[i](root)
		root[field] = float64(i + 2)
	}
}

// newerVersion refuses a document of a later program as a whole: its fields
// may mean something else.
func (f *Form[T]) newerVersion(root map[string]any) (Problem, bool) {
	version, ok := root[f.field].(float64)
	if !ok || version <= float64(f.version) {
		return Problem{}, false
	}
	return Problem{
		Code: CodeNewer, Path: f.field, Value: fmt.Sprint(version),
		Fault:    "the document was written by a later program",
		Expected: fmt.Sprintf("version %d at most", f.version),
		Do:       "read it with the program that wrote it, or a later one",
	}, true
}
