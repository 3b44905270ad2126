package place

import (
	"math"
	"math/rand/v2"
	"reflect"
	"testing"
)

// naive keeps every pair and applies the rules as they read: the greatest
// value, ties within 1e-9, then the first margin, the longer line, the nearer
// hang point.
type naive struct {
	p     Problem
	pairs []Hang
}

func newNaive(p Problem) naive {
	n := naive{p: p}
	for _, line := range p.Grid.Line.Values() {
		for _, along := range p.Grid.Along.Values() {
			n.pairs = append(n.pairs, p.Pair(along, line))
		}
	}
	return n
}

func meets(h Hang, without int) bool {
	for k, m := range h.Margins {
		if k != without && m < -1e-9 {
			return false
		}
	}
	return true
}

func (n naive) best(counts func(Hang) bool, value func(Hang) float64) *Hang {
	greatest, margin := math.Inf(-1), math.Inf(-1)
	for _, h := range n.pairs {
		if counts(h) {
			greatest = math.Max(greatest, value(h))
		}
	}
	tied := func(h Hang) bool { return counts(h) && value(h) >= greatest-1e-9 }
	for _, h := range n.pairs {
		if tied(h) {
			margin = math.Max(margin, h.Margins[0])
		}
	}
	var best *Hang
	for _, h := range n.pairs {
		if tied(h) && h.Margins[0] >= margin-1e-9 && (best == nil || h.Line > best.Line) {
			best = &h
		}
	}
	return best
}

func least(h Hang) float64 { return h.Least }

// The bests, the nearest miss and what each constraint closes, by the rules.
func TestResultsFollowTheRules(t *testing.T) {
	for seed := range uint64(60) {
		s := randomSite(rand.New(rand.NewPCG(seed, 4)))
		s.grid.Along.Step, s.grid.Line.Step, s.bands = 0.1, 0.1, nil
		p := s.problem(t)
		p.Constraints = turned(p.Constraints, int(seed%4))
		n, got := newNaive(p), search(t, p)
		all := func(h Hang) bool { return meets(h, -1) }
		wants := []*Hang{
			n.best(all, func(h Hang) float64 { return float64(h.Line) }),
			n.best(func(h Hang) bool { return all(h) && h.Line >= s.from-1e-9 },
				func(h Hang) float64 { return -float64(s.room.FallHeight(h.Along, h.Line)) }),
			n.best(all, least),
		}
		if !reflect.DeepEqual(got.Bests, wants) {
			t.Errorf("site %d: bests differ from the rules", seed)
		}
		if got.Feasible > 0 {
			continue
		}
		if want := n.best(func(Hang) bool { return true }, least); !reflect.DeepEqual(got.NearestMiss, want) {
			t.Errorf("site %d: nearest miss %+v, want %+v", seed, got.NearestMiss, want)
		}
		for k, d := range got.Dropped {
			want := n.best(func(h Hang) bool { return meets(h, k) }, func(h Hang) float64 { return h.Margins[k] })
			if !reflect.DeepEqual(d.Best, want) {
				t.Errorf("site %d: without %s %+v, want %+v", seed, p.Constraints[k].Name, d.Best, want)
			}
		}
	}
}
