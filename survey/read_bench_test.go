package survey_test

import (
	"bytes"
	"testing"

	"boughline/survey"
	"boughline/survey/surveytest"
)

func BenchmarkRead1000Trees(b *testing.B) {
	data := write(b, surveytest.Large(1000))
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		s, problems, err := survey.Read(bytes.NewReader(data))
		if err != nil || len(problems) > 0 || len(s.Trees) != 1000 {
			b.Fatal(err, problems)
		}
	}
}

func BenchmarkWrite1000Trees(b *testing.B) {
	s := surveytest.Large(1000)
	for b.Loop() {
		write(b, s)
	}
}
