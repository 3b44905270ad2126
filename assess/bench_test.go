package assess

import (
	"bytes"
	"testing"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/survey"
	"boughline/survey/surveytest"
)

// BenchmarkThousandTrees assesses a site of 1,000 generated trees.
func BenchmarkThousandTrees(b *testing.B) {
	benchmarkAssess(b, surveytest.Large(1000))
}

// BenchmarkDemo assesses the demo: eleven trees with all their troubles.
func BenchmarkDemo(b *testing.B) {
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		b.Fatal(err, problems)
	}
	benchmarkAssess(b, s)
}

func benchmarkAssess(b *testing.B, s *survey.Survey) {
	k, err := knowledge.Load()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		a, err := Assess(s, k)
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(len(a.Hangs)), "hangs")
	}
}
