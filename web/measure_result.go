package web

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"boughline/engine/measure"
	"boughline/quantity"
	"boughline/web/view"
	"boughline/web/words"
)

// worked words what the readings come to, or what keeps them from it.
func (m *measuring) worked() view.Worked {
	page := view.Worked{Caution: capital(m.kind.Caution) + ".", Formula: m.kind.Source}
	switch {
	case len(m.faults) > 0:
		page.Faults = m.faultsInWords()
		return page
	case !m.begun:
		return page
	case len(m.missing) > 0:
		for _, f := range m.missing {
			page.Missing = append(page.Missing, capital(f.Label))
		}
		return page
	}
	outcome, err := m.kind.Work(m.readings)
	if err != nil {
		page.Faults = m.refused(err)
		return page
	}
	for _, r := range outcome.Results {
		page.Results = append(page.Results, m.result(r))
	}
	for _, r := range outcome.Repeated {
		page.Notes = append(page.Notes, m.repeated(r))
	}
	return page
}

// repeated says whether readings of the same thing fit together.
func (m *measuring) repeated(r measure.Repeated) string {
	format := words.ReadingsDiffer
	if r.Agree() {
		format = words.ReadingsAgree
	}
	text := fmt.Sprintf(format, r.Degrees+1, r.Apart())
	if len(m.kind.Fields) == 1 {
		return text
	}
	return m.label(r.Field) + ": " + text
}

// refused puts what the kind says against the readings beside the field that it
// names first; what names none stands alone.
func (m *measuring) refused(err error) []string {
	text := err.Error()
	if name, fault, ok := strings.Cut(text, ": "); ok {
		if _, known := m.kind.Field(name); known {
			m.faults[name] = fault
			return m.faultsInWords()
		}
	}
	return []string{capital(text)}
}

func (m *measuring) faultsInWords() []string {
	var lines []string
	for _, f := range m.kind.Fields {
		for _, name := range append(readingsOf(f.Name), sdOf(f.Name)) {
			if fault := m.faults[name]; fault != "" {
				lines = append(lines, capital(f.Label)+": "+fault)
			}
		}
	}
	return lines
}

func (m *measuring) label(name string) string {
	f, _ := m.kind.Field(name)
	return capital(cmp.Or(f.Label, name))
}

func (m *measuring) result(r measure.Result) view.WorkedResult {
	text, low, high := m.units.written(r)
	shown := view.WorkedResult{Label: capital(r.Label), Line: text, Form: r.Dimension == measure.Length || r.Dimension == measure.Angle}
	if slices.Contains(thicknesses, r.Name) {
		shown.Girth = text + " " + across
	}
	if r.Sd > 0 {
		shown.Notes = append(shown.Notes, fmt.Sprintf(words.BoundsOf, low, high))
		shown.Notes = append(shown.Notes, m.shares(r)...)
	}
	if r.TooCoarse() {
		shown.Notes = append(shown.Notes, words.TooCoarse)
	}
	return shown
}

// leastShare is the share in the variance from which a reading is named.
const leastShare = 0.05

// shares says which readings make the error, the greatest first. Where there
// is one reading only there is nothing to say.
func (m *measuring) shares(r measure.Result) []string {
	names := slices.DeleteFunc(slices.Sorted(maps.Keys(r.Share)), func(name string) bool { return r.Share[name] < leastShare })
	if len(r.Share) < 2 || len(names) == 0 {
		return nil
	}
	slices.SortStableFunc(names, func(a, b string) int { return cmp.Compare(r.Share[b], r.Share[a]) })
	format := words.GreatestOfError
	if r.Share[names[0]] > 0.5 {
		format = words.MostOfError
	}
	lines := []string{fmt.Sprintf(format, m.label(names[0]), 100*r.Share[names[0]])}
	var rest []string
	for _, name := range names[1:] {
		rest = append(rest, fmt.Sprintf("%s (%.0f %%)", m.label(name), 100*r.Share[name]))
	}
	if len(rest) > 0 {
		lines = append(lines, fmt.Sprintf(words.RestOfError, strings.Join(rest, "; ")))
	}
	return lines
}

// thicknesses are the results that go into the thickness of a limb.
var thicknesses = []string{"thickness", "over-bark"}

const (
	foot = 0.3048 // m, exact (international foot, 1959)
	inch = foot / 12
)

// written writes a result with its bounds in the units that a person reads.
func (u units) written(r measure.Result) (text, low, high string) {
	unit := quantity.Unit{Symbol: "ft", Factor: foot}
	switch {
	case !u.feet || r.Dimension == measure.Angle:
		low, high = r.Bounds()
		return r.Text(), low, high
	case r.Dimension == measure.Area:
		unit = quantity.Unit{Symbol: "ft2", Factor: foot * foot}
	case r.Dimension == measure.Modulus:
		unit = quantity.Unit{Symbol: "in3", Factor: inch * inch * inch}
	case slices.Contains(thicknesses, r.Name) || r.Name == "under-bark":
		unit = quantity.Unit{Symbol: "in", Factor: inch}
	}
	low, high = r.BoundsIn(unit)
	return r.TextIn(unit), low, high
}
