package survey

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"sync"
)

// Form is a kind of document that is read as a survey is: strictly, held
// against its JSON Schema and against rules that a schema cannot say, with
// every problem found in one run. T is a struct whose fields have names in JSON.
type Form[T any] struct {
	name    string // what a document is called, with its article: "a survey"
	field   string // the field that holds its version
	version int
	steps   []step
	schema  func() map[string]any
	rules   func(*T, losses) []Problem
}

// Rules are what a schema cannot say. They keep silent about values that are
// lost: missing, or refused by the schema. A path is written as in Problem.
type Rules[T any] func(document *T, lost func(path string) bool) []Problem

// NewForm returns a form with its first version. name is what a document is
// called, with its article; field holds the version; the schema uses the
// keywords and formats that the one of the survey uses.
func NewForm[T any](name, field string, version int, schema []byte, rules Rules[T]) *Form[T] {
	return &Form[T]{name: name, field: field, version: version,
		schema: sync.OnceValue(func() map[string]any { return parseSchema(schema) }),
		rules: func(document *T, lost losses) []Problem {
			return rules(document, func(at string) bool { return lost[path(at)] })
		}}
}

// Read reads a document and returns every problem in the order of the text.
// The document is nil where there is any problem. The error is that of the
// reader alone. No more than MaxSize bytes are read.
func (f *Form[T]) Read(r io.Reader) (*T, []Problem, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxSize+1))
	if err != nil {
		return nil, nil, fmt.Errorf("reading %s: %w", f.name, err)
	}
	if len(data) > MaxSize {
		return nil, []Problem{{
			Code: CodeTooLarge, Value: fmt.Sprintf("over %d MiB", MaxSize>>20),
			Fault: "the document is too large", Expected: fmt.Sprintf("at most %d MiB", MaxSize>>20),
			Do: "check that it is " + f.name + "; split it into several",
		}}, nil
	}
	document, problems := f.check(data)
	return document, problems, nil
}

// Validate returns every problem of a document that was put together in the
// program, exactly as Read would of its text.
func (f *Form[T]) Validate(document *T) []Problem {
	data, err := encode(document)
	if err != nil {
		return []Problem{{
			Code: CodeLostCharacter, Value: shorten(err.Error()),
			Fault: "it cannot be written", Expected: "UTF-8 text and finite numbers", Do: "correct the value",
		}}
	}
	_, problems := f.check(data)
	for i := range problems {
		problems[i].Line, problems[i].Column = 0, 0
	}
	return problems
}

// Write writes a document in its canonical form: indented, the fields in the
// order of the types, the same bytes each time. It fails for text that is not
// UTF-8 and for numbers that are not finite, which JSON cannot hold.
func (f *Form[T]) Write(w io.Writer, document *T) error {
	data, err := encode(document)
	if err != nil {
		return fmt.Errorf("writing %s: %w", f.name, err)
	}
	_, err = w.Write(data)
	return err
}

// check goes from text to generic tree, to the schema, to the types and to
// the rules that a schema cannot say. What one step refuses is taken out and
// muted before the next, so that one fault is one problem.
func (f *Form[T]) check(data []byte) (*T, []Problem) {
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // byte order mark of some editors
	tree, problems, ok := parse(data, nil)
	if !ok {
		return nil, problems
	}
	root, ok := tree.(map[string]any)
	if !ok {
		problems = append(problems, Problem{
			Code: CodeWrongType, Fault: "it is no object", Expected: f.name + ", an object in { }", Do: "check that it is " + f.name,
		})
		locate(problems, data)
		return nil, problems
	}
	if problem, newer := f.newerVersion(root); newer {
		problems = []Problem{problem}
		locate(problems, data)
		return nil, problems
	}
	upgrade(root, f.field, f.steps)
	lost := newLosses(problems)
	problems = append(problems, checkSchema(root, f.schema(), f.version, lost)...)
	document, err := decode[T](lost.prune(root, "").(map[string]any))
	if err != nil {
		problems = append(problems, Problem{
			Code: CodeMisfit, Fault: shorten(err.Error()), Expected: "values that fit the schema", Do: "correct the value and report the fault",
		})
	} else {
		problems = append(problems, f.rules(document, lost)...)
	}
	if len(problems) > 0 {
		locate(problems, data)
		return nil, problems
	}
	return document, nil
}

func decode[T any](root map[string]any) (*T, error) {
	data, err := json.Marshal(root)
	if err != nil {
		return nil, err
	}
	document := new(T)
	if err := json.Unmarshal(data, document); err != nil {
		return nil, err
	}
	return document, nil
}

func encode[T any](document *T) ([]byte, error) {
	if at, bad := invalidText(reflect.ValueOf(*document), ""); bad {
		return nil, fmt.Errorf("%s is not UTF-8", at)
	}
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(document); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}
