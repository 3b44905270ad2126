package register_test

import (
	"bytes"
	"encoding/json"
	"reflect"
	"slices"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/register"
	"boughline/survey"
)

func demoRegister(t testing.TB) register.Register {
	t.Helper()
	r, problems, err := register.Read(bytes.NewReader(demo.Register()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return *r
}

// failing is a test of either kind.
type failing interface {
	Helper()
	Fatal(args ...any)
}

func write(t failing, r register.Register) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := r.Write(&b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// TestOneFaultIsOneProblem spoils the demo's register in one place each.
func TestOneFaultIsOneProblem(t *testing.T) {
	text := string(demo.Register())
	for _, f := range []struct{ old, new, code, path string }{
		{`"register": 1`, `"register": 2`, survey.CodeNewer, "register"},
		{`"register": 1`, `"register": 0`, survey.CodeVersion, "register"},
		{`"owner": "Pennow swings, an invented group",`, ``, survey.CodeMissing, "owner"},
		{`"id": "C1"`, `"id": "S1"`, survey.CodeDuplicateID, "items[1].id"},
		{`"kind": "swivel"`, `"kind": "swivle"`, survey.CodeNotInList, "items[3].kind"},
		{`"strength": "40 kN"`, `"strength": "40 kg"`, survey.CodeBadQuantity, "items[0].mark.strength"},
		{`"strength": "40 kN"`, `"strength": "40 N"`, survey.CodeOutOfRange, "items[0].mark.strength"},
		{`"length": "3 m taped"`, `"length": "3 km taped"`, survey.CodeOutOfRange, "items[0].length"},
		{`"length": "3 m taped"`, `"length": "3 m ±4 m taped"`, survey.CodeUncertain, "items[0].length"},
		{`"life_years": 6`, `"life_years": 0`, survey.CodeOutOfRange, "items[0].life_years"},
		{`"made": "2024-01-15"`, `"made": "2024-13-15"`, survey.CodeBadDate, "items[0].made"},
		{`"made": "2024-01-15"`, `"made": "1024-01-15"`, survey.CodeOutOfRange, "items[0].made"},
		{`"made": "2024-01-15"`, `"made": "2024-05-15"`, survey.CodeDayOrder, "items[0].in_service_since"},
		{`"found": "fit"}`, `"found": "fit", "next": "2026-01-01"}`, survey.CodeDayOrder, "items[0].examinations[0].next"},
		{`"why": "core to be felt through the sheath at the bowline"`, `"why": ""`, survey.CodeEmpty, "items[16].retired.why"},
		{`"items": ["S2", "R2", "D2"]`, `"items": ["S2", "R2", "D9"]`, survey.CodeReference, "uses[2].items[2]"},
		{`"items": ["S2", "R2", "D2"]`, `"items": []`, survey.CodeEmpty, "uses[2].items"},
		{`"serial"`, `"serail"`, survey.CodeUnknownField, "items[1].serail"},
	} {
		spoilt := strings.Replace(text, f.old, f.new, 1)
		if spoilt == text {
			t.Fatalf("%q does not stand in the demo's register", f.old)
		}
		r, problems, err := register.Read(strings.NewReader(spoilt))
		if err != nil || r != nil || len(problems) != 1 || problems[0].Code != f.code || problems[0].Path != f.path {
			t.Errorf("%s for %s: %v %v", f.new, f.old, err, problems)
		}
	}
}

func TestItemsThatAreLostAreNotMissed(t *testing.T) {
	// One name cannot be read; a use that names it is no second fault.
	text := strings.Replace(string(demo.Register()), `"id": "S2"`, `"id": 2`, 1)
	if _, problems, _ := register.Read(strings.NewReader(text)); len(problems) != 1 {
		t.Error(problems)
	}
}

func TestWrittenIsReadAlike(t *testing.T) {
	r := demoRegister(t)
	again, problems, err := register.Read(bytes.NewReader(write(t, r)))
	if err != nil || len(problems) > 0 || !reflect.DeepEqual(*again, r) {
		t.Error(err, problems)
	}
}

// TestSchemaAndTypesListTheSameFields goes through every definition.
func TestSchemaAndTypesListTheSameFields(t *testing.T) {
	var root map[string]any
	if err := json.Unmarshal(register.Schema(), &root); err != nil {
		t.Fatal(err)
	}
	definitions := root["$defs"].(map[string]any)
	definitions["register"] = root
	for name, typ := range map[string]reflect.Type{
		"register": reflect.TypeFor[register.Register](), "item": reflect.TypeFor[register.Item](), "examination": reflect.TypeFor[register.Examination](),
		"retirement": reflect.TypeFor[register.Retirement](), "use": reflect.TypeFor[register.Use](), "mark": reflect.TypeFor[survey.Mark](),
	} {
		d := definitions[name].(map[string]any)
		properties := d["properties"].(map[string]any)
		var required []any
		for f := range typ.Fields() {
			field, options, _ := strings.Cut(f.Tag.Get("json"), ",")
			p, ok := properties[field].(map[string]any)
			if text, _ := p["description"].(string); !ok || text == "" {
				t.Errorf("%s.%s is not described", name, field)
			}
			if options == "" {
				required = append(required, field)
			}
			delete(properties, field)
		}
		if len(properties) > 0 || !slices.Equal(required, d["required"].([]any)) || d["additionalProperties"] != false {
			t.Errorf("%s: left over %v, required %v", name, properties, d["required"])
		}
	}
}

// FuzzRead looks for texts that make Read panic, give problems without words,
// or are read but not written and read again alike.
func FuzzRead(f *testing.F) {
	f.Add(demo.Register())
	f.Add(demo.Survey())
	for _, small := range []string{"", "{}", "[]", `{"register":1,"owner":"a"}`, `{"register":1,"owner":"a","items":[{"id":"x"}],"uses":[{"date":"2026-05-16","items":["x",null]}]}`} {
		f.Add([]byte(small))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		r, problems, err := register.Read(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range problems {
			if p.Code == "" || p.Code == survey.CodeMisfit || p.Fault == "" || p.Expected == "" || p.Do == "" {
				t.Fatalf("not worded, or not found in time: %#v", p)
			}
		}
		if r == nil {
			return
		}
		written := write(t, *r)
		again, problems, err := register.Read(bytes.NewReader(written))
		if err != nil || len(problems) > 0 || !reflect.DeepEqual(again, r) {
			t.Fatalf("%v %v: %s became %s", err, problems, data, written)
		}
	})
}
