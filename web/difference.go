package web

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"

	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// differences lists what two versions of a tree say differently, in the order
// of their names.
func differences(then, now *survey.Tree) []view.Difference {
	before, after := flat(then), flat(now)
	keys := slices.Sorted(maps.Keys(before))
	for key := range after {
		if _, ok := before[key]; !ok {
			keys = append(keys, key)
		}
	}
	slices.Sort(keys)
	var list []view.Difference
	for _, key := range keys {
		if before[key] != after[key] {
			list = append(list, view.Difference{Part: key, Then: orNothing(before[key]), Now: orNothing(after[key])})
		}
	}
	return list
}

func orNothing(text string) string {
	if text == "" {
		return "–"
	}
	return text
}

// flat writes a tree as lines: what, and what it says.
func flat(t *survey.Tree) map[string]string {
	lines := map[string]string{}
	data, err := json.Marshal(t)
	if err != nil {
		return map[string]string{t.ID: err.Error()}
	}
	var tree any
	if err := json.Unmarshal(data, &tree); err != nil {
		return map[string]string{t.ID: err.Error()}
	}
	flatten(lines, "", tree)
	return lines
}

func flatten(lines map[string]string, at string, node any) {
	switch node := node.(type) {
	case map[string]any:
		for name, value := range node {
			flatten(lines, joined(at, plain(name)), value)
		}
	case []any:
		for i, value := range node {
			flatten(lines, at+" "+nameOf(value, i), value)
		}
	default:
		lines[at] = fmt.Sprint(node)
	}
}

func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }

func joined(at, name string) string {
	if at == "" {
		return name
	}
	return at + " · " + name
}

// nameOf names an item of a list by what it is known by, so that one more
// item does not make all others differ.
func nameOf(node any, index int) string {
	if fields, ok := node.(map[string]any); ok {
		for _, key := range []string{"id", "member", "zone", "sign", "at"} {
			if name, ok := fields[key].(string); ok && name != "" {
				if key == "zone" {
					return words.Zone(name)
				}
				return name
			}
		}
	}
	return fmt.Sprint(index + 1)
}
