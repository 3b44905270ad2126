package knowledge

import (
	"regexp"
	"strings"
	"testing"
)

// base loads the tables or ends the test.
func base(t testing.TB) *Base {
	t.Helper()
	b, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func BenchmarkLoad(b *testing.B) {
	for b.Loop() {
		if _, err := Load(); err != nil {
			b.Fatal(err)
		}
	}
}

// TestNoTextPromises reads every cell of every table.
func TestNoTextPromises(t *testing.T) {
	promise := regexp.MustCompile(`(?i)\bsafe`)
	entries, err := data.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	for _, entry := range entries {
		text, err := data.ReadFile("data/" + entry.Name())
		if err != nil {
			t.Fatal(err)
		}
		for i, line := range strings.Split(string(text), "\n") {
			if promise.MatchString(line) {
				t.Errorf("%s line %d: %s", entry.Name(), i+1, line)
			}
		}
	}
}
