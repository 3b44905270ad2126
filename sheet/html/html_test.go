package html_test

import (
	"encoding/xml"
	"flag"
	"io"
	"os"
	"regexp"
	"strings"
	"testing"

	"boughline/sheet"
	"boughline/sheet/html"
	"boughline/sheet/sheettest"

	"pgregory.net/rapid"
)

var update = flag.Bool("update", false, "write the golden files anew")

// TestGolden holds one sheet of every kind to the byte, drawings left out:
// those have golden files of their own. A change is looked at before it is kept.
func TestGolden(t *testing.T) {
	drawing := regexp.MustCompile(`(?s)<svg.*?</svg>`)
	for _, k := range sheet.Kinds() {
		tree := map[string]string{"arborist": "T3", "looklist": "T6", "assessment": "T5", "working": "T8"}[k.Name]
		s := sheettest.Make(t, k.Name, sheet.Input{Tree: tree})
		got := strings.Replace(html.Text(s), html.Style(), "", 1)
		got = drawing.ReplaceAllStringFunc(got, func(svg string) string { return regexp.MustCompile(`<title.*?</title>`).FindString(svg) })
		name := "testdata/" + k.Name + ".html"
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
			t.Errorf("%s has changed: look at the sheet, then run with -update", name)
		}
	}
}

// element is one start of an element.
type element struct {
	name       string
	attributes map[string]string
}

// elements reads a page. It is written so that it is well-formed XML too, but
// for the few elements without an end.
func elements(t interface{ Fatalf(string, ...any) }, page string) []element {
	page = strings.TrimPrefix(page, "<!DOCTYPE html>\n")
	page = regexp.MustCompile(`<(meta|img)( [^>]*)>`).ReplaceAllString(page, "<$1$2/>")
	page = regexp.MustCompile(`(?s)<style>.*?</style>`).ReplaceAllString(page, "<style/>")
	var list []element
	for d := xml.NewDecoder(strings.NewReader(page)); ; {
		token, err := d.Token()
		if err == io.EOF {
			return list
		}
		if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
		if start, ok := token.(xml.StartElement); ok {
			e := element{start.Name.Local, map[string]string{}}
			for _, a := range start.Attr {
				e.attributes[a.Name.Local] = a.Value
			}
			list = append(list, e)
		}
	}
}

// What WCAG 2.2 asks of structure: 1.1.1 (text alternatives), 1.3.1 (tables,
// headings), 2.4.2 (a title), 3.1.1 (a language); ids are unique.
func TestEveryKindIsAccessible(t *testing.T) {
	for _, k := range sheet.Kinds() {
		s := sheettest.Make(t, k.Name, sheet.Input{Photos: append(sheettest.Photos(t, "T1", 2), sheettest.Photos(t, "", 2)...), Working: true})
		page := html.Text(s)
		level, titles, ids := 0, 0, map[string]bool{}
		for _, e := range elements(t, page) {
			if id := e.attributes["id"]; id != "" {
				if ids[id] {
					t.Errorf("%s: the id %q stands twice", k.Name, id)
				}
				ids[id] = true
			}
			switch e.name {
			case "html":
				if e.attributes["lang"] == "" {
					t.Errorf("%s has no language", k.Name)
				}
			case "h1", "h2", "h3", "h4":
				next := int(e.name[1] - '0')
				if next > level+1 {
					t.Errorf("%s: a heading of level %d follows one of level %d", k.Name, next, level)
				}
				if level = next; next == 1 {
					titles++
				}
			case "img":
				if e.attributes["alt"] == "" {
					t.Errorf("%s: a picture has no text", k.Name)
				}
			case "th":
				if e.attributes["scope"] == "" {
					t.Errorf("%s: a head cell has no scope", k.Name)
				}
			case "svg":
				if e.attributes["role"] != "img" || e.attributes["aria-labelledby"] == "" {
					t.Errorf("%s: a drawing has no name", k.Name)
				}
			}
		}
		if titles != 1 {
			t.Errorf("%s has %d titles", k.Name, titles)
		}
	}
}

// No words of a survey become markup: whatever they are, the page has the same
// elements.
func TestNoWordsBecomeMarkup(t *testing.T) {
	with := func(words string) *sheet.Sheet {
		return &sheet.Sheet{Title: words, Subtitle: words, Language: "en", Foot: []string{words}, Blocks: []sheet.Block{
			&sheet.Heading{Level: 1, Words: words}, &sheet.Paragraph{Words: words}, &sheet.List{Items: []string{words}}, &sheet.Checklist{Items: []string{words}},
			&sheet.Table{Caption: words, Columns: []sheet.Column{{Title: words}, {Title: words}}, Rows: [][]string{{words, words}}},
			&sheet.Photos{List: []sheet.Photo{{Tree: words, Of: words, Caption: words, Taken: words}}},
			&sheet.Lines{Fields: []sheet.Field{{Label: words, Lines: 1}}}, &sheet.Signatures{Who: []string{words}}, &sheet.Cautions{Items: []string{words}},
		}}
	}
	var names []string
	for _, e := range elements(t, html.Text(with("words"))) {
		names = append(names, e.name)
	}
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{`"><script>alert(1)</script>`, "' onload='x", "</style><b>", "]]>", "&lt;", "<!--"})).Draw(t, "words")
		list := elements(t, html.Text(with(words)))
		if len(list) != len(names) {
			t.Fatalf("%q made %d elements of %d", words, len(list), len(names))
		}
		for i, e := range list {
			if e.name != names[i] {
				t.Fatalf("%q made an element %s", words, e.name)
			}
			for name := range e.attributes {
				if strings.HasPrefix(name, "on") {
					t.Fatalf("%q made the attribute %s", words, name)
				}
			}
		}
	})
}

// A sheet fetches nothing.
func TestASheetIsOneFile(t *testing.T) {
	page := html.Text(sheettest.Make(t, "assessment", sheet.Input{Photos: sheettest.Photos(t, "T1", 1)}))
	for _, fetched := range []string{"<link", "<script", "url(", "@import", `src="http`, `href="`} {
		if strings.Contains(page, fetched) {
			t.Errorf("the page has %s", fetched)
		}
	}
	if !strings.Contains(page, `src="data:image/jpeg;base64,`) {
		t.Error("the photo is not in the page")
	}
}
