package survey

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"sync"
)

//go:embed schema.json
var schemaText []byte

// Schema returns the JSON Schema (draft 2020-12) of a survey.
func Schema() []byte { return slices.Clone(schemaText) }

// schema is the schema as a generic tree.
var schema = sync.OnceValue(func() map[string]any { return parseSchema(schemaText) })

func parseSchema(text []byte) map[string]any {
	var tree map[string]any
	if err := json.Unmarshal(text, &tree); err != nil {
		panic(fmt.Sprintf("schema.json: %v", err)) // embedded, a fault of the build
	}
	return tree
}

// definitions are the named rules of a schema.
type definitions map[string]any

func definitionsOf(schema map[string]any) definitions {
	named, _ := schema["$defs"].(map[string]any)
	return named
}

// resolve follows a rule that refers to a definition.
func (d definitions) resolve(rule map[string]any) map[string]any {
	reference, ok := rule["$ref"].(string)
	if !ok {
		return rule
	}
	definition, ok := d[strings.TrimPrefix(reference, "#/$defs/")].(map[string]any)
	if !ok {
		panic("schema.json has no definition of " + reference) // embedded, a fault of the build
	}
	return definition
}
