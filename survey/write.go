package survey

import (
	"reflect"
	"unicode/utf8"
)

// invalidText finds the first text that would be changed in writing.
func invalidText(v reflect.Value, at path) (found path, bad bool) {
	walk(v, at, func(at path, _ fieldOf, value reflect.Value) bool {
		if value.Kind() == reflect.String && !bad && !utf8.ValidString(value.String()) {
			found, bad = at, true
		}
		return !isLeaf(value.Type())
	})
	return found, bad
}
