package assess

import (
	"testing"

	"boughline/knowledge"
	"boughline/survey/surveytest"
)

// BenchmarkThousandTrees assesses a site of 1,000 trees, one core.
func BenchmarkThousandTrees(b *testing.B) {
	k, err := knowledge.Load()
	if err != nil {
		b.Fatal(err)
	}
	s := surveytest.Large(1000)
	b.ReportAllocs()
	for b.Loop() {
		a, err := Assess(s, k)
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(len(a.Hangs)), "hangs")
	}
}
