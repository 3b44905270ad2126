// Package work recomputes one figure on its own: a document with a group and
// its inputs goes in, the results of that group come out. It is the workbench
// of the engine, and the way in which results of outside solvers are matched
// (testdata/cases).
package work

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
)

// Result is one recomputed figure.
type Result struct {
	ID      string `json:"id"`
	Group   string `json:"group"`
	Results any    `json:"results"`
}

// figure recomputes the results of one group from its inputs.
type figure func(inputs json.RawMessage) (any, error)

// document is the part of a file that Run reads; anything else in it, such as
// the expected results, is left alone.
type document struct {
	ID     string          `json:"id"`
	Group  string          `json:"group"`
	Inputs json.RawMessage `json:"inputs"`
}

// Run recomputes the figure of one document. Errors name the field that is
// missing, or list the groups that can be worked out.
func Run(data []byte) (Result, error) {
	var doc document
	if err := json.Unmarshal(data, &doc); err != nil {
		return Result{}, fmt.Errorf("not a JSON document with id, group and inputs: %w", err)
	}
	compute, ok := groups[doc.Group]
	if !ok {
		return Result{}, fmt.Errorf("group %q is not built; expected one of %s", doc.Group, strings.Join(Groups(), ", "))
	}
	if len(doc.Inputs) == 0 {
		return Result{}, fmt.Errorf("the document has no inputs; group %q needs them", doc.Group)
	}
	results, err := compute(doc.Inputs)
	if err != nil {
		return Result{}, fmt.Errorf("group %q: %w", doc.Group, err)
	}
	return Result{ID: doc.ID, Group: doc.Group, Results: results}, nil
}

// Groups lists the groups that can be worked out, in alphabetical order.
func Groups() []string {
	names := make([]string, 0, len(groups))
	for name := range groups {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// read decodes the inputs of a group into its own type.
func read[T any](inputs json.RawMessage) (T, error) {
	var v T
	if err := json.Unmarshal(inputs, &v); err != nil {
		return v, fmt.Errorf("inputs: %w", err)
	}
	return v, nil
}
