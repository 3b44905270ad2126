package treelist

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"
)

// List is a list of others as rows of cells.
type List struct {
	Coding    string
	Separator rune
	Header    []string
	Rows      []Row
	Empty     int      // rows without anything in them
	Remarks   []string // on the file as a whole
}

// Row is one row with the line on which it begins, counted from 1.
type Row struct {
	Line  int
	Cells []string
}

// MostRows bounds a list.
const MostRows = 50_000

// Read takes a list apart. coding and separator may be empty: then they are
// found out.
func Read(data []byte, coding, separator string) (*List, error) {
	text, coding, err := decode(data, coding)
	if err != nil {
		return nil, err
	}
	l := &List{Coding: coding}
	text, first := l.saysSeparator(text)
	if separator != "" {
		l.Separator = []rune(separator)[0]
	}
	if l.Separator == 0 {
		l.Separator = findSeparator(text)
	}
	if strings.ContainsRune(text, 0) {
		return nil, errors.New("it holds zero bytes and is no list; a workbook has to be saved as CSV first")
	}
	if isGarbled(text) {
		l.Remarks = append(l.Remarks, "some letters look as if they had been written with a wrong coding before (such as Ã¼ for ü); they came in as they stand")
	}
	return l, l.rows(text, first)
}

// saysSeparator takes off a first line such as sep=; that spreadsheets write.
func (l *List) saysSeparator(text string) (rest string, first int) {
	head, rest, ok := strings.Cut(text, "\n")
	head = strings.TrimRight(head, "\r")
	if !ok || !strings.HasPrefix(strings.ToLower(head), "sep=") || len([]rune(head)) != 5 {
		return text, 1
	}
	l.Separator = []rune(head)[4]
	return rest, 2
}

func reader(text string, separator rune, lazy bool) *csv.Reader {
	r := csv.NewReader(strings.NewReader(text))
	r.Comma, r.LazyQuotes, r.FieldsPerRecord = separator, lazy, -1
	return r
}

// findSeparator takes the one that cuts the first rows into the most columns,
// alike in all of them.
func findSeparator(text string) rune {
	best, most := ',', 0
	for _, separator := range []rune{',', ';', '\t', '|'} {
		r, least := reader(text, separator, true), -1
		for range 20 {
			row, err := r.Read()
			if err != nil {
				break
			}
			if n := len(row); least < 0 || n < least && !isEmpty(row) {
				least = n
			}
		}
		if least > most {
			best, most = separator, least
		}
	}
	return best
}

func isEmpty(row []string) bool { return strings.TrimSpace(strings.Join(row, "")) == "" }

func (l *List) rows(text string, first int) error {
	r := reader(text, l.Separator, false)
	for {
		cells, err := r.Read()
		if errors.Is(err, csv.ErrBareQuote) && !r.LazyQuotes {
			l.Header, l.Rows, l.Empty = nil, nil, 0
			l.Remarks = append(l.Remarks, "a quotation mark stands inside a cell; it was read as it stands")
			r = reader(text, l.Separator, true)
			continue
		}
		if err == io.EOF {
			break
		}
		if err != nil {
			return fmt.Errorf("it cannot be taken apart: %w", err)
		}
		line, _ := r.FieldPos(0)
		l.add(line+first-1, cells)
		if len(l.Rows) > MostRows {
			return fmt.Errorf("it has more than %d rows; split it", MostRows)
		}
	}
	if l.Header == nil {
		return errors.New("it is empty; expected a row of headings and a row for each tree")
	}
	return nil
}

func (l *List) add(line int, cells []string) {
	switch {
	case isEmpty(cells):
		l.Empty++
	case l.Header == nil:
		for _, cell := range cells {
			l.Header = append(l.Header, strings.TrimSpace(cell))
		}
	default:
		l.Rows = append(l.Rows, Row{line, cells})
	}
}
