package place

import (
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// drawSite draws a random site with a coarse grid and a band for every line.
func drawSite(t *rapid.T) site {
	s := randomSite(rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "site"), 5)))
	s.grid.Along.Step, s.grid.Line.Step = 0.1, 0.1
	s.bands = s.grid.Line.Values()
	return s
}

// problemIn defines a problem under rapid, whose T is no testing.TB.
func problemIn(t *rapid.T, outer *testing.T, s site) (Problem, Result) {
	p := s.problem(outer)
	result, err := Refine(p)
	if err != nil {
		t.Fatal(err)
	}
	return p, result
}

// What held with weaker wood holds with stronger wood.
func TestMoreStressAllowedLosesNoPair(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := drawSite(rt)
		weak, before := problemIn(rt, t, s)
		s.allowed *= quantity.Stress(rapid.Float64Range(1, 3).Draw(rt, "stronger"))
		strong, after := problemIn(rt, t, s)
		for _, b := range before.Bands {
			for _, along := range s.grid.Along.Values() {
				if weak.Pair(along, b.Line).Least >= -Slack && strong.Pair(along, b.Line).Least < -Slack {
					rt.Fatalf("%v m along, line %v m: lost", along, b.Line)
				}
			}
		}
		if after.Feasible < before.Feasible {
			rt.Fatalf("%d pairs, %d with stronger wood", before.Feasible, after.Feasible)
		}
		if before.Feasible > 0 && (after.Bests[0].Line < before.Bests[0].Line || after.Bests[2].Least < before.Bests[2].Least) {
			rt.Fatal("stronger wood makes a best worse")
		}
	})
}

// A band is feasible at both ends; the pair beyond an end fails what is named.
func TestBandsEndWhereTheNamedConstraintFails(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p, result := problemIn(rt, t, drawSite(rt))
		count := 0
		for _, b := range result.Bands {
			count += b.Count
			if b.Feasible == nil {
				continue
			}
			for _, end := range []quantity.Length{b.Feasible.From, b.Feasible.To} {
				if p.Pair(end, b.Line).Least < -Slack {
					rt.Fatalf("line %v m: the end at %v m is not feasible", b.Line, end)
				}
			}
			for _, beyond := range []*Hang{b.BeyondLow, b.BeyondHigh} {
				if beyond != nil && marginOf(p, beyond) >= -Slack {
					rt.Fatalf("line %v m: %s holds beyond the end at %v m", b.Line, beyond.Binding, beyond.Along)
				}
			}
		}
		if count != result.Feasible {
			rt.Fatalf("the bands of all lines hold %d pairs, the grid %d", count, result.Feasible)
		}
	})
}

// marginOf works the margin out again that a pair names as binding.
func marginOf(p Problem, h *Hang) float64 {
	for _, c := range p.Constraints {
		if c.Name == h.Binding {
			return c.Margin.At(h.Along, h.Line)
		}
	}
	return 0
}

// Where nothing is feasible no pair misses by less than the nearest miss.
func TestNoPairMissesByLess(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := drawSite(rt)
		s.fall = 0.5
		p, result := problemIn(rt, t, s)
		if result.Feasible > 0 {
			return
		}
		for _, line := range p.Grid.Line.Values() {
			for _, along := range p.Grid.Along.Values() {
				if h := p.Pair(along, line); h.Least > result.NearestMiss.Least+Slack {
					rt.Fatalf("%+v misses by less than %+v", h, *result.NearestMiss)
				}
			}
		}
	})
}

// Runs cover the limb without a gap and hold as many feasible pairs as the band.
func TestRunsCoverTheLimb(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		p, result := problemIn(rt, t, drawSite(rt))
		b := result.Bands[rapid.IntRange(0, len(result.Bands)-1).Draw(rt, "band")]
		runs, err := p.Runs(b.Line)
		if err != nil {
			rt.Fatal(err)
		}
		next, feasible := 0, 0
		for _, run := range runs {
			from, _ := p.Grid.Along.index(run.Along.From)
			to, _ := p.Grid.Along.index(run.Along.To)
			if from != next || to < from || p.Pair(run.Along.To, b.Line).Binding != run.Binding {
				rt.Fatalf("runs %+v", runs)
			}
			if next = to + 1; run.Feasible {
				feasible += to - from + 1
			}
		}
		if next != p.Grid.Along.Count() || feasible != b.Count {
			rt.Fatalf("runs end at %d with %d feasible, want %d and %d", next, feasible, p.Grid.Along.Count(), b.Count)
		}
	})
}
