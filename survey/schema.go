package survey

import (
	"bytes"
	_ "embed"
	"fmt"
	"slices"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

//go:embed schema.json
var schemaText []byte

// Schema returns the JSON Schema (draft 2020-12) of a survey.
func Schema() []byte { return slices.Clone(schemaText) }

// schemaSet is the schema, once as it is written and once made ready.
type schemaSet struct {
	written  map[string]any
	compiled *jsonschema.Schema
}

var schema = sync.OnceValue(func() schemaSet {
	written := readSchema()
	ready := readSchema()
	dropPatterns(ready)
	compiler := jsonschema.NewCompiler()
	for name, f := range formats {
		compiler.RegisterFormat(&jsonschema.Format{Name: name, Validate: f.validate})
	}
	compiler.AssertFormat()
	id := written["$id"].(string)
	if err := compiler.AddResource(id, ready); err != nil {
		panic(fmt.Sprintf("schema.json: %v", err)) // embedded, a fault of the build
	}
	return schemaSet{written, compiler.MustCompile(id)}
})

func readSchema() map[string]any {
	tree, err := jsonschema.UnmarshalJSON(bytes.NewReader(schemaText))
	if err != nil {
		panic(fmt.Sprintf("schema.json: %v", err)) // embedded, a fault of the build
	}
	return tree.(map[string]any)
}

// dropPatterns takes out the patterns that stand beside a format. They are for
// programs that do not know our formats, which are exact and give reasons.
func dropPatterns(node map[string]any) {
	if node["format"] != nil {
		delete(node, "pattern")
	}
	for _, value := range node {
		if inner, ok := value.(map[string]any); ok {
			dropPatterns(inner)
		}
	}
}

// definition is the part of the schema that a schema location names.
func (s schemaSet) definition(location string) map[string]any {
	_, pointer, _ := strings.Cut(location, "#")
	node := s.written
	for token := range strings.SplitSeq(strings.TrimPrefix(pointer, "/"), "/") {
		inner, ok := node[token].(map[string]any)
		if !ok {
			break
		}
		node = inner
	}
	return node
}
