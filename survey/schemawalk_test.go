package survey

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/santhosh-tekuri/jsonschema/v6/kind"
	"pgregory.net/rapid"
)

// library compiles the schema with santhosh-tekuri/jsonschema, a general
// validator of JSON Schema. It judges the walk here and stays out of the
// program, where it would be a seventh of the browser's download.
func library(t *testing.T) *jsonschema.Schema {
	t.Helper()
	tree, err := jsonschema.UnmarshalJSON(bytes.NewReader(schemaText))
	if err != nil {
		t.Fatal(err)
	}
	dropPatterns(tree.(map[string]any))
	compiler := jsonschema.NewCompiler()
	for name, f := range formats {
		compiler.RegisterFormat(&jsonschema.Format{Name: name, Validate: func(value any) error {
			if text, ok := value.(string); ok {
				return f.check(text)
			}
			return nil
		}})
	}
	compiler.AssertFormat()
	id := tree.(map[string]any)["$id"].(string)
	if err := compiler.AddResource(id, tree); err != nil {
		t.Fatal(err)
	}
	return compiler.MustCompile(id)
}

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

// places are the values that a validator finds fault with, and how.
func places(t interface{ Fatalf(string, ...any) }, err error) []string {
	if err == nil {
		return nil
	}
	var found []string
	var leaves func(*jsonschema.ValidationError)
	leaves = func(e *jsonschema.ValidationError) {
		for _, cause := range e.Causes {
			leaves(cause)
		}
		if len(e.Causes) > 0 {
			return
		}
		at := "/" + strings.Join(e.InstanceLocation, "/")
		switch k := e.ErrorKind.(type) {
		case *kind.AdditionalProperties:
			slices.Sort(k.Properties)
			found = append(found, fmt.Sprint(at, " extra ", k.Properties))
		case *kind.Required:
			found = append(found, fmt.Sprint(at, " missing ", k.Missing))
		default:
			found = append(found, at)
		}
	}
	invalid, ok := err.(*jsonschema.ValidationError)
	if !ok {
		t.Fatalf("%v", err)
	}
	leaves(invalid)
	slices.Sort(found)
	return slices.Compact(found)
}

func placesOf(found []breach) []string {
	var list []string
	for _, b := range found {
		at := "/" + strings.Join(b.location, "/")
		switch k := b.kind.(type) {
		case extraFields:
			at = fmt.Sprint(at, " extra ", k.names)
		case missingFields:
			at = fmt.Sprint(at, " missing ", k.names)
		}
		list = append(list, at)
	}
	slices.Sort(list)
	return slices.Compact(list)
}

// The walk and the library find fault with the same values of documents that
// were spoilt at random.
func TestTheWalkFindsWhatALibraryFinds(t *testing.T) {
	compiled := library(t)
	good := meadow(t)
	rapid.Check(t, func(r *rapid.T) {
		var tree map[string]any
		if err := json.Unmarshal(good, &tree); err != nil {
			r.Fatal(err)
		}
		for range rapid.IntRange(0, 4).Draw(r, "faults") {
			spoil(r, tree)
		}
		want := places(r, compiled.Validate(tree))
		if got := placesOf(definitionsOf(schema()).breaches(tree, schema(), nil)); !slices.Equal(got, want) {
			r.Fatalf("the walk finds %q, the library %q", got, want)
		}
	})
}

func meadow(t *testing.T) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/meadow.json")
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// spoil changes one value somewhere in a tree.
func spoil(r *rapid.T, tree map[string]any) {
	var node any = tree
	for {
		switch inner := node.(type) {
		case map[string]any:
			name := rapid.SampledFrom(append(slices.Sorted(maps.Keys(inner)), "extra")).Draw(r, "field")
			if next := inner[name]; isContainer(next) && rapid.IntRange(0, 5).Draw(r, "deeper") > 0 {
				node = next
				continue
			}
			if rapid.Bool().Draw(r, "delete") {
				delete(inner, name)
			} else {
				inner[name] = anything(r)
			}
		case []any:
			i := rapid.IntRange(0, len(inner)-1).Draw(r, "item")
			if isContainer(inner[i]) && rapid.IntRange(0, 5).Draw(r, "deeper") > 0 {
				node = inner[i]
				continue
			}
			inner[i] = anything(r)
		}
		return
	}
}

func isContainer(node any) bool {
	list, isList := node.([]any)
	_, isObject := node.(map[string]any)
	return isObject || isList && len(list) > 0
}

func anything(r *rapid.T) any {
	return rapid.SampledFrom([]any{
		nil, true, "", "x", "3 m", "3 m taped", "90 deg", "2 kg", "4 kN", "2026-05-16", "2026-02-30", "U", "III", 0.0, 1.0, 1.5, -7.0, 1e9,
		[]any{}, []any{"x"}, map[string]any{}, map[string]any{"id": "x"},
	}).Draw(r, "value")
}

func TestTheSchemaUsesOnlyWhatTheWalkKnows(t *testing.T) {
	var rules func(at string, rule map[string]any)
	rules = func(at string, rule map[string]any) {
		for word, value := range rule {
			switch word {
			case "properties", "$defs":
				for name, inner := range value.(map[string]any) {
					rules(at+"/"+name, inner.(map[string]any))
				}
			case "items":
				rules(at+"/items", value.(map[string]any))
			case "description", "title", "examples", "$schema", "$id":
			case "pattern":
				if _, ok := formats[fmt.Sprint(rule["format"])]; !ok {
					t.Errorf("%s: a pattern without a format of ours is not checked", at)
				}
			default:
				if !slices.Contains(keywords, word) {
					t.Errorf("%s: the walk does not know the keyword %q", at, word)
				}
			}
		}
		if _, ok := rule["properties"]; ok && rule["additionalProperties"] != false {
			t.Errorf("%s: unknown fields would pass", at)
		}
		_, low := rule["minimum"]
		if _, high := rule["maximum"]; low != high {
			t.Errorf("%s: one bound without the other", at)
		}
	}
	rules("", schema())
}
