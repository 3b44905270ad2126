package exchange

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"boughline/survey"
)

// Defuse puts an apostrophe before text that a spreadsheet would take for a
// formula: text that begins with =, +, -, @, a tab, a carriage return, or an
// apostrophe before one of them. Numbers that the program writes are no text
// and stay as they are. Refuse takes the apostrophe away again.
func Defuse(text string) string {
	if isFormula(strings.TrimLeft(text, "'")) {
		return "'" + text
	}
	return text
}

// Refuse is the inverse of Defuse.
func Refuse(cell string) string {
	if bare := strings.TrimLeft(cell, "'"); bare != cell && isFormula(bare) {
		return cell[1:]
	}
	return cell
}

func isFormula(text string) bool { return text != "" && strings.IndexByte("=+-@\t\r", text[0]) >= 0 }

// table writes RFC 4180: UTF-8, commas, lines that end in CR LF.
type table struct {
	csv *csv.Writer
	row []string
}

func newTable(w io.Writer, columns ...string) *table {
	t := &table{csv: csv.NewWriter(w)}
	t.csv.UseCRLF = true
	_ = t.csv.Write(columns) // the error comes again at the end
	return t
}

func (t *table) text(texts ...string) *table {
	for _, text := range texts {
		t.row = append(t.row, Defuse(text))
	}
	return t
}

// number writes a number, and nothing for one that is not known.
func (t *table) number(x float64, known bool) *table {
	cell := ""
	if known {
		cell = strconv.FormatFloat(x, 'g', 7, 64)
	}
	t.row = append(t.row, cell)
	return t
}

// length writes a length in units of so many metres.
func (t *table) length(l *survey.MeasuredLength, unit float64) *table {
	if l == nil {
		return t.number(0, false)
	}
	return t.number(float64(l.Value)/unit, true)
}

func (t *table) count(n int) *table { return t.number(float64(n), true) }

func (t *table) end() {
	_ = t.csv.Write(t.row)
	t.row = t.row[:0]
}

func (t *table) close() error {
	t.csv.Flush()
	return t.csv.Error()
}
