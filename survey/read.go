package survey

import "io"

// form is that of the survey.
var form = &Form[Survey]{name: "a survey", field: "boughline", version: Version, steps: steps, schema: schema, rules: checkRules}

// Read reads a survey and returns every problem of the document in one run,
// in the order of the text. The survey is nil where there is any problem. The
// error is that of the reader alone. No more than MaxSize bytes are read.
func Read(r io.Reader) (*Survey, []Problem, error) { return form.Read(r) }

// Validate returns every problem of a survey that was put together in the
// program, exactly as Read would of its document.
func Validate(s *Survey) []Problem { return form.Validate(withTrees(s)) }

// Write writes a survey in its canonical form: indented, the fields in the
// order of the types, the same bytes each time. It fails for text that is not
// UTF-8 and for numbers that are not finite, which JSON cannot hold.
func Write(w io.Writer, s *Survey) error { return form.Write(w, withTrees(s)) }

// withTrees writes a site without trees as an empty list, which the schema
// asks for.
func withTrees(s *Survey) *Survey {
	written := *s
	if written.Trees == nil {
		written.Trees = []Tree{}
	}
	return &written
}
