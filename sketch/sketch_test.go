package sketch

import (
	"encoding/xml"
	"io"
	"reflect"
	"strings"
	"testing"
)

// each goes through all drawings.
func each(do func(id string, s Sketch)) {
	for _, id := range Signs() {
		s, _ := Of(id)
		do(id, s)
	}
}

func TestNoTwoDrawingsAreTheSame(t *testing.T) {
	seen := map[string]string{}
	each(func(id string, s Sketch) {
		svg := s.SVG("")
		if other, twice := seen[svg]; twice {
			t.Errorf("%s and %s are the same drawing", other, id)
		}
		seen[svg] = id
	})
	if len(seen) < 70 {
		t.Errorf("only %d drawings", len(seen))
	}
}

// One hand: every drawing stays on the square, sets what is looked for apart
// by a bold or filled stroke, and shows the tree or its place beside it in few
// lines.
func TestDrawingsAreInOneHand(t *testing.T) {
	each(func(id string, s Sketch) {
		marked := false
		for i, k := range s {
			marked = marked || k.Weight == Bold || k.Filled
			if len(k.Points) < 2 {
				t.Errorf("%s: stroke %d has %d points", id, i, len(k.Points))
			}
			for _, p := range k.Points {
				if p.X < 0 || p.X > 100 || p.Y < 0 || p.Y > 100 {
					t.Errorf("%s: stroke %d leaves the square at %v", id, i, p)
				}
			}
			for j := range i {
				if reflect.DeepEqual(k, s[j]) {
					t.Errorf("%s: strokes %d and %d lie on one another", id, j, i)
				}
			}
		}
		if !marked {
			t.Errorf("%s marks nothing", id)
		}
		if len(s) < 3 || len(s) > 40 {
			t.Errorf("%s has %d strokes", id, len(s))
		}
	})
}

// What is written is XML with a title first, on the square, in the colour of
// the text around it (SVG 2, W3C: title, viewBox, currentColor), and small.
func TestSVG(t *testing.T) {
	each(func(id string, s Sketch) {
		svg := s.SVG("a <title> & more")
		decoder := xml.NewDecoder(strings.NewReader(svg))
		var err error
		for err == nil {
			_, err = decoder.Token()
		}
		if err != io.EOF {
			t.Errorf("%s: %v", id, err)
		}
		for _, want := range []string{`viewBox="0 0 100 100"`, `stroke="currentColor"`, "<title>a &lt;title&gt; &amp; more</title>"} {
			if !strings.Contains(svg, want) {
				t.Errorf("%s: no %s", id, want)
			}
		}
		if strings.Contains(svg, "NaN") || len(svg) > 9000 {
			t.Errorf("%s: %d bytes, or no numbers", id, len(svg))
		}
	})
}

// A smooth stroke goes through its points; a straight one has lines alone.
func TestPaths(t *testing.T) {
	if got := line(Plain, 1, 2, 3, 4.25)[0].path(); got != "M1 2L3 4.2" {
		t.Errorf("a line: %s", got)
	}
	if got := curve(Plain, 0, 0, 6, 0, 12, 6)[0].path(); got != "M0 0C1 0 4 -1 6 0C8 1 11 5 12 6" {
		t.Errorf("a curve: %s", got)
	}
	if got := box(Plain, 0, 0, 1, 0, 1, 1)[0].path(); got != "M0 0L1 0L1 1Z" {
		t.Errorf("a box: %s", got)
	}
	if got := loop(Plain, 0, 0, 6, 0, 6, 6)[0].path(); !strings.HasSuffix(got, " 0 0Z") || strings.Count(got, "C") != 3 {
		t.Errorf("a loop: %s", got)
	}
}
