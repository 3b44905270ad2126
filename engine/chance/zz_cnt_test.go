package chance

import (
	"fmt"
	"math"
	"testing"
)

func TestCnt(t *testing.T) {
	m, _ := oakLimb().model()
	x := m.tested()
	n := 0
	x.overSelf(x.likeliest(), func(z float64) float64 {
		n++
		s := x.self.At(z)
		_ = s
		return 0.1 * math.Exp(-z*z*0.2)
	})
	fmt.Println("rides", len(x.rides), "piece", x.piece, "self nodes about", n, "pull")
}
func BenchmarkParts(b *testing.B) {
	m, _ := oakLimb().model()
	x := m.tested()
	b.Run("carry", func(b *testing.B) {
		for b.Loop() {
			m.breaksCarrying()
		}
	})
	b.Run("nodes", func(b *testing.B) {
		for b.Loop() {
			m.tested()
		}
	})
	b.Run("passes", func(b *testing.B) {
		for b.Loop() {
			x.passes()
		}
	})
	b.Run("breaks", func(b *testing.B) {
		for b.Loop() {
			x.breaks()
		}
	})
	b.Run("cdf", func(b *testing.B) {
		for b.Loop() {
			cdf(-2.3)
		}
	})
	b.Run("phi", func(b *testing.B) {
		for b.Loop() {
			phi(-2.3)
		}
	})
	b.Run("log", func(b *testing.B) {
		y := 3.3
		for b.Loop() {
			y = math.Log(y) + 2
		}
	})
}
