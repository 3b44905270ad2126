package chance

import (
	"math"
	"slices"
	"testing"
)

// First numbers of SplitMix64 from a state of 1234567, as published with its
// reference code (Vigna, 2015; from memory).
func TestStreamMatchesItsReference(t *testing.T) {
	s := stream{1234567}
	for _, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423} {
		if got := s.next(); got != want {
			t.Errorf("got %d, want %d", got, want)
		}
	}
}

// Kolmogorov's distance of a million numbers from the normal law is below
// 1.95/sqrt(n) with a chance of 99.9 % (Smirnov, 1948; from memory).
func TestNormalsAreNormal(t *testing.T) {
	const n = 1_000_000
	z := make([]float64, n)
	random := streamOf(7, 0)
	random.normals(z)
	slices.Sort(z)
	distance := 0.0
	for i, v := range z {
		distance = max(distance, math.Abs(cdf(v)-(float64(i)+0.5)/n))
	}
	if distance > 1.95/math.Sqrt(n) {
		t.Errorf("distance %v from the normal law", distance)
	}
}

// Shares beyond a deviate, the edge of the lowest layer among them, within four
// standard errors; both tails.
func TestNormalsHaveTheirTails(t *testing.T) {
	const n = 8_000_000
	z, random := make([]float64, 1000), streamOf(11, 0)
	beyond := []float64{2, 3, 3.5, lowestEdge, 4, 4.5}
	high, low := make([]float64, len(beyond)), make([]float64, len(beyond))
	for range n / len(z) {
		random.normals(z)
		for _, v := range z {
			for i, b := range beyond {
				high[i] += indicator(v > b)
				low[i] += indicator(v < -b)
			}
		}
	}
	for i, b := range beyond {
		want := n * cdf(-b)
		for _, got := range []float64{high[i], low[i]} {
			if math.Abs(got-want) > 4*math.Sqrt(want) {
				t.Errorf("beyond %v: %v of %v, want %v", b, got, n, want)
			}
		}
	}
}

// The layers of the ziggurat have equal areas, the topmost ends at the peak, and
// the lowest has the area of box and tail (Marsaglia & Tsang, 2000).
func TestZigguratLayersHaveEqualAreas(t *testing.T) {
	for layer := 1; layer < layers; layer++ {
		far, near := ziggurat[2*layer].scale*numbers, 0.0
		if layer+1 < layers {
			near = ziggurat[2*layer+2].scale * numbers
		}
		if area := far * (density(near) - density(far)); math.Abs(area/layerArea-1) > 1e-8 {
			t.Errorf("layer %d: area %v, want %v", layer, area, layerArea)
		}
		if inside := float64(ziggurat[2*layer].inside); inside > near/far*numbers || inside < near/far*numbers-1 {
			t.Errorf("layer %d: %v of %v places inside, next edge %v of %v", layer, inside, numbers, near, far)
		}
	}
	tail := math.Sqrt(2*math.Pi) * cdf(-lowestEdge)
	near(t, "lowest layer", lowestEdge*density(lowestEdge)+tail, layerArea, 1e-10)
}

func TestStreamsOfBlocksDiffer(t *testing.T) {
	seen := map[uint64]bool{}
	for seed := range uint64(50) {
		for block := range 50 {
			s := streamOf(seed, block)
			if v := s.next(); seen[v] {
				t.Fatalf("seed %d, block %d repeats another", seed, block)
			} else {
				seen[v] = true
			}
		}
	}
}
