package exchange_test

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"unicode/utf8"

	"boughline/assess"
	"boughline/exchange"
	"boughline/survey/surveytest"

	"pgregory.net/rapid"
)

func TestCellsAreDefused(t *testing.T) {
	for text, want := range map[string]string{
		"=1+1": "'=1+1", "+49 30": "'+49 30", "-dead branch": "'-dead branch", "@SUM(A1)": "'@SUM(A1)", "\tx": "'\tx", "\rx": "'\rx",
		"'=1": "''=1", "oak": "oak", "": "", "'tis": "'tis", "a=b": "a=b",
	} {
		got := exchange.Defuse(text)
		if got != want {
			t.Errorf("%q became %q; expected %q", text, got, want)
		}
		if back := exchange.Refuse(got); back != text {
			t.Errorf("%q came back as %q", text, back)
		}
	}
}

func TestDefusedCellsComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("'=+-@\t\rab"))).Draw(t, "text")
		if back := exchange.Refuse(exchange.Defuse(text)); back != text {
			t.Errorf("%q came back as %q", text, back)
		}
	})
}

// TestListsReadBack reads each list with encoding/csv, which keeps to RFC 4180.
func TestListsReadBack(t *testing.T) {
	k := tables(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := surveytest.Site().Draw(rt, "site")
		var trees, findings bytes.Buffer
		if err := exchange.WriteTrees(&trees, s); err != nil {
			rt.Fatal(err)
		}
		if err := exchange.WriteFindings(&findings, s, k); err != nil {
			rt.Fatal(err)
		}
		if !utf8.Valid(trees.Bytes()) || !utf8.Valid(findings.Bytes()) {
			rt.Fatal("no UTF-8")
		}
		rows, err := csv.NewReader(&trees).ReadAll()
		if err != nil || len(rows) != 1+len(s.Trees) {
			rt.Fatalf("%d rows, %v", len(rows), err)
		}
		for i, row := range rows[1:] {
			// A reader of RFC 4180 gives a CR LF inside a cell as LF.
			if got, want := exchange.Refuse(row[0]), s.Trees[i].ID; got != strings.ReplaceAll(want, "\r\n", "\n") {
				rt.Errorf("tree %q came back as %q", want, got)
			}
		}
		count := 0
		for _, t := range s.Trees {
			count += len(t.Findings)
		}
		if rows, err := csv.NewReader(&findings).ReadAll(); err != nil || len(rows) != 1+count {
			rt.Fatalf("%d rows of %d, %v", len(rows)-1, count, err)
		}
	})
}

func TestHangsWithTheirOutcomes(t *testing.T) {
	c := demoCopy(t)
	a, err := assess.Assess(c.Survey, tables(t))
	must(t, err)
	var b bytes.Buffer
	must(t, exchange.WriteHangs(&b, c.Survey, a))
	if !strings.HasPrefix(b.String(), "tree,hang,member,") || !strings.Contains(b.String(), "\r\n") {
		t.Errorf("begins %.60q", b.String())
	}
	rows, err := csv.NewReader(&b).ReadAll()
	must(t, err)
	if len(rows)-1 != len(a.Hangs) {
		t.Fatalf("%d rows for %d hangs", len(rows)-1, len(a.Hangs))
	}
	for i, h := range a.Hangs {
		row := rows[i+1]
		if row[1] != h.ID || row[9] != h.Outcome.String() || row[11] == "" || (row[12] != "") != (h.Limits != nil) {
			t.Errorf("%s: %q", h.ID, row)
		}
	}
}
