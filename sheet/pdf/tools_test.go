package pdf_test

import (
	"bytes"
	"encoding/xml"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"boughline/sheet"
	"boughline/sheet/pdf"
)

// tool runs a program on a document and returns what it prints; the test is
// skipped where the program is missing.
func tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		t.Skipf("%s is not installed (Debian: qpdf, poppler-utils)", name)
	}
	out, err := exec.Command(path, args...).CombinedOutput()
	if err != nil {
		t.Errorf("%s %v: %v\n%s", name, args, err, out)
	}
	return string(out)
}

// printed writes a sheet to a file.
func printed(t *testing.T, s *sheet.Sheet, paper pdf.Paper) string {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, s, paper); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "sheet.pdf")
	if err := os.WriteFile(name, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

// word is one word on a page, points from its upper left corner.
type word struct {
	page                   int
	left, top, right, foot float64
	text                   string
}

// wordsOf reads where pdftotext finds the words of a document.
func wordsOf(t *testing.T, file string) []word {
	t.Helper()
	var list []word
	page := 0
	d := xml.NewDecoder(strings.NewReader(tool(t, "pdftotext", "-bbox", file, "-")))
	d.Strict, d.Entity = false, xml.HTMLEntity
	for {
		token, err := d.Token()
		if token == nil || err != nil {
			return list
		}
		start, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		switch start.Name.Local {
		case "page":
			page++
		case "word":
			var text string
			if err := d.DecodeElement(&text, &start); err != nil {
				t.Fatal(err)
			}
			w := word{page: page, text: text}
			for _, a := range start.Attr {
				value, err := strconv.ParseFloat(a.Value, 64)
				if err != nil {
					t.Fatal(err)
				}
				switch a.Name.Local {
				case "xMin":
					w.left = value
				case "yMin":
					w.top = value
				case "xMax":
					w.right = value
				case "yMax":
					w.foot = value
				}
			}
			list = append(list, w)
		}
	}
}
