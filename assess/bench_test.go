package assess

import (
	"fmt"
	"testing"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
	"boughline/survey/surveytest"
)

// BenchmarkThousandTrees assesses a site of 1,000 generated trees.
func BenchmarkThousandTrees(b *testing.B) {
	benchmarkAssess(b, surveytest.Large(1000))
}

// BenchmarkDemo assesses the demo: eleven trees with all their troubles.
func BenchmarkDemo(b *testing.B) {
	benchmarkAssess(b, demoSite(b))
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

// BenchmarkChance works the chances of one hang out over all its checks: four
// exposures by first order, then with samples.
func BenchmarkChance(b *testing.B) {
	k, s := base(b), oak(b)
	for _, samples := range []int{0, 40000} {
		b.Run(fmt.Sprintf("samples=%d", samples), func(b *testing.B) {
			for b.Loop() {
				if _, err := ChanceOf(b.Context(), s, k, "oak-swing", ChanceOptions{Samples: samples, Seed: 1}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkMeasureNext judges a hang anew for all that was measured by eye.
func BenchmarkMeasureNext(b *testing.B) {
	k, s := base(b), demoSite(b)
	for b.Loop() {
		if _, err := MeasureNext(s, k, "hornbeam-swing"); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkWholeTree takes one hang on a stem with six limbs through frame,
// swing, union, stem, root plate and wind, all load cases of all checks.
func BenchmarkWholeTree(b *testing.B) {
	s := oak(b)
	tree := &s.Trees[0]
	for i := range 4 {
		limb := tree.Members[2]
		limb.ID = string(rune('A' + i))
		rises, azimuth := *limb.RisesAt, *limb.Azimuth
		rises.Value += quantity.Length(1 + i)
		azimuth.Value += quantity.Angle(i) * 60 * quantity.Degree
		limb.RisesAt, limb.Azimuth = &rises, &azimuth
		tree.Members = append(tree.Members, limb)
	}
	benchmarkAssess(b, s)
}
