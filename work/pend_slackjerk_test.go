package work

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"
)

// The two kinds of this group name their tolerances differently: one for all
// numbers of a vertical drop, one for each sort of number of an oblique one.
func TestPendSlackjerkCases(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/pend_slackjerk_*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	oblique := []rule{
		{[]string{".t_"}, "time"},
		{[]string{"lowest", "free_fall"}, "lowest"},
		{[]string{"peak", "ratio"}, "peak"},
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var c caseFile
		if err := json.Unmarshal(data, &c); err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		rules := oblique
		if _, vertical := c.Tolerance["rel"]; vertical {
			rules = nil
		}
		t.Run(c.ID, func(t *testing.T) { checkCase(t, c, data, rules) })
	}
}
