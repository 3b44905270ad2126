package survey

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"boughline/quantity"
)

// checkSchema returns what the schema finds wrong with a document, in our own
// words, and adds it to the losses.
func checkSchema(root, rules map[string]any, version int, lost losses) []Problem {
	found := definitionsOf(rules).breaches(root, rules, nil)
	t := translator{root: root, version: version, lost: lost}
	for _, b := range found {
		t.unknownFields(b)
	}
	for _, b := range found {
		t.translate(b)
	}
	return t.problems
}

// translator turns breaches of the schema into problems, one for each path.
type translator struct {
	root     map[string]any
	version  int
	lost     losses
	problems []Problem
}

func (t *translator) report(p Problem) {
	if t.lost[path(p.Path)] {
		return
	}
	t.lost[path(p.Path)] = true
	t.problems = append(t.problems, p)
}

// unknownFields comes first: a field whose name is misspelt is not missing as
// well.
func (t *translator) unknownFields(b breach) {
	extra, ok := b.kind.(extraFields)
	if !ok {
		return
	}
	at := t.path(b.location)
	properties, _ := b.rule["properties"].(map[string]any)
	known := slices.Sorted(maps.Keys(properties))
	for _, name := range extra.names {
		do := "delete it, or put what it says into a note"
		if likely := nearest(name, known); likely != "" {
			do = fmt.Sprintf("perhaps %q is meant", likely)
			t.mute(b.location, at, likely)
		}
		t.report(Problem{
			Code: CodeUnknownField, Path: string(at.field(name)),
			Fault:    fmt.Sprintf("there is no field %s here", strconv.Quote(shorten(name))),
			Expected: "one of " + strings.Join(known, ", "), Do: do,
		})
	}
}

// mute counts a field as lost where it is not given at all.
func (t *translator) mute(location []string, at path, name string) {
	object, _ := t.find(location).(map[string]any)
	if _, given := object[name]; !given {
		t.lost[at.field(name)] = true
	}
}

func (t *translator) translate(b breach) {
	at := t.path(b.location)
	p := Problem{Path: string(at), Code: CodeOutOfRange}
	switch k := b.kind.(type) {
	case extraFields:
		return
	case missingFields:
		t.missing(at, b.rule, k.names)
		return
	case otherType:
		p.Code, p.Fault, p.Expected, p.Do = wrongType(k, b.rule)
	case badFormat:
		p.Code, p.Fault, p.Expected, p.Do = badText(k)
	case notListed:
		p.Code, p.Fault, p.Expected, p.Do = notInList(k)
	case otherConstant:
		p.Code, p.Fault, p.Expected, p.Do = CodeVersion, "there is no such version", fmt.Sprintf("version %d", t.version), fmt.Sprintf("write %d if the document follows this schema", t.version)
	case emptyText:
		p.Code, p.Fault, p.Expected, p.Do = CodeEmpty, "it is empty", "some text", "write it, or leave the field out where it may be left out"
	case tooFewItems:
		p.Code, p.Fault, p.Expected, p.Do = CodeEmpty, "the list is too short", fmt.Sprintf("at least %d", k.want), "add what is missing"
	case beyondBounds:
		p.Fault, p.Expected, p.Do = "the number is out of range", interval(b.rule), "check for a slip of the pen"
	}
	t.report(p)
}

func (t *translator) missing(at path, rule map[string]any, names []string) {
	properties, _ := rule["properties"].(map[string]any)
	for _, name := range names {
		property, _ := properties[name].(map[string]any)
		t.report(Problem{
			Code: CodeMissing, Path: string(at.field(name)),
			Fault: "it is missing", Expected: described(property), Do: "add the field",
		})
	}
}

// described is the meaning of a field, from the schema.
func described(property map[string]any) string {
	text, _ := property["description"].(string)
	return strings.ToLower(text[:min(1, len(text))]) + strings.TrimSuffix(text[min(1, len(text)):], ".")
}

var typeNames = map[string]string{
	"object": "an object in { }", "array": "a list in [ ]", "string": "text in quotes", "number": "a bare number",
	"integer": "a whole number", "boolean": "true or false", "null": "null",
}

func wrongType(k otherType, rule map[string]any) (code, fault, expected, do string) {
	code, fault, do = CodeWrongType, "it is "+typeNames[k.got], "write it in that form"
	expected = typeNames[k.want]
	if k.got == "number" && k.want == "integer" {
		fault = "it is no whole number"
	}
	name, _ := rule["format"].(string)
	if f, ok := formats[name]; ok {
		expected, do = f.expected(), f.do()
	}
	if k.got == "null" {
		do = "leave the field out where nothing was observed, or " + do
	}
	return code, fault, expected, do
}

func badText(k badFormat) (code, fault, expected, do string) {
	f := formats[k.format]
	fault = k.err.Error()
	if text, ok := k.err.(*quantity.TextError); ok {
		fault, expected = text.Reason, text.Expected
	}
	return f.code, fault, expected, f.do()
}

func notInList(k notListed) (code, fault, expected, do string) {
	names := make([]string, 0, len(k.want))
	for _, want := range k.want {
		names = append(names, fmt.Sprint(want))
	}
	do = "choose one of them"
	if got, ok := k.got.(string); ok {
		if likely := nearest(got, names); likely != "" {
			do = fmt.Sprintf("perhaps %q is meant", likely)
		}
	}
	return CodeNotInList, "it is not in the list", "one of " + strings.Join(names, ", "), do
}

func interval(rule map[string]any) string {
	return fmt.Sprintf("%v to %v", rule["minimum"], rule["maximum"])
}

// path turns a list of names and numbers into a path.
func (t *translator) path(location []string) path {
	at, node := path(""), any(t.root)
	for _, token := range location {
		if _, isList := node.([]any); isList {
			i, _ := strconv.Atoi(token)
			at = at.item(i)
		} else {
			at = at.field(token)
		}
		node = child(node, token)
	}
	return at
}

func (t *translator) find(location []string) any {
	node := any(t.root)
	for _, token := range location {
		node = child(node, token)
	}
	return node
}

func child(node any, token string) any {
	switch node := node.(type) {
	case map[string]any:
		return node[token]
	case []any:
		if i, err := strconv.Atoi(token); err == nil && i < len(node) {
			return node[i]
		}
	}
	return nil
}
