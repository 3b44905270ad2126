package draw

import (
	"strings"
	"unicode/utf8"
)

// Anchor says which point of a text stands at its place.
type Anchor int

// The anchors.
const (
	Start Anchor = iota
	Middle
	End
)

// Text is one line of words. At lies on its base line.
type Text struct {
	At     Point
	Words  string
	Size   float64
	Anchor Anchor
	Strong bool
}

// The two sizes of text. A drawing 120 wide fills a phone 390 pixels wide, so
// that a label is 12 pixels high there and 11 points in print.
const (
	LabelSize   = 3.8
	HeadingSize = 4.6
)

// TextWidth returns how much room a line of text needs at most in the usual
// fonts without serifs: the advance widths of DejaVu Sans, one of the widest
// of them; strong text a tenth more.
func TextWidth(words string, size float64, strong bool) float64 {
	sum := 0.0
	for _, r := range words {
		sum += advance(r)
	}
	if strong {
		sum *= 1.1
	}
	return sum * size / 1000
}

// advance is the width of a letter in thousandths of the size.
func advance(r rune) float64 {
	switch {
	case r >= ' ' && int(r-' ') < len(advances):
		return advances[r-' ']
	case r == '\u00a0': // a space that does not break
		return advances[0]
	case r < 0x2e80:
		return 840 // no Latin, Greek or Cyrillic letter but a few is wider
	}
	return 1000
}

// advances are those of DejaVu Sans 2.37 from space to tilde (its hmtx table).
var advances = [...]float64{
	317, 400, 459, 837, 636, 950, 779, 274, 390, 390, 500, 837, 317, 360, 317, 336,
	636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 336, 336, 837, 837, 837, 530,
	1000, 684, 686, 698, 770, 631, 575, 774, 751, 294, 294, 655, 557, 862, 748, 787,
	603, 787, 694, 634, 610, 731, 684, 988, 685, 610, 685, 390, 336, 390, 837, 500,
	500, 612, 634, 549, 634, 615, 352, 634, 633, 277, 277, 579, 277, 974, 633, 611,
	634, 634, 411, 520, 392, 633, 591, 817, 591, 591, 524, 636, 336, 636, 837,
}

// Box returns the room that the text takes.
func (t *Text) Box() Box {
	width := TextWidth(t.Words, t.Size, t.Strong)
	left := t.At.X - width*[...]float64{0, 0.5, 1}[t.Anchor]
	return Box{Point{left, t.At.Y - ascent*t.Size}, Point{left + width, t.At.Y + descent*t.Size}}
}

// How far letters reach above and below the base line, and lines stand apart,
// as shares of the size.
const (
	ascent  = 0.78
	descent = 0.24
	leading = 1.25
)

// LineHeight returns how far the base lines of a paragraph stand apart.
func LineHeight(size float64) float64 { return leading * size }

// Fit shortens a line that is too wide and ends it with dots.
func Fit(words string, size float64, strong bool, width float64) string {
	if TextWidth(words, size, strong) <= width {
		return words
	}
	const dots = "..."
	for words != "" && TextWidth(words+dots, size, strong) > width {
		_, n := utf8.DecodeLastRuneInString(words)
		words = words[:len(words)-n]
	}
	return strings.TrimRight(words, " ") + dots
}

// Wrap breaks text into lines no wider than width; a word wider than that is
// broken where the line ends.
func Wrap(words string, size float64, strong bool, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.FieldsFunc(words, breaks) {
		joined := word
		if line != "" {
			joined = line + " " + word
		}
		if TextWidth(joined, size, strong) <= width {
			line = joined
			continue
		}
		if line != "" {
			lines = append(lines, line)
		}
		for line = word; TextWidth(line, size, strong) > width; {
			n := prefix(line, size, strong, width)
			lines = append(lines, line[:n])
			line = line[n:]
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// breaks tells where a line may end: not at a space that holds a number and
// its unit together.
func breaks(r rune) bool { return r == ' ' || r == '\n' || r == '\t' }

// prefix is how many bytes of a word fit, at least one letter.
func prefix(word string, size float64, strong bool, width float64) int {
	_, n := utf8.DecodeRuneInString(word)
	for n < len(word) {
		_, more := utf8.DecodeRuneInString(word[n:])
		if TextWidth(word[:n+more], size, strong) > width {
			break
		}
		n += more
	}
	return n
}
