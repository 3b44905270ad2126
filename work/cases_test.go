package work

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The files in testdata/cases hold results of outside solvers (SciPy, NumPy,
// CalculiX) and closed forms; each says how it was computed and how closely it
// is to be matched.

// tolerance is how far a result may lie from the expected one.
type tolerance struct {
	Rel    float64 `json:"rel"`
	Abs    float64 `json:"abs"`
	AbsDeg float64 `json:"abs_deg"`
}

// rule gives the keys that hold one of its words the tolerance of a name in
// the file, or leaves them out.
type rule struct {
	words []string
	name  string // key in the file's tolerance; "" leaves the result out
}

type caseFile struct {
	ID        string                     `json:"id"`
	Group     string                     `json:"group"`
	Expected  map[string]any             `json:"expected"`
	Tolerance map[string]json.RawMessage `json:"tolerance"`
}

// defaultRel holds a number for which the file names no tolerance.
const defaultRel = 1e-3

// checkGroup runs every case of a group and compares all expected numbers.
// The first rule with a word in the dotted path of a number decides.
func checkGroup(t *testing.T, group string, rules []rule) {
	t.Helper()
	files, err := filepath.Glob("testdata/cases/*.json")
	if err != nil {
		t.Fatal(err)
	}
	ran := 0
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var c caseFile
		if err := json.Unmarshal(data, &c); err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		if c.Group != group {
			continue
		}
		ran++
		t.Run(c.ID, func(t *testing.T) { checkCase(t, c, data, rules) })
	}
	if ran == 0 {
		t.Fatalf("no case of group %s in testdata/cases", group)
	}
}

func checkCase(t *testing.T, c caseFile, data []byte, rules []rule) {
	t.Helper()
	result, err := Run(data)
	if err != nil {
		t.Fatal(err)
	}
	encoded, err := json.Marshal(result.Results)
	if err != nil {
		t.Fatal(err)
	}
	var got any
	if err := json.Unmarshal(encoded, &got); err != nil {
		t.Fatal(err)
	}
	compare(t, c, rules, "", map[string]any(c.Expected), got)
}

func compare(t *testing.T, c caseFile, rules []rule, path string, want, got any) {
	t.Helper()
	tol, skip := c.toleranceOf(t, rules, path)
	if skip {
		return
	}
	switch w := want.(type) {
	case map[string]any:
		g, ok := got.(map[string]any)
		if !ok {
			t.Errorf("%s: got %v, want an object", path, got)
			return
		}
		for key, value := range w {
			compare(t, c, rules, path+"."+key, value, g[key])
		}
	case []any:
		g, ok := got.([]any)
		if !ok || len(g) != len(w) {
			t.Errorf("%s: got %v, want a list of %d", path, got, len(w))
			return
		}
		for i, value := range w {
			compare(t, c, rules, fmt.Sprintf("%s.%d", path, i), value, g[i])
		}
	case float64:
		g, ok := got.(float64)
		if !ok || math.Abs(g-w) > tol.Abs+tol.Rel*math.Abs(w) {
			t.Errorf("%s: got %v, want %v within %+v", path, got, w, tol)
		}
	default:
		if got != want {
			t.Errorf("%s: got %v, want %v", path, got, want)
		}
	}
}

// toleranceOf finds the tolerance of the number at path.
func (c caseFile) toleranceOf(t *testing.T, rules []rule, path string) (tol tolerance, skip bool) {
	t.Helper()
	for _, r := range rules {
		for _, word := range r.words {
			if strings.Contains(path, word) {
				if r.name == "" {
					return tolerance{}, true
				}
				return c.named(t, r.name), false
			}
		}
	}
	if raw, ok := c.Tolerance["rel"]; ok {
		if err := json.Unmarshal(raw, &tol.Rel); err != nil {
			t.Fatal(err)
		}
		if raw, ok := c.Tolerance["abs"]; ok {
			if err := json.Unmarshal(raw, &tol.Abs); err != nil {
				t.Fatal(err)
			}
		}
		return tol, false
	}
	return tolerance{Rel: defaultRel}, false
}

func (c caseFile) named(t *testing.T, name string) (tol tolerance) {
	t.Helper()
	raw, ok := c.Tolerance[name]
	if !ok {
		t.Fatalf("%s names no tolerance %q", c.ID, name)
	}
	if err := json.Unmarshal(raw, &tol); err != nil {
		t.Fatal(err)
	}
	return tol
}
