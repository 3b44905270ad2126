package place

import "testing"

func BenchmarkSearchLimb(b *testing.B) { benchmark(b, Search) }
func BenchmarkRefineLimb(b *testing.B) { benchmark(b, Refine) }

// benchmark searches 180,851 pairs with all counts, three aims and eight bands.
func benchmark(b *testing.B, run func(Problem) (Result, error)) {
	p := level().problem(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := run(p); err != nil {
			b.Fatal(err)
		}
	}
}
