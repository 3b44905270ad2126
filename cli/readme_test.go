package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestReadmeShowsRealOutput runs every command whose output the README shows.
func TestReadmeShowsRealOutput(t *testing.T) {
	readme, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	blocks := regexp.MustCompile("(?s)<!-- boughline (.*?) -->\n```text\n(.*?)\n```").FindAllSubmatch(readme, -1)
	if len(blocks) < 2 {
		t.Fatalf("the README shows %d outputs; expected at least 2", len(blocks))
	}
	for _, block := range blocks {
		args := strings.Fields(string(block[1]))
		for i, arg := range args {
			if strings.HasSuffix(arg, ".json") {
				args[i] = filepath.Join("..", arg)
			}
		}
		var out, talk bytes.Buffer
		if code := Run(Env{Args: args, Stdout: &out, Stderr: &talk}); code != ExitDone {
			t.Fatalf("%v: exit %d: %s", args, code, talk.String())
		}
		if got := strings.TrimSpace(out.String()); got != string(block[2]) {
			t.Errorf("README shows for %v:\n%s\nthe program prints:\n%s", args, block[2], got)
		}
	}
}
