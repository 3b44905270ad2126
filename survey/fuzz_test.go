package survey_test

import (
	"bytes"
	"reflect"
	"slices"
	"testing"

	"boughline/survey"
	"boughline/survey/surveytest"
)

// FuzzRead looks for texts that make Read panic, that give problems without
// words or out of order, or that are read but not written and read again alike.
func FuzzRead(f *testing.F) {
	text := meadow(f)
	f.Add([]byte(text))
	for _, fault := range slices.Concat(twenty, more) {
		f.Add(bytes.Replace([]byte(text), []byte(fault.old), []byte(fault.new), 1))
	}
	f.Add(write(f, surveytest.Large(1)))
	for _, small := range []string{
		"", "{}", "[]", "null", "1e999", `{"boughline":1}`, `{"boughline":2}`, `{"boughline":3}`, `{"boughline":-1e308}`, `{"boughline":1.5}`,
		`{"boughline":1,"site":"s","day":"2026-05-16","trees":[]}`,
		`{"boughline":1,"site":"s","day":"2026-05-16","trees":[{"id":"a","species":"b","members":[{"id":"m","stations":[{"at":"0 m","girth":"1 m ±5 % by eye"}]}]}]}`,
		`{"":{"":{"":[[[]]]}},"a.b":"\ud800"}`, "\ufeff{}", "{\"a\":\"\xff\"}", `{"a":[{"a":NaN`,
	} {
		f.Add([]byte(small))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		s, problems, err := survey.Read(bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		checkWords(t, problems)
		if s == nil {
			return
		}
		written := write(t, s)
		again, problems, err := survey.Read(bytes.NewReader(written))
		if err != nil || len(problems) > 0 || !reflect.DeepEqual(again, s) {
			t.Fatalf("%v %v: %s became %s", err, problems, data, written)
		}
	})
}

func checkWords(t *testing.T, problems []survey.Problem) {
	t.Helper()
	line, column := 0, 0
	for _, p := range problems {
		if p.Code == "" || p.Code == survey.CodeMisfit || p.Fault == "" || p.Expected == "" || p.Do == "" {
			t.Fatalf("not worded, or not found in time: %#v", p)
		}
		if p.Line < line || (p.Line == line && p.Column < column) {
			t.Fatalf("out of order: %v", problems)
		}
		line, column = p.Line, p.Column
	}
}
