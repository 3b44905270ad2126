package pdf_test

import (
	"bytes"
	"strings"
	"testing"

	drawing "boughline/draw/pdf"
	"boughline/sheet"
	"boughline/sheet/pdf"
	"boughline/sheet/sheettest"
)

var papers = map[string]pdf.Paper{"a4": pdf.A4, "letter": pdf.Letter}

func TestTheSameSheetGivesTheSameBytes(t *testing.T) {
	write := func() []byte {
		var b bytes.Buffer
		if err := pdf.Write(&b, sheettest.Make(t, "assessment", sheet.Input{Photos: sheettest.Photos(t, "T1", 3)}), pdf.A4); err != nil {
			t.Fatal(err)
		}
		return b.Bytes()
	}
	if !bytes.Equal(write(), write()) {
		t.Error("two runs differ")
	}
}

// Every kind on both papers is a document that qpdf finds no fault in, with all
// its fonts embedded, its title and all pages numbered.
func TestEveryKindIsASoundDocument(t *testing.T) {
	for _, k := range sheet.Kinds() {
		for name, paper := range papers {
			t.Run(k.Name+" "+name, func(t *testing.T) {
				s := sheettest.Make(t, k.Name, sheet.Input{Photos: sheettest.Photos(t, "T1", 3)})
				file := printed(t, s, paper)
				if out := tool(t, "qpdf", "--check", file); !strings.Contains(out, "No syntax or stream encoding errors") {
					t.Error(out)
				}
				fonts := strings.Split(strings.TrimSpace(tool(t, "pdffonts", file)), "\n")[2:]
				for _, line := range fonts {
					if f := strings.Fields(line); len(f) < 5 || f[len(f)-5] != "yes" {
						t.Errorf("not embedded: %s", line)
					}
				}
				info := tool(t, "pdfinfo", file)
				if !strings.Contains(info, "Title:           "+s.Title) {
					t.Error(info)
				}
				inside(t, file, paper, s)
			})
		}
	}
}

// inside holds every word to the margins of its page, the foot below them, and
// looks for the words of the sheet.
func inside(t *testing.T, file string, paper pdf.Paper, s *sheet.Sheet) {
	t.Helper()
	const point, slack = 72 / 25.4, 0.5
	list := wordsOf(t, file)
	pages, text := 0, strings.Builder{}
	for _, w := range list {
		pages = max(pages, w.page)
		text.WriteString(w.text + " ")
		low := (paper.Height - pdf.Bottom) * point
		if w.left < pdf.Side*point-slack || w.right > (paper.Width-pdf.Side)*point+slack || w.top < pdf.Top*point-3 {
			t.Errorf("page %d: %q lies outside the margins", w.page, w.text)
		}
		if w.foot > low+3 && w.top < low+4*point || w.foot > (paper.Height-6)*point {
			t.Errorf("page %d: %q runs into the foot", w.page, w.text)
		}
	}
	all := text.String()
	for _, wanted := range []string{"page 1 of", s.Title, "Read this first", sheettest.Made.Knowledge} {
		if !strings.Contains(strings.Join(strings.Fields(all), ""), strings.Join(strings.Fields(drawing.Printable(wanted)), "")) {
			t.Errorf("%q is nowhere on its %d pages", wanted, pages)
		}
	}
	for _, b := range s.Blocks {
		if h, ok := b.(*sheet.Heading); ok && !strings.Contains(strings.ReplaceAll(all, " ", ""), strings.ReplaceAll(drawing.Printable(h.Words), " ", "")) {
			t.Errorf("the heading %q is nowhere", h.Words)
		}
	}
}

// A day card is one page on either paper, with its limits in larger type than a
// paragraph of any other sheet.
func TestADayCardIsOnePage(t *testing.T) {
	s := sheettest.Make(t, "day-card", sheet.Input{})
	others := sheettest.Make(t, "risks", sheet.Input{})
	for name, paper := range papers {
		plain := 0.0
		for _, w := range wordsOf(t, printed(t, others, paper)) {
			if w.text == "whom," { // in its first paragraph
				plain = w.foot - w.top
			}
		}
		file := printed(t, s, paper)
		if info := tool(t, "pdfinfo", file); !strings.Contains(info, "Pages:           1\n") {
			t.Errorf("%s: %s", name, info)
		}
		for _, w := range wordsOf(t, file) {
			if w.text == "Who:" && (plain == 0 || w.foot-w.top <= plain) {
				t.Errorf("%s: the limits stand in type of %.1f points, other sheets in %.1f", name, w.foot-w.top, plain)
			}
		}
	}
}

// Thirty findings, no photo and forty, names longer than any column.
func TestNothingLeavesThePage(t *testing.T) {
	for name, paper := range papers {
		for _, photos := range []int{0, 40} {
			for _, kind := range []string{"assessment", "site", "arborist", "permission", "risks"} {
				t.Run(kind+" "+name, func(t *testing.T) {
					in := sheet.Input{Survey: sheettest.Crowded(t, 30), Photos: sheettest.Photos(t, "T1", photos)}
					s := sheettest.Make(t, kind, in)
					inside(t, printed(t, s, paper), paper, s)
				})
			}
		}
	}
}

// No heading is the last thing on a page, and a table that breaks has its head
// row on both.
func TestHeadingsStayWithWhatFollows(t *testing.T) {
	s := sheettest.Make(t, "working", sheet.Input{})
	list := wordsOf(t, printed(t, s, pdf.A4))
	lastLine := map[int]string{}
	heads := map[int]bool{}
	for i, w := range list {
		if w.foot < (pdf.A4.Height-pdf.Bottom)*72/25.4+3 {
			lastLine[w.page] = w.text
		}
		if w.text == "Step" && i+1 < len(list) && list[i+1].text == "Symbol" {
			heads[w.page] = true
		}
	}
	endings := map[string]bool{}
	for _, b := range s.Blocks {
		if h, ok := b.(*sheet.Heading); ok {
			f := strings.Fields(h.Words)
			endings[f[len(f)-1]] = true
		}
	}
	pages := len(lastLine)
	for page := 2; page < pages-2; page++ {
		if endings[lastLine[page]] {
			t.Errorf("page %d ends with %q, as a heading does", page, lastLine[page])
		}
		if !heads[page] {
			t.Errorf("page %d has no head row", page)
		}
	}
	if pages < 8 {
		t.Errorf("%d pages only", pages)
	}
}

// What the typeface has no letter for is marked, never lost, and never stops
// the sheet.
func TestLettersThatAreNotThere(t *testing.T) {
	s := sheettest.Make(t, "site", sheet.Input{})
	s.Title = "Žluťoučký 木 \U0001F333 \x00 oak"
	text := tool(t, "pdftotext", printed(t, s, pdf.A4), "-")
	if !strings.Contains(text, "Žluťoučký ? ? oak") {
		t.Errorf("%.200s", text)
	}
}

func BenchmarkWrite(b *testing.B) {
	s := sheettest.Make(b, "assessment", sheet.Input{Photos: sheettest.Photos(b, "T1", 40)})
	for b.Loop() {
		var w bytes.Buffer
		if err := pdf.Write(&w, s, pdf.A4); err != nil {
			b.Fatal(err)
		}
	}
}
