package web

import (
	"slices"
	"strings"

	"boughline/engine/measure"
	"boughline/quantity"
	"boughline/web/words"
)

// measuring is a kind of measuring with what was typed for it.
type measuring struct {
	*entry
	kind     measure.Kind
	readings map[string][]measure.Reading
	missing  []measure.Field
	begun    bool // something was typed
}

// read takes the readings of a kind out of what was typed; what cannot be taken
// is a fault of its field.
func (a *app) read(e *entry, kind measure.Kind) *measuring {
	spread := func(how quantity.How, d measure.Dimension, value float64) float64 {
		return a.Notebook.Knowledge().StandardDeviation(how, string(d), value)
	}
	m := &measuring{entry: e, kind: kind, readings: map[string][]measure.Reading{}}
	for _, f := range kind.Fields {
		typedIn := false
		for _, name := range readingsOf(f.Name) {
			if e.text(name) == "" {
				continue
			}
			typedIn, m.begun = true, true
			if r, ok := e.reading(f, name, spread); ok {
				m.readings[f.Name] = append(m.readings[f.Name], r)
			}
		}
		if !typedIn && (f.Default == "" || e.text(sdOf(f.Name)) != "") {
			m.missing = append(m.missing, f)
		}
	}
	return m
}

// reading reads one reading of a field. A way of reading and an error that are
// typed with the number go before those that stand beside it.
func (e *entry) reading(f measure.Field, name string, spread measure.Spread) (measure.Reading, bool) {
	text := typed(e.text(name), e.units.read(f))
	if how := e.values.Get(f.Name + "_how"); how != "" && !endsInHow(text) {
		text += " " + how
	}
	r, err := f.Parse(text, spread)
	if err != nil {
		e.fault(name, err)
		return r, false
	}
	sd := e.text(sdOf(f.Name))
	if sd == "" || statesSd(text) {
		return r, true
	}
	if r, err = f.Parse(text+" ±"+typed(strings.TrimPrefix(sd, "±"), e.units.read(f)), spread); err != nil {
		e.fault(sdOf(f.Name), err)
	}
	return r, err == nil
}

// statesSd reports whether a text says how exactly its value is known.
func statesSd(text string) bool {
	return slices.ContainsFunc([]string{"±", "+-", "+/-"}, func(sign string) bool { return strings.Contains(text, sign) })
}

// faultMissing marks what was not read.
func (m *measuring) faultMissing() {
	for _, f := range m.missing {
		m.faults[f.Name] = words.WantValue
	}
}
