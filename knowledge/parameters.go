package knowledge

import (
	"fmt"

	"boughline/source"
)

func loadParameters(l *loader, parameters map[string]source.Fact) []string {
	var keys []string
	for _, r := range l.read("parameters") {
		f := r.factOf(r.number("value"), r.number("low"), r.number("high"), r.text("unit"))
		f.Note = r.text("note")
		key := r.text("key")
		parameters[key] = f
		keys = append(keys, key)
	}
	return keys
}

// Parameter returns a number of the model in SI units, with its source and
// range. Use the constants of this package as keys; an unknown key panics.
func (b *Base) Parameter(key string) source.Fact {
	f, ok := b.parameters[key]
	if !ok {
		panic(fmt.Sprintf("knowledge: no parameter %q", key))
	}
	return f
}

// Parameters lists the keys of all parameters in the order of the model.
func (b *Base) Parameters() []string { return append([]string(nil), b.parameterKeys...) }
