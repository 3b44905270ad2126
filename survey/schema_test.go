package survey

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"boughline/quantity"

	"pgregory.net/rapid"
)

// definitionNames are the definitions of the schema by the types they stand
// for.
var definitionNames = map[reflect.Type]string{
	reflect.TypeFor[MeasuredLength](): "measured_length",
	reflect.TypeFor[MeasuredAngle]():  "measured_angle",
	reflect.TypeFor[MeasuredMass]():   "measured_mass",
	reflect.TypeFor[MeasuredSpeed]():  "measured_speed",
	reflect.TypeFor[ChosenLength]():   "chosen_length",
	reflect.TypeFor[ChosenAngle]():    "chosen_angle",
	reflect.TypeFor[ChosenForce]():    "chosen_force",
	reflect.TypeFor[Date]():           "date",
}

// documentTypes lists every struct type of the document, Survey first.
func documentTypes(t reflect.Type, found []reflect.Type) []reflect.Type {
	switch {
	case t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice:
		return documentTypes(t.Elem(), found)
	case t.Kind() != reflect.Struct || isLeaf(t) || slices.Contains(found, t):
		return found
	}
	found = append(found, t)
	for f := range t.Fields() {
		found = documentTypes(f.Type, found)
	}
	return found
}

func snake(name string) string {
	return strings.ToLower(regexp.MustCompile(`([a-z])([A-Z])`).ReplaceAllString(name, "${1}_$2"))
}

func definition(t *testing.T, typ reflect.Type) map[string]any {
	t.Helper()
	if typ == reflect.TypeFor[Survey]() {
		return schema()
	}
	d, ok := schema()["$defs"].(map[string]any)[snake(typ.Name())].(map[string]any)
	if !ok {
		t.Fatalf("the schema has no definition of %s", typ.Name())
	}
	return d
}

func TestTypesAndSchemaListTheSameFields(t *testing.T) {
	types := documentTypes(reflect.TypeFor[Survey](), nil)
	for _, typ := range types {
		d := definition(t, typ)
		properties := d["properties"].(map[string]any)
		var names, required []string
		for f := range typ.Fields() {
			name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
			names = append(names, name)
			if options == "" {
				required = append(required, name)
			}
			checkProperty(t, typ.Name()+"."+name, f.Type, properties[name])
		}
		slices.Sort(names)
		if got := slices.Sorted(maps.Keys(properties)); !slices.Equal(got, names) {
			t.Errorf("%s: the schema has %v, the type %v", typ.Name(), got, names)
		}
		if got := fmt.Sprint(d["required"]); got != fmt.Sprint(required) {
			t.Errorf("%s: the schema requires %v, the type %v", typ.Name(), got, required)
		}
		if d["additionalProperties"] != false {
			t.Errorf("%s: unknown fields are not refused", typ.Name())
		}
	}
	if got, want := len(schema()["$defs"].(map[string]any)), len(types)-1+len(definitionNames)+len([]string{"id", "word"}); got != want {
		t.Errorf("%d definitions, want %d", got, want)
	}
}

// checkProperty holds a property of the schema against the type of its field.
func checkProperty(t *testing.T, key string, typ reflect.Type, property any) {
	t.Helper()
	p, _ := property.(map[string]any)
	if typ.Kind() == reflect.Pointer {
		typ = typ.Elem()
	}
	if text, _ := p["description"].(string); text == "" && !strings.HasSuffix(key, "[]") {
		t.Errorf("%s has no description", key)
	}
	ref, _ := p["$ref"].(string)
	name := strings.TrimPrefix(ref, "#/$defs/")
	ok := false
	switch typ.Kind() {
	case reflect.Struct:
		ok = name == definitionNames[typ] || (!isLeaf(typ) && name == snake(typ.Name()))
	case reflect.Slice:
		checkProperty(t, key+"[]", typ.Elem(), p["items"])
		ok = p["type"] == "array"
	case reflect.String:
		ok = p["type"] == "string" || p["enum"] != nil || name == "id" || name == "word"
	case reflect.Int:
		ok = p["type"] == "integer" && (p["const"] != nil || (p["minimum"] != nil && p["maximum"] != nil))
	case reflect.Float64:
		ok = p["type"] == "number" && p["minimum"] != nil && p["maximum"] != nil
	case reflect.Bool:
		ok = p["type"] == "boolean"
	}
	if !ok {
		t.Errorf("%s is %v in the schema, %v as a type", key, p, typ)
	}
}

func TestEveryQuantityHasARange(t *testing.T) {
	unused := map[string]bool{}
	for _, table := range []any{lengths, angles, masses, speeds, forces} {
		for _, key := range reflect.ValueOf(table).MapKeys() {
			unused[key.String()] = true
		}
	}
	has := func(key string, known bool) {
		if !known {
			t.Errorf("%s has no range", key)
		}
		delete(unused, key)
	}
	for _, typ := range documentTypes(reflect.TypeFor[Survey](), nil) {
		for i, f := range fieldsOf(typ) {
			ft := typ.Field(i).Type
			if ft.Kind() == reflect.Pointer {
				ft = ft.Elem()
			}
			switch reflect.Zero(ft).Interface().(type) {
			case MeasuredLength, ChosenLength:
				has(f.key, lengths[f.key].low < lengths[f.key].high)
			case MeasuredAngle, ChosenAngle:
				has(f.key, angles[f.key].low < angles[f.key].high)
			case MeasuredMass:
				has(f.key, masses[f.key].low < masses[f.key].high)
			case MeasuredSpeed:
				has(f.key, speeds[f.key].low < speeds[f.key].high)
			case ChosenForce:
				has(f.key, forces[f.key].low < forces[f.key].high)
			}
		}
	}
	for key := range unused {
		t.Errorf("the range of %s belongs to no field", key)
	}
}

// enumOf is the list of words of a property.
func enumOf(t *testing.T, typ reflect.Type, name string) []string {
	t.Helper()
	var words []string
	values, _ := definition(t, typ)["properties"].(map[string]any)[name].(map[string]any)["enum"].([]any)
	for _, v := range values {
		words = append(words, v.(string))
	}
	return words
}

func TestWordsOfTypesAndSchemaAreTheSame(t *testing.T) {
	tests := []struct {
		typ  reflect.Type
		name string
		want []string
	}{
		{reflect.TypeFor[Look](), "zone", Zones},
		{reflect.TypeFor[Look](), "state", []string{LookDone, LookNotDone, LookBlocked}},
		{reflect.TypeFor[CloserLook](), "result", []string{CloserClear, CloserWorse, CloserUnclear}},
		{reflect.TypeFor[Union](), "form", []string{FormU, FormV, NotSeen}},
		{reflect.TypeFor[Union](), "bark", []string{BarkRidge, BarkInclude, NotSeen}},
		{reflect.TypeFor[Mark](), "kind", []string{MarkBreaking, MarkWorking, MarkUnknown}},
		{reflect.TypeFor[Riders](), "posture", []string{Seated, Straddled, Standing}},
	}
	for _, test := range tests {
		if got := enumOf(t, test.typ, test.name); !slices.Equal(got, test.want) {
			t.Errorf("%s: the schema has %v, the type %v", test.name, got, test.want)
		}
	}
}

func TestSchemaIsACopyAndNamesItsDraft(t *testing.T) {
	Schema()[0] = 'x'
	var head struct {
		Draft string `json:"$schema"`
	}
	if err := json.Unmarshal(Schema(), &head); err != nil || head.Draft != "https://json-schema.org/draft/2020-12/schema" {
		t.Errorf("got %v, %v", head, err)
	}
}

// pattern is the pattern of a definition as ECMA-262 reads it, where \s is any
// white space.
func pattern(t interface{ Fatal(...any) }, name string) *regexp.Regexp {
	d := schema()["$defs"].(map[string]any)[name].(map[string]any)
	compiled, err := regexp.Compile(strings.ReplaceAll(d["pattern"].(string), `\s`, `[\s\v\p{Z}]`))
	if err != nil {
		t.Fatal(err)
	}
	return compiled
}

// Another program that knows only the patterns must not refuse what this one
// reads, and refuses what this one does, but for numbers too large and
// negative standard deviations.
func TestPatternsSayWhatParseReads(t *testing.T) {
	length, chosenLength := pattern(t, "measured_length"), pattern(t, "chosen_length")
	words := []string{"7", "72", ".5", "5.", "1e3", "1e372", "-", "+", "m", "cm", "ft", "kg", " ", "\u00a0", "±", "+-", "+/-", "%", "taped", "by eye", "from a table", "x", ","}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(words), 1, 10).Draw(t, "words"), "")
		_, err := quantity.Parse[quantity.Length](text)
		if got := length.MatchString(text); got != (err == nil) && !beyondPatterns(err) {
			t.Fatalf("%q: pattern %v, Parse %v", text, got, err)
		}
		_, err = quantity.ParseChosen[quantity.Length](text)
		if got := chosenLength.MatchString(text); got != (err == nil) && !beyondPatterns(err) {
			t.Fatalf("%q: pattern %v, ParseChosen %v", text, got, err)
		}
	})
}

// beyondPatterns tells the two faults that no pattern can see.
func beyondPatterns(err error) bool {
	said := fmt.Sprint(err)
	return strings.Contains(said, "negative") || strings.Contains(said, "too large")
}

func TestPatternsKnowEveryUnitAndWay(t *testing.T) {
	checkPattern[quantity.Length](t, "measured_length", true)
	checkPattern[quantity.Angle](t, "measured_angle", true)
	checkPattern[quantity.Mass](t, "measured_mass", true)
	checkPattern[quantity.Speed](t, "measured_speed", true)
	checkPattern[quantity.Length](t, "chosen_length", false)
	checkPattern[quantity.Angle](t, "chosen_angle", false)
	checkPattern[quantity.Force](t, "chosen_force", false)
}

func checkPattern[Q quantity.Kind](t *testing.T, name string, measured bool) {
	t.Helper()
	p := pattern(t, name)
	var q Q
	for _, u := range q.Units() {
		for _, how := range quantity.Hows() {
			for _, text := range []string{"1.5 " + u.Symbol + " " + string(how), "1.5 " + u.Symbol + " ±0.5 " + u.Symbol + " " + string(how)} {
				if p.MatchString(text) != measured {
					t.Errorf("%s: %q", name, text)
				}
			}
		}
		if !p.MatchString("-1.5e3" + u.Symbol) {
			t.Errorf("%s does not know %s", name, u.Symbol)
		}
	}
}

func TestExamplesOfTheFormatsAreRead(t *testing.T) {
	for name, f := range formats {
		if err := f.check(f.example); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if f.expected() == "text" {
			t.Errorf("%s does not say what is expected", name)
		}
	}
}
