package main

import (
	"database/sql"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/store/sqlite"

	_ "modernc.org/sqlite"
)

// demoRecords is a file of records with the demo site, a change and a photo.
func demoRecords(t *testing.T) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "records.db")
	kept, err := sqlite.Open(name)
	must(t, err)
	defer kept.Close()
	k, err := knowledge.Load()
	must(t, err)
	n := notebook.New(kept, k, time.Now)
	_, err = n.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{What: "demo site"})
	must(t, err)
	must(t, n.AddPhoto(t.Context(), "demo", notebook.Edit{}, notebook.Photo{ID: "p1", Tree: "T2"}, []byte("\xff\xd8\xff\xe0 JFIF")))
	must(t, n.ChangeTree(t.Context(), "demo", "T2", notebook.Edit{What: "note"}, func(t *notebook.Tree) error { t.Note = "looked at"; return nil }))
	must(t, n.ChangeSettings(t.Context(), notebook.Settings{}))
	return name
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// TestTheQuestionsOfTheManual asks a file of records each question that
// docs/database.md prints, with an SQL driver and nothing of the program.
func TestTheQuestionsOfTheManual(t *testing.T) {
	manual, err := os.ReadFile("../../docs/database.md")
	must(t, err)
	db, err := sql.Open("sqlite", demoRecords(t))
	must(t, err)
	defer db.Close()
	want := []struct {
		rows int // at least
		cell string
	}{{1, "Pennow Wood"}, {11, "Quercus robur"}, {5, "crown-"}, {11, "note"}, {12, "looked at"}, {1, "T2"}}
	questions := regexp.MustCompile("(?s)```sql\n(.*?)```").FindAllStringSubmatch(string(manual), -1)
	if len(questions) != len(want) {
		t.Fatalf("%d questions; expected %d", len(questions), len(want))
	}
	for i, q := range questions {
		cells := answer(t, db, q[1])
		if len(cells) < want[i].rows || !strings.Contains(strings.Join(cells, "\n"), want[i].cell) {
			t.Errorf("%s\nanswers %d rows:\n%s", q[1], len(cells), strings.Join(cells, "\n"))
		}
	}
}

// answer gives each row as one line; no cell that has a name of JSON is empty
// in every row.
func answer(t *testing.T, db *sql.DB, question string) []string {
	t.Helper()
	rows, err := db.Query(question)
	must(t, err)
	defer rows.Close()
	columns, err := rows.Columns()
	must(t, err)
	filled := make([]bool, len(columns))
	var lines []string
	for rows.Next() {
		cells, into := make([]sql.NullString, len(columns)), make([]any, len(columns))
		for i := range cells {
			into[i] = &cells[i]
		}
		must(t, rows.Scan(into...))
		var line []string
		for i, c := range cells {
			line, filled[i] = append(line, c.String), filled[i] || c.String != ""
		}
		lines = append(lines, strings.Join(line, " | "))
	}
	must(t, rows.Err())
	for i, name := range columns {
		if !filled[i] {
			t.Errorf("%s\nthe column %s is empty", question, name)
		}
	}
	return lines
}

// TestTheManualNamesEveryKey compares the keys of the manual with those in use.
func TestTheManualNamesEveryKey(t *testing.T) {
	manual, err := os.ReadFile("../../docs/database.md")
	must(t, err)
	db, err := sql.Open("sqlite", demoRecords(t))
	must(t, err)
	defer db.Close()
	for _, key := range answer(t, db, "SELECT DISTINCT CASE instr(key, '/') WHEN 0 THEN key ELSE substr(key, 1, instr(key, '/')) END FROM object") {
		if !strings.Contains(string(manual), "| `"+key) {
			t.Errorf("docs/database.md says nothing of %q", key)
		}
	}
	var version int
	must(t, db.QueryRow("PRAGMA user_version").Scan(&version))
	if version != 1 {
		t.Errorf("the table has version %d; the manual says 1", version)
	}
}
