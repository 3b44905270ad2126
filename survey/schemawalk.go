package survey

import (
	"maps"
	"slices"
	"strconv"
	"unicode/utf8"
)

// keywords are the parts of JSON Schema that the walk knows and the schema may
// use. Patterns stand beside formats, for programs that do not know ours; the
// formats are exact and give reasons.
var keywords = []string{
	"$ref", "type", "enum", "const", "format", "minLength", "minimum", "maximum", "minItems", "items", "required", "properties", "additionalProperties",
}

// breach is one thing that the schema finds wrong at one place.
type breach struct {
	location []string       // names and numbers that lead to the value
	rule     map[string]any // the part of the schema that is broken
	kind     any            // one of the kinds below
}

// Kinds of breach.
type (
	extraFields   struct{ names []string }
	missingFields struct{ names []string }
	otherType     struct{ got, want string }
	badFormat     struct {
		format string
		err    error
	}
	notListed struct {
		got  any
		want []any
	}
	otherConstant struct{}
	emptyText     struct{}
	tooFewItems   struct{ want int }
	beyondBounds  struct{}
)

// breaches holds a generic tree against a rule of the schema and returns all
// that is wrong with it.
func (s definitions) breaches(node any, rule map[string]any, at []string) []breach {
	rule = s.resolve(rule)
	broken := func(kind any) []breach { return []breach{{at, rule, kind}} }
	if want, ok := rule["type"].(string); ok && !isType(node, want) {
		return broken(otherType{typeOf(node), want})
	}
	if want, ok := rule["const"]; ok && node != want {
		return broken(otherConstant{})
	}
	if want, ok := rule["enum"].([]any); ok && !slices.ContainsFunc(want, func(w any) bool { return equal(w, node) }) {
		return broken(notListed{node, want})
	}
	switch node := node.(type) {
	case string:
		if kind := textBreach(node, rule); kind != nil {
			return broken(kind)
		}
	case float64:
		low, bounded := rule["minimum"].(float64)
		high, _ := rule["maximum"].(float64)
		if bounded && (node < low || node > high) {
			return broken(beyondBounds{})
		}
	case []any:
		return s.listBreaches(node, rule, at)
	case map[string]any:
		return s.objectBreaches(node, rule, at)
	}
	return nil
}

func textBreach(text string, rule map[string]any) any {
	if least, ok := rule["minLength"].(float64); ok && utf8.RuneCountInString(text) < int(least) {
		return emptyText{}
	}
	name, _ := rule["format"].(string)
	if f, ok := formats[name]; ok {
		if err := f.check(text); err != nil {
			return badFormat{name, err}
		}
	}
	return nil
}

func (s definitions) listBreaches(list []any, rule map[string]any, at []string) []breach {
	var found []breach
	if least, ok := rule["minItems"].(float64); ok && len(list) < int(least) {
		found = append(found, breach{at, rule, tooFewItems{int(least)}})
	}
	items, ok := rule["items"].(map[string]any)
	for i := 0; ok && i < len(list); i++ {
		found = append(found, s.breaches(list[i], items, below(at, strconv.Itoa(i)))...)
	}
	return found
}

func (s definitions) objectBreaches(object, rule map[string]any, at []string) []breach {
	var found []breach
	properties, _ := rule["properties"].(map[string]any)
	var missing, extra []string
	required, _ := rule["required"].([]any)
	for _, name := range required {
		if _, ok := object[name.(string)]; !ok {
			missing = append(missing, name.(string))
		}
	}
	for _, name := range slices.Sorted(maps.Keys(object)) {
		property, known := properties[name].(map[string]any)
		if !known {
			extra = append(extra, name)
			continue
		}
		found = append(found, s.breaches(object[name], property, below(at, name))...)
	}
	if len(missing) > 0 {
		found = append(found, breach{at, rule, missingFields{missing}})
	}
	if len(extra) > 0 && rule["additionalProperties"] == false {
		found = append(found, breach{at, rule, extraFields{extra}})
	}
	return found
}

// below is a location one step further down, in memory of its own.
func below(at []string, token string) []string { return append(slices.Clone(at), token) }

func equal(a, b any) bool {
	switch a.(type) {
	case string, float64, bool, nil:
		switch b.(type) {
		case string, float64, bool, nil:
			return a == b
		}
	}
	return false
}

func isType(node any, want string) bool {
	if x, ok := node.(float64); ok && want == "integer" {
		return x == float64(int64(x))
	}
	return typeOf(node) == want
}

func typeOf(node any) string {
	switch node.(type) {
	case map[string]any:
		return "object"
	case []any:
		return "array"
	case string:
		return "string"
	case float64:
		return "number"
	case bool:
		return "boolean"
	}
	return "null"
}
