package cli

import (
	"strings"
	"unicode/utf8"
)

// columns is the width of a terminal that text is written for.
const columns = 80

// wrap breaks text at spaces so that no line is longer than the width; a word
// longer than that stands alone.
func wrap(text string, width int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > width {
			lines = append(lines, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	return append(lines, line)
}

// hanging writes a first column, padded, and the wrapped text beside it.
func hanging(first, text string, indent int) string {
	var b strings.Builder
	for i, line := range wrap(text, columns-indent) {
		if i == 0 {
			b.WriteString(first + strings.Repeat(" ", max(1, indent-utf8.RuneCountInString(first))))
		} else {
			b.WriteString(strings.Repeat(" ", indent))
		}
		b.WriteString(line + "\n")
	}
	return b.String()
}

// paragraph writes wrapped text from the margin.
func paragraph(text string) string { return strings.Join(wrap(text, columns), "\n") + "\n" }
