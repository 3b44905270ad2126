package cli

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
)

// Every case of ropes and gear goes through the command, one line each; package
// work compares its numbers.
func TestWorkTakesEveryRopeCase(t *testing.T) {
	files, err := filepath.Glob("../work/testdata/cases/rope_*.json")
	if err != nil || len(files) < 6 {
		t.Fatalf("%d cases, %v", len(files), err)
	}
	var out, talk bytes.Buffer
	if code := Run(Env{Args: append([]string{"work"}, files...), Stdout: &out, Stderr: &talk}); code != ExitDone {
		t.Fatalf("exit %d: %s", code, talk.String())
	}
	if lines := strings.Count(out.String(), `"group":"rope"`); lines != len(files) {
		t.Errorf("%d lines for %d files", lines, len(files))
	}
}
