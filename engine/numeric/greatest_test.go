package numeric

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestGreatestOfAParabola: the top of an inverted parabola is its vertex, or
// the nearer end where the vertex lies outside.
func TestGreatestOfAParabola(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(-10, 10).Draw(t, "low")
		high := low + rapid.Float64Range(0.1, 10).Draw(t, "width")
		vertex := rapid.Float64Range(-20, 20).Draw(t, "vertex")
		at, value := Greatest(func(x float64) float64 { return -(x - vertex) * (x - vertex) }, low, high, 64)
		want := math.Min(math.Max(vertex, low), high)
		// A parabola is flat to rounding over the root of rounding about its top.
		if math.Abs(at-want) > 1e-6*(1+math.Abs(want)) {
			t.Fatalf("greatest at %v, want %v", at, want)
		}
		if value != -(at-vertex)*(at-vertex) {
			t.Fatalf("value %v is not that at %v", value, at)
		}
	})
}

// TestGreatestKeepsTheBest: more steps never lose what fewer have found.
func TestGreatestKeepsTheBest(t *testing.T) {
	f := func(x float64) float64 { return math.Sin(5*x) + math.Sin(9*x) }
	last := math.Inf(-1)
	for steps := range 40 {
		_, value := Greatest(f, 0, 3, steps)
		if value < last {
			t.Fatalf("%d steps find %v, fewer %v", steps, value, last)
		}
		last = value
	}
}

// TestGreatestIsQuickOnSmoothPeaks: a peak that is nearly a parabola takes a
// third of the 40 golden sections that would come as near.
func TestGreatestIsQuickOnSmoothPeaks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		top := rapid.Float64Range(0.2, 1.2).Draw(t, "top")
		looks := 0
		at, _ := Greatest(func(x float64) float64 { looks++; return math.Cos(x - top) }, 0, 1.5, 40)
		if math.Abs(at-top) > 1e-7 || looks > 14 {
			t.Fatalf("greatest at %v after %d looks, want %v", at, looks, top)
		}
	})
}

// TestGreatestOfARidge: a corner is found as near as golden sections find it.
func TestGreatestOfARidge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		top := rapid.Float64Range(0.01, 0.99).Draw(t, "top")
		steep := rapid.Float64Range(0.1, 10).Draw(t, "steep")
		at, _ := Greatest(func(x float64) float64 { return math.Min(x-top, steep*(top-x)) }, 0, 1, 60)
		if math.Abs(at-top) > 1e-6 {
			t.Fatalf("greatest at %v, want %v", at, top)
		}
	})
}
