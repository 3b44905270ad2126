package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestTheDocumentedSurveyReads takes the example out of docs/survey.md: it has
// no problem, and its missing look is what keeps it from being decided.
func TestTheDocumentedSurveyReads(t *testing.T) {
	text, err := os.ReadFile("../docs/survey.md")
	if err != nil {
		t.Fatal(err)
	}
	example := regexp.MustCompile("(?s)```json\n(.*?)```").FindSubmatch(text)
	if example == nil {
		t.Fatal("docs/survey.md has no example")
	}
	file := filepath.Join(t.TempDir(), "survey.json")
	if err := os.WriteFile(file, example[1], 0o600); err != nil {
		t.Fatal(err)
	}
	var out, talk bytes.Buffer
	if code := Run(Env{Args: []string{"assess", file}, Stdout: &out, Stderr: &talk}); code != ExitDone {
		t.Fatalf("exit %d: %s", code, talk.String())
	}
	for _, want := range []string{"Not decided", "[look-missing]"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the page does not say %q:\n%s", want, out.String())
		}
	}
}

// TestTheDocumentedRegisterReads takes the example out of docs/register.md.
func TestTheDocumentedRegisterReads(t *testing.T) {
	text, err := os.ReadFile("../docs/register.md")
	if err != nil {
		t.Fatal(err)
	}
	example := regexp.MustCompile("(?s)```json\n(.*?)```").FindSubmatch(text)
	file := filepath.Join(t.TempDir(), "register.json")
	if err := os.WriteFile(file, example[1], 0o600); err != nil {
		t.Fatal(err)
	}
	var out, talk bytes.Buffer
	if code := Run(Env{Args: []string{"gear", file, "--on", "2026-09-01"}, Stdout: &out, Stderr: &talk}); code != ExitDone {
		t.Fatalf("exit %d: %s", code, talk.String())
	}
	if !strings.Contains(out.String(), "thorough examination due since 2026-08-21") {
		t.Error(out.String())
	}
}
