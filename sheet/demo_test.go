package sheet_test

import (
	"bytes"
	"testing"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/sheet"
	"boughline/survey"
)

func base(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

func demoSurvey(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if problems := assess.Problems(s, base(t)); len(problems) > 0 {
		t.Fatal(problems)
	}
	return s
}

// demoSheet makes a sheet of the demo, of which in names the rest.
func demoSheet(t testing.TB, kind string, in sheet.Input) *sheet.Sheet {
	t.Helper()
	if in.Survey == nil {
		in.Survey = demoSurvey(t)
	}
	in.Knowledge, in.Made = base(t), sheet.Made{Program: "boughline 0.0.0", Knowledge: "0123456789ab"}
	s, err := sheet.Make(kind, in)
	if err != nil {
		t.Fatal(err)
	}
	return s
}
