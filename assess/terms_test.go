package assess

import (
	"bytes"
	"testing"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/survey"
)

// TestASymbolStandsForOneThing: within a check no two terms share a symbol, or
// its formula could not be followed.
func TestASymbolStandsForOneThing(t *testing.T) {
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	a, err := Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	for i := range a.Hangs {
		for _, c := range a.Hangs[i].Checks {
			seen := map[string]string{}
			for _, term := range c.Terms {
				if other, twice := seen[term.Symbol]; twice {
					t.Errorf("%s, %s %s: %s is %q and %q", a.Hangs[i].ID, c.Code, c.Where.Part, term.Symbol, other, term.Name)
				}
				seen[term.Symbol] = term.Name
			}
		}
	}
}
