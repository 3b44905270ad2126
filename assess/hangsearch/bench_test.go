package hangsearch

import (
	"context"
	"testing"
)

// BenchmarkSixLimbs searches a tree of six limbs for three groups, refined to
// 1 cm and 2 degrees.
func BenchmarkSixLimbs(b *testing.B) {
	s := oak(b)
	for _, aim := range Aims() {
		b.Run(string(aim), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Search(context.Background(), s, tables(), Options{Aim: aim}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
