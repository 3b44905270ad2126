package html

import (
	_ "embed"
	"encoding/base64"
	"html"
	"io"
	"strconv"
	"strings"

	"boughline/draw/svg"
	"boughline/sheet"
	"boughline/sheet/words"
)

//go:embed style.css
var style string

// Style returns the style of a sheet: all that stands in its one style element,
// so that a server can allow it by its hash.
func Style() string { return svg.Stylesheet + style }

// Write writes a sheet.
func Write(w io.Writer, s *sheet.Sheet) error {
	_, err := io.WriteString(w, Text(s))
	return err
}

// Text returns a sheet as one page. The same sheet gives the same bytes.
func Text(s *sheet.Sheet) string {
	p := &page{keys: map[string]int{}}
	p.put("<!DOCTYPE html>\n<html lang=\"", html.EscapeString(s.Language), "\">\n<head>\n<meta charset=\"utf-8\">\n",
		"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>", clean(s.Title), "</title>\n<style>", Style(), "</style>\n</head>\n<body", map[bool]string{true: ` class="large"`}[s.OnePage], ">\n")
	p.put("<header>\n<h1>", clean(s.Title), "</h1>\n<p class=\"subtitle\">", clean(s.Subtitle), "</p>\n</header>\n<main>\n")
	for _, b := range s.Blocks {
		p.block(b)
	}
	p.put("</main>\n<footer>\n")
	for _, line := range s.Foot {
		p.element("p", "", line)
	}
	p.put("</footer>\n</body>\n</html>\n")
	return p.b.String()
}

// page is one page being written.
type page struct {
	b strings.Builder
	// keys counts the drawings of a key, so that ids stay unique.
	keys    map[string]int
	newPage bool // the next heading begins a page on paper
}

func (p *page) put(parts ...string) {
	for _, text := range parts {
		p.b.WriteString(text)
	}
}

// clean makes text harmless in elements and attributes and leaves out what
// HTML cannot hold.
func clean(text string) string {
	return html.EscapeString(strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' || r >= 0x7f && r < 0xa0 || r&0xfffe == 0xfffe {
			return -1
		}
		return r
	}, text))
}

func (p *page) element(name, class, text string) {
	p.put("<", name)
	if class != "" {
		p.put(` class="`, class, `"`)
	}
	p.put(">", clean(text), "</", name, ">\n")
}

func (p *page) block(b sheet.Block) {
	switch b := b.(type) {
	case *sheet.Heading:
		p.heading(b)
	case *sheet.Paragraph:
		p.element("p", map[bool]string{true: "strong"}[b.Strong], b.Words)
	case *sheet.List:
		p.list(map[bool]string{true: "ol", false: "ul"}[b.Numbered], "", b.Items)
	case *sheet.Checklist:
		p.list("ul", "tick", b.Items)
	case *sheet.Table:
		p.table(b)
	case *sheet.Figures:
		p.figures(b)
	case *sheet.Photos:
		p.photos(b)
	case *sheet.Lines:
		p.lines(b)
	case *sheet.Signatures:
		p.signatures(b)
	case *sheet.Cautions:
		p.put("<aside class=\"cautions\" aria-label=\"", clean(words.Caution), "\">\n")
		p.element("p", "strong", words.Caution)
		p.list("ul", "", b.Items)
		p.put("</aside>\n")
	case *sheet.NewPage:
		p.newPage = true
	}
}

// heading writes a heading below the title, which is the first.
func (p *page) heading(h *sheet.Heading) {
	class := ""
	if p.newPage {
		class, p.newPage = "new-page", false
	}
	p.element("h"+strconv.Itoa(min(h.Level+1, 6)), class, h.Words)
}

func (p *page) list(kind, class string, items []string) {
	p.put("<", kind)
	if class != "" {
		p.put(` class="`, class, `"`)
	}
	p.put(">\n")
	for _, item := range items {
		p.element("li", "", item)
	}
	p.put("</", kind, ">\n")
}

// table names each row by its first cell.
func (p *page) table(t *sheet.Table) {
	p.put("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-label=\"", clean(t.Caption), "\">\n<table>\n<caption>", clean(t.Caption), "</caption>\n<thead>\n<tr>")
	for _, c := range t.Columns {
		p.put("<th scope=\"col\"", number(c), ">", clean(c.Title), "</th>")
	}
	p.put("</tr>\n</thead>\n<tbody>\n")
	for _, row := range t.Rows {
		p.put("<tr>")
		for i, cell := range row {
			if i == 0 {
				p.put("<th scope=\"row\">", clean(cell), "</th>")
				continue
			}
			p.put("<td", number(t.Columns[i]), ">", clean(cell), "</td>")
		}
		p.put("</tr>\n")
	}
	p.put("</tbody>\n</table>\n</div>\n")
}

func number(c sheet.Column) string {
	if c.Number {
		return ` class="number"`
	}
	return ""
}

func (p *page) figures(f *sheet.Figures) {
	p.put("<div class=\"", map[bool]string{true: "wide ", false: ""}[f.Wide], "drawings\">\n")
	for _, scene := range f.Scenes {
		one := *scene
		if p.keys[one.Key]++; p.keys[scene.Key] > 1 {
			one.Key += " " + strconv.Itoa(p.keys[scene.Key])
		}
		p.put("<figure>\n", svg.Text(&one, svg.Options{}), "</figure>\n")
	}
	p.put("</div>\n")
}

func (p *page) photos(list *sheet.Photos) {
	p.put("<div class=\"photos\">\n")
	for _, photo := range list.List {
		caption := photo.Words()
		p.put("<figure>\n<img alt=\"", clean(caption), "\" width=\"", strconv.Itoa(photo.Width), "\" height=\"", strconv.Itoa(photo.Height),
			"\" src=\"data:image/jpeg;base64,", base64.StdEncoding.EncodeToString(photo.Data), "\">\n")
		p.element("figcaption", "", caption)
		p.put("</figure>\n")
	}
	p.put("</div>\n")
}

func (p *page) lines(l *sheet.Lines) {
	for _, f := range l.Fields {
		p.put("<div class=\"field\">\n")
		p.element("p", "", f.Label)
		p.put(strings.Repeat("<div class=\"line\"></div>\n", f.Lines), "</div>\n")
	}
}

func (p *page) signatures(s *sheet.Signatures) {
	p.put("<table class=\"sign\">\n<thead>\n<tr><td></td>")
	for _, title := range []string{words.Name, words.Day, words.Sign} {
		p.put("<th scope=\"col\">", clean(title), "</th>")
	}
	p.put("</tr>\n</thead>\n<tbody>\n")
	for _, who := range s.Who {
		p.put("<tr><th scope=\"row\">", clean(who), "</th><td></td><td></td><td></td></tr>\n")
	}
	p.put("</tbody>\n</table>\n")
}
