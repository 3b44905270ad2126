package survey

import (
	"encoding/json"
	"reflect"
	"strings"
	"sync"
)

// fieldOf is a field of the document. Its key tells it from those of other
// types, for example Station.at.
type fieldOf struct{ key, name string }

// walk calls visit for every field of a struct that is given and for every
// item of a list, and goes on into it where visit says so.
func walk(v reflect.Value, at path, visit func(at path, field fieldOf, value reflect.Value) (deeper bool)) {
	switch v.Kind() {
	case reflect.Struct:
		for i, field := range fieldsOf(v.Type()) {
			value := v.Field(i)
			if value.Kind() == reflect.Pointer {
				value = value.Elem()
			}
			if !value.IsValid() || (value.Kind() == reflect.Slice && value.Len() == 0) {
				continue
			}
			if inner := at.field(field.name); visit(inner, field, value) {
				walk(value, inner, visit)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			if inner := at.item(i); visit(inner, fieldOf{}, v.Index(i)) {
				walk(v.Index(i), inner, visit)
			}
		}
	}
}

// isLeaf reports whether a struct is written as one text.
func isLeaf(t reflect.Type) bool { return t.Implements(reflect.TypeFor[json.Marshaler]()) }

// knownFields remembers what fieldsOf has worked out for each type.
var knownFields sync.Map

// fieldsOf lists the exported fields of a type by their names in JSON, in the
// order of the type.
func fieldsOf(t reflect.Type) []fieldOf {
	if fields, known := knownFields.Load(t); known {
		return fields.([]fieldOf)
	}
	fields := make([]fieldOf, 0, t.NumField())
	for f := range t.Fields() {
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		fields = append(fields, fieldOf{t.Name() + "." + name, name})
	}
	knownFields.Store(t, fields)
	return fields
}
