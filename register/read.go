package register

import (
	_ "embed"
	"io"
	"slices"

	"boughline/survey"
)

//go:embed schema.json
var schema []byte

// Schema returns the JSON Schema (draft 2020-12) of a register.
func Schema() []byte { return slices.Clone(schema) }

var form = survey.NewForm("a register of gear", "register", Version, schema, rules)

// Read reads a register and returns every problem of the document in one run,
// in the order of the text. The register is nil where there is any problem. The
// error is that of the reader alone.
func Read(r io.Reader) (*Register, []survey.Problem, error) { return form.Read(r) }

// Validate returns every problem of a register that was put together in the
// program, exactly as Read would of its document.
func (r Register) Validate() []survey.Problem { return form.Validate(&r) }

// Write writes a register: indented, the fields in the order of the types, the
// same bytes each time. It fails for text that is not UTF-8.
func (r Register) Write(w io.Writer) error { return form.Write(w, &r) }
