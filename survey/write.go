package survey

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"unicode/utf8"
)

// Write writes a survey in its canonical form: indented, the fields in the
// order of the types, the same bytes each time. It fails for text that is not
// UTF-8 and for numbers that are not finite, which JSON cannot hold.
func Write(w io.Writer, s *Survey) error {
	data, err := encode(s)
	if err != nil {
		return fmt.Errorf("writing a survey: %w", err)
	}
	_, err = w.Write(data)
	return err
}

func encode(s *Survey) ([]byte, error) {
	if at, bad := invalidText(reflect.ValueOf(*s), ""); bad {
		return nil, fmt.Errorf("%s is not UTF-8", at)
	}
	written := *s
	if written.Trees == nil {
		written.Trees = []Tree{}
	}
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(written); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

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
