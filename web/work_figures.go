package web

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"boughline/web/view"
	"boughline/web/words"
	"boughline/work"
)

// figures turns the results of a question into lines and tables that read in the
// order of the catalogue of results.
func (u units) figures(results any, of work.ResultName) []view.Figure {
	object, ok := results.(map[string]any)
	if !ok {
		return []view.Figure{u.figure(of, results)}
	}
	keys := slices.SortedFunc(maps.Keys(object), func(a, b string) int {
		return cmp.Or(cmp.Compare(named(a, of).Order, named(b, of).Order), compareNumbers(a, b), cmp.Compare(a, b))
	})
	var list []view.Figure
	for _, key := range keys {
		if name := named(key, of); !name.Hidden && object[key] != nil {
			list = append(list, u.figure(name, object[key]))
		}
	}
	return list
}

// named is the name of a result; a key that is a number is told by itself, in
// the unit of what it stands in.
func named(key string, of work.ResultName) work.ResultName {
	name, ok := work.NameOfResult(key)
	if !ok {
		name.Label = key
	}
	if name.Unit == "" {
		name.Unit = of.Unit
	}
	return name
}

func compareNumbers(a, b string) int {
	x, errX := strconv.ParseFloat(a, 64)
	y, errY := strconv.ParseFloat(b, 64)
	if errX != nil || errY != nil {
		return 0
	}
	return cmp.Compare(x, y)
}

func (u units) figure(name work.ResultName, value any) view.Figure {
	f := view.Figure{Label: name.Label}
	switch v := value.(type) {
	case map[string]any:
		f.Inner = u.figures(v, name)
	case []any:
		u.fill(&f, name, v)
	default:
		f.Value = u.plain(value, name.Unit)
	}
	return f
}

// fill puts a list into a line, a list of lists into lines, one of objects into
// a table.
func (u units) fill(f *view.Figure, name work.ResultName, list []any) {
	if len(list) == 0 {
		f.Value = words.NoneOfThem
		return
	}
	switch list[0].(type) {
	case map[string]any:
		u.table(f, list)
	case []any:
		for _, row := range list {
			f.Inner = append(f.Inner, view.Figure{Value: u.joined(row.([]any), name.Unit)})
		}
	default:
		f.Value = u.joined(list, name.Unit)
	}
}

func (u units) joined(list []any, unit string) string {
	parts := make([]string, len(list))
	for i, value := range list {
		parts[i] = u.plain(value, unit)
	}
	return strings.Join(parts, "; ")
}

// table has a column for each result that the objects hold.
func (u units) table(f *view.Figure, list []any) {
	first := list[0].(map[string]any)
	keys := slices.DeleteFunc(slices.Collect(maps.Keys(first)), func(key string) bool {
		_, object := first[key].(map[string]any)
		return object || named(key, work.ResultName{}).Hidden
	})
	slices.SortFunc(keys, func(a, b string) int {
		return cmp.Compare(named(a, work.ResultName{}).Order, named(b, work.ResultName{}).Order)
	})
	for _, key := range keys {
		f.Head = append(f.Head, named(key, work.ResultName{}).Label)
	}
	for _, item := range list {
		var row []string
		for _, key := range keys {
			cell := u.figure(named(key, work.ResultName{}), item.(map[string]any)[key])
			row = append(row, cell.Value)
		}
		f.Rows = append(f.Rows, row)
	}
}

func (u units) plain(value any, unit string) string {
	switch v := value.(type) {
	case float64:
		if math.Abs(v) < 1e-12 {
			v = 0 // rounding left it
		}
		return u.in().Fine(v, unit)
	case bool:
		if v {
			return words.Yes
		}
		return words.No
	case string:
		return strings.ReplaceAll(v, "_", " ")
	}
	return words.NoneOfThem
}
