package drawn

import (
	"flag"
	"os"
	"strings"
	"testing"

	"boughline/sketch"
)

var update = flag.Bool("update", false, "write the sketches anew")

// The text is what the package sketch draws today.
func TestTheTextIsNew(t *testing.T) {
	var b strings.Builder
	for _, id := range sketch.Signs() {
		s, _ := sketch.Of(id)
		b.WriteString(id + "\t" + strings.Replace(s.SVG(""), "<title></title>", "", 1) + "\n")
	}
	if *update {
		if err := os.WriteFile("sketches.txt", []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if b.String() != text {
		t.Error("a sketch has changed: go test ./sketch/drawn -update")
	}
}

func TestOneSketch(t *testing.T) {
	if svg, ok := Of("crown-01"); !ok || !strings.HasPrefix(svg, "<svg") || !strings.HasSuffix(svg, "</svg>") {
		t.Errorf("%q, %v", svg, ok)
	}
	if _, ok := Of("crown-99"); ok {
		t.Error("there is a sketch of a sign that is none")
	}
}
