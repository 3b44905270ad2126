package chance

import "testing"

func BenchmarkLimbCase(b *testing.B) {
	for b.Loop() {
		if _, err := oakLimb().Chance(); err != nil {
			b.Fatal(err)
		}
	}
}
