package work

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The cases are field descriptions with the fungus that they describe, written
// by others than the tables.
func TestFungusCases(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/fungus_*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var c struct {
			Expected struct {
				First []string `json:"first_any_of"`
				Among int      `json:"in_first"`
			} `json:"expected"`
		}
		if err := json.Unmarshal(data, &c); err != nil {
			t.Fatal(err)
		}
		r := fungusResult(t, string(data))
		if !slices.Contains(c.Expected.First, r.Ranked[0].Name) || c.Expected.Among != 3 {
			t.Errorf("%s: %+v, want one of %v first", file, r.Ranked[:3], c.Expected.First)
		}
		sum := 0.0
		for _, one := range r.Ranked {
			sum += one.Probability
		}
		if sum > 1 || r.Meaning == "" || r.Answer != "named" {
			t.Errorf("%s: sum %g, %q, %q", file, sum, r.Answer, r.Meaning)
		}
	}
}

func fungusResult(t *testing.T, document string) fungusResults {
	t.Helper()
	result, err := Run([]byte(document))
	if err != nil {
		t.Fatal(err)
	}
	return result.Results.(fungusResults)
}

func TestFungusAnswers(t *testing.T) {
	for name, c := range map[string]struct{ inputs, answer, first, advice string }{
		"nothing at all":   {`{}`, "not enough seen", "not enough seen", "no-people"},
		"nulls":            {`{"host":null,"position":null,"month":null,"form":null,"underside_type":null,"words":null}`, "not enough seen", "not enough seen", "no-people"},
		"one text":         {`{"host":"oak","position":"stem","words":"covered with bark, small shoots growing from it, hard swelling"}`, "perhaps no fungus", "perhaps no fungus", "none"},
		"on a fallen twig": {`{"position":["ground"],"form":"shelf_cluster","words":["on a fallen twig","thin"]}`, "harmless here", "small bracket on a dead twig", "none"},
		"unknown names":    {`{"host":"money tree","position":["chimney"],"form":"spaceship","underside_type":"carpet"}`, "not enough seen", "not enough seen", "no-people"},
	} {
		r := fungusResult(t, `{"id":"x","group":"fungus","inputs":`+c.inputs+`}`)
		if r.Answer != c.answer || r.Ranked[0].Name != c.first || r.Advice != c.advice {
			t.Errorf("%s: %q, %+v, %s", name, r.Answer, r.Ranked[:2], r.Advice)
		}
	}
}

func TestFungusRefusesFaults(t *testing.T) {
	for inputs, want := range map[string]string{
		`{"month":13}`: "inputs.month", `{"size_m":-1}`: "inputs.size_m", `{"words":3}`: "is no text or list", `{"host":[]}`: "inputs",
	} {
		if _, err := Run([]byte(`{"id":"x","group":"fungus","inputs":` + inputs + `}`)); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", inputs, err)
		}
	}
}
