package work

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// Every result that the cases and the examples give has a name.
func TestEveryResultHasAName(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var c caseFile
		if err := json.Unmarshal(data, &c); err != nil {
			t.Fatal(err)
		}
		if c.Group == "measure" || c.Group == "reliability" || c.Group == "place" {
			continue // the first names its results itself; the others take seconds
		}
		result, err := Run(data)
		if err != nil {
			t.Fatal(err)
		}
		checkNames(t, file, asJSON(t, result.Results))
	}
	for _, q := range quick() {
		results, _, err := q.Answer(q.Examples())
		if err != nil {
			t.Fatal(err)
		}
		checkNames(t, q.ID, results)
	}
	checkNames(t, "reliability", asJSON(t, reliabilityResults{PfSORM: new(float64), BetaIS: new(float64)}))
}

func asJSON(t *testing.T, value any) (plain any) {
	t.Helper()
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &plain); err != nil {
		t.Fatal(err)
	}
	return plain
}

func checkNames(t *testing.T, where string, value any) {
	t.Helper()
	switch v := value.(type) {
	case map[string]any:
		for key, inner := range v {
			name, ok := NameOfResult(key)
			if _, err := strconv.ParseFloat(key, 64); err != nil && !ok && !typedName(key) {
				t.Errorf("%s: the result %q has no name", where, key)
			}
			if !name.Hidden {
				checkNames(t, where, inner)
			}
		}
	case []any:
		for _, inner := range v {
			checkNames(t, where, inner)
		}
	}
}

// typedName reports whether a key is the name of a member that a case invents.
func typedName(key string) bool { return len(key) > 3 && key[len(key)-4:] == "_tip" }
