package survey

import (
	"strings"
	"testing"
)

func TestParserStopsAtTooManyValues(t *testing.T) {
	p := newParser([]byte(`{"trees": [0, 0, 0, 0]}`))
	p.left = 4
	if _, err := p.value("", 0); err == nil || len(p.problems) != 1 {
		t.Fatalf("got %v, %v", err, p.problems)
	}
	if got := p.problems[0]; got.Code != CodeTooLarge || got.Path != "trees[2]" || got.Column != 18 {
		t.Errorf("got %#v", got)
	}
}

// RFC 8259 section 8.2 leaves half surrogate pairs open; the decoder of the
// standard library turns them into U+FFFD.
func TestParseFindsLostCharacters(t *testing.T) {
	tests := []struct {
		text string
		want int
	}{
		{`"\ud83c\udf33"`, 0}, // a tree
		{`"\ud83c"`, 1},
		{`"\udf33 tree"`, 1},
		{`"\ufffd"`, 0},
		{`"` + "\ufffd" + `"`, 0},
		{`"\uFFFD\ud800"`, 1},
		{`{"\ud800": 1}`, 1},
		{`["\ufffd", "\ud800"]`, 1},
	}
	for _, test := range tests {
		_, problems, ok := parse([]byte(test.text), nil)
		if !ok || len(problems) != test.want {
			t.Errorf("%s: %v, %v; want %d problems", test.text, ok, problems, test.want)
		}
	}
}

func TestParseKeepsTheFirstOfTwoFields(t *testing.T) {
	tree, problems, ok := parse([]byte(`{"a": 1, "b": {"a": 2, "a": 3}, "a": 4}`), nil)
	if !ok || len(problems) != 2 || problems[0].Path != "b.a" || problems[1].Path != "a" {
		t.Fatalf("got %v, %v", ok, problems)
	}
	if got := tree.(map[string]any)["a"]; got != 1.0 {
		t.Errorf("got %v, want the first", got)
	}
}

func TestPathsTellOddNamesApart(t *testing.T) {
	seen := map[path]string{}
	for _, name := range []string{"a", "a.b", "a[0]", "[0]", "", "ä", `"`} {
		at := path("x").field(name)
		if other, taken := seen[at]; taken {
			t.Errorf("%q and %q have the path %s", name, other, at)
		}
		seen[at] = name
	}
	if got := path("").field("trees").item(2).field("id"); got != "trees[2].id" || got.parent() != "trees[2]" {
		t.Errorf("got %s and %s", got, got.parent())
	}
}

func TestShortenKeepsShortTextsAndOneLine(t *testing.T) {
	if got := shorten("a\n b"); got != "a b" {
		t.Errorf("got %q", got)
	}
	long := shorten(strings.Repeat("ä", 1000))
	if n := len([]rune(long)); n != 63 {
		t.Errorf("%d characters, want 60 and three dots", n)
	}
}

func TestUpgradeGoesStepByStep(t *testing.T) {
	var way []float64
	note := func(root map[string]any) { way = append(way, root["boughline"].(float64)) }
	root := map[string]any{"boughline": 2.0}
	upgrade(root, "boughline", []step{note, note, note})
	if root["boughline"] != 4.0 || len(way) != 2 || way[0] != 2 || way[1] != 3 {
		t.Errorf("from 2 to %v by %v", root["boughline"], way)
	}
	for _, version := range []any{nil, "1", 0.0, -3.0} {
		root := map[string]any{"boughline": version}
		upgrade(root, "boughline", []step{note})
		if root["boughline"] != version {
			t.Errorf("%v became %v", version, root["boughline"])
		}
	}
	if len(steps) != Version-1 {
		t.Errorf("%d steps lead to version %d", len(steps), Version)
	}
}
