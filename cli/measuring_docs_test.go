package cli

import (
	"bytes"
	"os"
	"regexp"
	"strings"
	"testing"
)

// TestTheDocumentedMarksWork takes the marks out of docs/measuring.md, and wants every kind
// named there.
func TestTheDocumentedMarksWork(t *testing.T) {
	text, err := os.ReadFile("../docs/measuring.md")
	if err != nil {
		t.Fatal(err)
	}
	example := regexp.MustCompile("(?s)```json\n(.*?)```").FindSubmatch(text)
	if example == nil {
		t.Fatal("docs/measuring.md has no example")
	}
	var out, talk bytes.Buffer
	env := Env{Args: []string{"measure", "photo", "-"}, Stdin: bytes.NewReader(example[1]), Stdout: &out, Stderr: &talk}
	if code := Run(env); code != ExitDone {
		t.Fatalf("exit %d: %s", code, talk.String())
	}
	for _, want := range []string{"thickness at anchor", "along the limb from collar to beyond", "length of the stub", "angle of the limb over the stem"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the page does not say %q:\n%s", want, out.String())
		}
	}
	for _, kind := range append(kindNames(), photo) {
		if !bytes.Contains(text, []byte("`"+kind+"`")) && kind != photo {
			t.Errorf("docs/measuring.md does not name %s", kind)
		}
	}
}
