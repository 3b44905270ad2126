package svg

import (
	"encoding/xml"
	"flag"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"

	"boughline/draw"

	"pgregory.net/rapid"
)

var update = flag.Bool("update", false, "write the golden files anew")

// everything is a scene with every kind of item, pen and fill.
func everything() *draw.Scene {
	s := &draw.Scene{Key: "every thing", Title: "Every item & pen", Says: []string{"One of each."}, Width: 120, Height: 80}
	for i, p := range draw.Pens() {
		y := 8 + 5*float64(i)
		s.Items = append(s.Items, &draw.Line{Points: []draw.Point{{X: 5, Y: y}, {X: 40, Y: y}}, Pen: p}, &draw.Text{At: draw.Point{X: 42, Y: y}, Words: p.String(), Size: draw.LabelSize})
	}
	for i, f := range append([]draw.Fill{draw.Paper, draw.Ink}, draw.Hatches()...) {
		s.Items = append(s.Items, &draw.Polygon{Points: draw.Rectangle(draw.BoxAt(draw.Point{X: 5 + 12*float64(i), Y: 45}, 10, 10)), Pen: draw.Fine, Fill: f})
	}
	s.Items = append(s.Items,
		&draw.Arc{Centre: draw.Point{X: 90, Y: 10}, Radius: 8, From: 0.5, To: 2.5, Pen: draw.Bold},
		&draw.Group{Key: "finding F1", Title: "a <group>", Touch: draw.BoxAt(draw.Point{X: 85, Y: 25}, 10, 10), Items: []draw.Item{&draw.Circle{Centre: draw.Point{X: 90, Y: 30}, Radius: 4, Pen: draw.Accent, Fill: draw.Slant}}},
		&draw.Text{At: draw.Point{X: 60, Y: 70}, Words: `strong & "middle"`, Size: draw.HeadingSize, Anchor: draw.Middle, Strong: true})
	return s
}

func TestGolden(t *testing.T) {
	const name = "testdata/everything.svg"
	got := Text(everything(), Options{})
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s has changed: look at the drawing, then run with -update", name)
	}
}

// names reads a drawing as XML and returns its elements and attributes.
func names(t *rapid.T, text string) (elements, attributes map[string]bool) {
	elements, attributes = map[string]bool{}, map[string]bool{}
	for d := xml.NewDecoder(strings.NewReader(text)); ; {
		token, err := d.Token()
		if err == io.EOF {
			return elements, attributes
		}
		if err != nil {
			t.Fatalf("not well-formed: %v\n%s", err, text)
		}
		if start, ok := token.(xml.StartElement); ok {
			elements[start.Name.Local] = true
			for _, a := range start.Attr {
				attributes[a.Name.Local] = true
			}
		}
	}
}

func TestNoWordsBecomeMarkup(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.String().Draw(t, "words")
		s := &draw.Scene{Key: words, Title: words, Says: []string{words}, Width: 100, Height: 50, Items: []draw.Item{
			&draw.Group{Key: words, Title: words, Items: []draw.Item{&draw.Text{Words: words, Size: 4}}},
		}}
		elements, attributes := names(t, Text(s, Options{Link: func(key string) string { return key }}))
		for e := range elements {
			switch e {
			case "svg", "title", "desc", "rect", "g", "a", "text":
			default:
				t.Fatalf("element %q came out of %q", e, words)
			}
		}
		for a := range attributes {
			if a == "style" || strings.HasPrefix(a, "on") {
				t.Fatalf("attribute %q is refused by a strict policy", a)
			}
		}
	})
}

func TestDifferentKeysGiveDifferentIDs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.StringMatching(`[a-c0-9 \-–.]{0,6}`).Draw(t, "a"), rapid.StringMatching(`[a-c0-9 \-–.]{0,6}`).Draw(t, "b")
		if a != b && identifier(a) == identifier(b) {
			t.Fatalf("%q and %q both have the id %q", a, b, identifier(a))
		}
	})
}

func TestNoStyleThatAPolicyRefuses(t *testing.T) {
	text := Text(everything(), Options{})
	for _, refused := range []string{"style=", "<style", "<script", "url(", "href"} {
		if strings.Contains(text, refused) {
			t.Errorf("the drawing has %q", refused)
		}
	}
	for _, wanted := range []string{`role="img"`, "<title id=", "<desc id=", "viewBox="} {
		if !strings.Contains(text, wanted) {
			t.Errorf("the drawing has no %s", wanted)
		}
	}
}

func TestLinksMakeAGroup(t *testing.T) {
	text := Text(everything(), Options{Link: func(key string) string {
		if key == "finding F1" {
			return "/finding?id=F1&x=1"
		}
		return ""
	}})
	for _, want := range []string{`<a href="/finding?id=F1&amp;x=1" aria-label="a &lt;group&gt;">`, `role="group"`, `class="touch"`} {
		if !strings.Contains(text, want) {
			t.Errorf("the finding is no link with a name and room for a finger, or an image holds links: no %s", want)
		}
	}
}

func TestWordsThatStandBesideAreNotSaidTwice(t *testing.T) {
	text := Text(everything(), Options{Beside: "words"})
	if strings.Contains(text, "<desc") || !strings.Contains(text, `aria-describedby="words"`) {
		t.Errorf("the words stand in the drawing as well, or are not named:\n%s", text[:300])
	}
	if text := Text(everything(), Options{Beside: "words", Link: func(string) string { return "" }}); strings.Contains(text, "<desc") || strings.Contains(text, "describedby") {
		t.Error("a group of links says all its words before the first link")
	}
}

// The stylesheet dresses nothing that drawings do not have.
func TestStylesheetKnowsTheDrawings(t *testing.T) {
	classes := map[string]bool{"drawing": true}
	for _, list := range regexp.MustCompile(`class="([^"]*)"`).FindAllStringSubmatch(Text(everything(), Options{Link: func(string) string { return "/" }}), -1) {
		for _, class := range strings.Fields(list[1]) {
			classes[class] = true
		}
	}
	for _, named := range regexp.MustCompile(`\.([a-z][a-z-]*)`).FindAllStringSubmatch(Stylesheet, -1) {
		if !classes[named[1]] {
			t.Errorf("no drawing has the class %q", named[1])
		}
	}
}
