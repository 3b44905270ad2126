package pdf

import (
	"strings"
	"unicode/utf8"

	drawing "boughline/draw/pdf"
)

// Sizes of type, points, before the scale of a sheet.
const (
	titleSize = 18.0
	textSize  = 9.5
	cellSize  = 8.5
	footSize  = 7.0
)

var headingSizes = [...]float64{13, 11, 9.5}

// leading is how far lines stand apart for a size, mm.
func (p *printer) leading(size float64) float64 { return p.scale * size * 25.4 / 72 * 1.32 }

// rise is how far a base line lies below the top of its line, mm.
func (p *printer) rise(size float64) float64 { return p.scale * size * 25.4 / 72 * 1.02 }

// face takes up the typeface at a size.
func (p *printer) face(size float64, strong bool) {
	style := ""
	if strong {
		style = "B"
	}
	p.doc.SetFont(drawing.Family, style, p.scale*size)
}

func (p *printer) pen(width float64) {
	p.doc.SetDrawColor(0, 0, 0)
	p.doc.SetDashPattern(nil, 0)
	p.doc.SetLineWidth(width)
}

// text prints words on a base line in the face taken up.
func (p *printer) text(x, y float64, words string) {
	p.doc.SetTextColor(0, 0, 0)
	p.doc.Text(x, y, drawing.Printable(words))
}

// lines breaks words into lines no wider than width in the face taken up. A
// word that is wider is broken where the line ends.
func (p *printer) lines(words string, width float64) []string {
	words = drawing.Printable(words)
	var lines []string
	line := ""
	for _, word := range strings.FieldsFunc(words, func(r rune) bool { return r == ' ' || r == '\n' || r == '\t' }) {
		joined := word
		if line != "" {
			joined = line + " " + word
		}
		if p.doc.GetStringWidth(joined) <= width {
			line = joined
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		for line = word; p.doc.GetStringWidth(line) > width; {
			n := p.prefix(line, width)
			lines = append(lines, line[:n])
			line = line[n:]
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// prefix is how many bytes of a word fit, at least one letter; a hyphen or a
// slash near the end is a better place to break.
func (p *printer) prefix(word string, width float64) int {
	_, n := utf8.DecodeRuneInString(word)
	for n < len(word) {
		_, more := utf8.DecodeRuneInString(word[n:])
		if p.doc.GetStringWidth(word[:n+more]) > width {
			break
		}
		n += more
	}
	if at := strings.LastIndexAny(word[:n], "-/_"); at > n/2 && n < len(word) {
		return at + 1
	}
	return n
}

// fit shortens a line that is too wide and ends it with dots.
func (p *printer) fit(words string, width float64) string {
	words = drawing.Printable(words)
	if p.doc.GetStringWidth(words) <= width {
		return words
	}
	for words != "" && p.doc.GetStringWidth(words+"...") > width {
		_, n := utf8.DecodeLastRuneInString(words)
		words = words[:len(words)-n]
	}
	return words + "..."
}
