package survey

import (
	"bytes"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// TestTheSchemaIsADraftOf2020 holds the published schema to the metaschema of
// draft 2020-12, which santhosh-tekuri/jsonschema carries.
func TestTheSchemaIsADraftOf2020(t *testing.T) {
	meta, err := jsonschema.NewCompiler().Compile("https://json-schema.org/draft/2020-12/schema")
	if err != nil {
		t.Fatal(err)
	}
	tree, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema()))
	if err != nil {
		t.Fatal(err)
	}
	if err := meta.Validate(tree); err != nil {
		t.Error(err)
	}
	if meta.Validate(map[string]any{"type": "length"}) == nil {
		t.Error("the metaschema takes anything")
	}
}

// TestTheSchemaExplainsItself wants a name and an id of the whole, and a
// description of every definition and of every field.
func TestTheSchemaExplainsItself(t *testing.T) {
	root := schema()
	for _, name := range []string{"$schema", "$id", "title", "description"} {
		if text, _ := root[name].(string); text == "" {
			t.Errorf("the schema has no %s", name)
		}
	}
	if id := root["$id"].(string); !strings.HasPrefix(id, "https://") {
		t.Errorf("$id is %q", id)
	}
	explained(t, "the survey", root)
	definitions := root["$defs"].(map[string]any)
	for name, d := range definitions {
		explained(t, name, d.(map[string]any))
	}
	if len(definitions) < 30 {
		t.Errorf("%d definitions", len(definitions))
	}
}

func explained(t *testing.T, name string, rule map[string]any) {
	t.Helper()
	if text, _ := rule["description"].(string); !strings.HasSuffix(text, ".") {
		t.Errorf("%s has the description %q", name, text)
	}
	fields, _ := rule["properties"].(map[string]any)
	for field, r := range fields {
		explained(t, name+"."+field, r.(map[string]any))
	}
}
