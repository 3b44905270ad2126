package work

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
)

// Fault says what is wrong with one input of a question.
type Fault struct{ Path, Reason string }

// Error implements error.
func (f *Fault) Error() string { return f.Path + ": " + f.Reason }

// Document makes the document of a question, as Run reads it, from what was
// written for its inputs by their paths. The faults name the inputs that cannot
// be taken.
func (q Question) Document(written map[string]string) ([]byte, []*Fault) {
	inputs := clone(q.fixed).(map[string]any)
	var faults []*Fault
	for _, in := range q.Inputs {
		text := strings.TrimSpace(written[in.Path])
		if text == "" {
			if in.Needed {
				faults = append(faults, &Fault{in.Path, "a value is needed here"})
			}
			continue
		}
		value, err := in.value(text)
		if err != nil {
			faults = append(faults, &Fault{in.Path, err.Error()})
			continue
		}
		put(inputs, strings.Split(in.Path, "."), value)
	}
	if len(faults) > 0 {
		return nil, faults
	}
	data, err := json.Marshal(map[string]any{"id": q.ID, "group": q.Group, "inputs": inputs})
	if err != nil {
		return nil, []*Fault{{"", err.Error()}}
	}
	return data, nil
}

// Answer works a question out and returns its results as plain JSON values.
func (q Question) Answer(written map[string]string) (any, []*Fault, error) {
	document, faults := q.Document(written)
	if len(faults) > 0 {
		return nil, faults, nil
	}
	result, err := Run(document)
	if err != nil {
		return nil, nil, err
	}
	data, err := json.Marshal(result.Results)
	if err != nil {
		return nil, nil, fmt.Errorf("group %q: %w", q.Group, err)
	}
	var plain any
	return plain, nil, json.Unmarshal(data, &plain)
}

// Examples are the examples of all inputs by their paths.
func (q Question) Examples() map[string]string {
	written := map[string]string{}
	for _, in := range q.Inputs {
		written[in.Path] = in.Example
	}
	return written
}

func (in Input) value(text string) (any, error) {
	switch in.Form {
	case Number:
		return in.number(text)
	case Whole:
		n, err := strconv.Atoi(text)
		if err != nil || float64(n) < in.Low || float64(n) > in.High {
			return nil, fmt.Errorf("%q; expected a whole number from %g to %g", text, in.Low, in.High)
		}
		return n, nil
	case Flag:
		return text == "yes", nil
	case Choice:
		if !slices.Contains(in.Columns, text) {
			return nil, fmt.Errorf("%q; expected %s", text, strings.Join(in.Columns, " or "))
		}
	case Words:
		return texts(strings.FieldsFunc(text, func(r rune) bool { return r == ';' || r == '\n' })), nil
	case List:
		return in.numbers(strings.Fields(strings.ReplaceAll(text, ";", " ")))
	case Rows, Records:
		return in.lines(text)
	}
	return text, nil
}

func (in Input) number(text string) (float64, error) {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || !(x >= in.Low && x <= in.High) {
		return 0, fmt.Errorf("%q; expected a number from %g to %g", text, in.Low, in.High)
	}
	return x, nil
}

func (in Input) numbers(cells []string) ([]float64, error) {
	list := make([]float64, len(cells))
	var err error
	for i, cell := range cells {
		if list[i], err = in.number(cell); err != nil {
			return nil, err
		}
	}
	return list, nil
}

// mostLines bounds a table that is typed.
const mostLines = 200

func (in Input) lines(text string) (any, error) {
	list := []any{}
	for _, line := range strings.FieldsFunc(text, func(r rune) bool { return r == ';' || r == '\n' }) {
		cells := strings.Fields(line)
		if len(cells) == 0 {
			continue
		}
		row, err := in.line(cells)
		if err != nil {
			return nil, fmt.Errorf("line %d: %w", len(list)+1, err)
		}
		list = append(list, row)
	}
	if len(list) > mostLines {
		return nil, fmt.Errorf("%d lines; expected at most %d", len(list), mostLines)
	}
	return list, nil
}

func (in Input) line(cells []string) (any, error) {
	wide := 0
	for _, c := range in.Columns {
		wide += columnOf(c).size
	}
	if len(cells) != wide {
		return nil, fmt.Errorf("%d entries; expected %d", len(cells), wide)
	}
	if in.Form == Rows {
		return in.numbers(cells)
	}
	record := map[string]any{}
	for _, name := range in.Columns {
		c := columnOf(name)
		value, err := in.cell(c, cells[:c.size])
		if err != nil {
			return nil, fmt.Errorf("%s: %w", c.name, err)
		}
		if cells = cells[c.size:]; value != nil {
			put(record, strings.Split(c.name, "."), value)
		}
	}
	return record, nil
}

// column is a column of records: name, name* for a word, name# for a whole
// number, name? for what may be a dash, name:3 for three numbers.
type column struct {
	name string
	mark byte
	size int
}

func columnOf(text string) column {
	if name, size, ok := strings.Cut(text, ":"); ok {
		n, _ := strconv.Atoi(size)
		return column{name, ':', n}
	}
	if last := text[len(text)-1]; strings.IndexByte("*#?", last) >= 0 {
		return column{text[:len(text)-1], last, 1}
	}
	return column{text, 0, 1}
}

func (in Input) cell(c column, cells []string) (any, error) {
	switch {
	case c.mark == ':':
		return in.numbers(cells)
	case c.mark == '*':
		return cells[0], nil
	case c.mark == '?' && cells[0] == "-":
		return nil, nil
	}
	x, err := in.number(cells[0])
	if err == nil && c.mark == '#' && x != float64(int(x)) {
		err = fmt.Errorf("%q; expected a whole number", cells[0])
	}
	return x, err
}

// put sets the value at a path, making objects on the way; a number in the path
// is a place in a list that is there.
func put(in map[string]any, path []string, value any) {
	if len(path) == 1 {
		in[path[0]] = value
		return
	}
	if list, ok := in[path[0]].([]any); ok {
		i, _ := strconv.Atoi(path[1])
		put(list[i].(map[string]any), path[2:], value)
		return
	}
	next, ok := in[path[0]].(map[string]any)
	if !ok {
		next = map[string]any{}
		in[path[0]] = next
	}
	put(next, path[1:], value)
}

func clone(value any) any {
	switch v := value.(type) {
	case map[string]any:
		out := maps.Clone(v)
		for key, inner := range v {
			out[key] = clone(inner)
		}
		return out
	case []any:
		out := slices.Clone(v)
		for i, inner := range v {
			out[i] = clone(inner)
		}
		return out
	}
	return value
}
