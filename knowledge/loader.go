package knowledge

import (
	"encoding/csv"
	"fmt"
	"io/fs"
	"strings"

	"boughline/source"
)

// loader reads tables and collects what is wrong with them.
type loader struct {
	files    fs.FS
	list     []source.Source
	sources  map[string]source.Source
	used     map[string]bool
	problems []error
}

func newLoader(files fs.FS) *loader {
	l := &loader{files: files, sources: map[string]source.Source{}, used: map[string]bool{}}
	for _, r := range l.read("sources") {
		s := source.Source{Key: r.text("key"), Author: r.text("author"), Year: r.text("year"), Title: r.text("title"), Kind: source.Kind(r.text("kind"))}
		if !knownKind(s.Kind) {
			r.problem("kind %q is not known", s.Kind)
		}
		if s.Title == "" {
			r.problem("the source has no title")
		}
		l.sources[s.Key] = s
		l.list = append(l.list, s)
	}
	return l
}

func knownKind(k source.Kind) bool {
	switch k {
	case source.Read, source.SecondHand, source.Computed, source.Memory, source.Practice, source.House:
		return true
	}
	return false
}

// read returns the rows of a table. The first column names the row and must
// not repeat.
func (l *loader) read(name string) []row {
	file := name + ".csv"
	f, err := l.files.Open(file)
	if err != nil {
		l.problems = append(l.problems, err)
		return nil
	}
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	if err != nil || len(records) == 0 {
		l.report("%s: cannot be read: %w", file, err)
		return nil
	}
	columns := make(map[string]int, len(records[0]))
	for i, c := range records[0] {
		columns[c] = i
	}
	rows := make([]row, 0, len(records)-1)
	seen := make(map[string]bool, len(records))
	for i, cells := range records[1:] {
		r := row{loader: l, file: file, line: i + 2, columns: columns, cells: cells}
		if name != "sources" {
			r.refs = r.resolve()
		}
		if id := cells[0]; id == "" || seen[id] {
			r.problem("%q is empty or stands twice", id)
		}
		seen[cells[0]] = true
		rows = append(rows, r)
	}
	return rows
}

// checkAllUsed refuses a source that no row names.
func (l *loader) checkAllUsed() {
	for _, s := range l.list {
		if !l.used[s.Key] {
			l.report("sources.csv: no row names the source %q", s.Key)
		}
	}
}

// row is one line of a table.
type row struct {
	loader  *loader
	file    string
	line    int
	columns map[string]int
	cells   []string
	refs    []source.Ref // the governing source first
}

func (l *loader) report(format string, args ...any) {
	l.problems = append(l.problems, fmt.Errorf(format, args...))
}

func (r row) problem(format string, args ...any) {
	r.loader.report("%s line %d (%s): %s", r.file, r.line, r.cells[0], fmt.Sprintf(format, args...))
}

func (r row) text(column string) string {
	i, ok := r.columns[column]
	if !ok {
		r.problem("there is no column %q", column)
		return ""
	}
	return r.cells[i]
}

// list splits a cell at its semicolons.
func (r row) list(column string) []string {
	text := r.text(column)
	if text == "" {
		return nil
	}
	return strings.Split(text, ";")
}
