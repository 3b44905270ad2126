package place

import (
	"math"
	"slices"

	"boughline/quantity"
)

// bounds gives the least and greatest number of a field over a block. Those of
// tables are exact, rounding included, for rounding keeps the order.
type bounds struct {
	fromAlong, fromLine, rate *ranges
	turns                     turns
	broken                    bool // a shape turned out not to hold
}

// turns are the first indices at or beyond the turns of a shape.
type turns struct{ along, line []int }

func (s *sampled) prepare() {
	s.bounds = &bounds{fromAlong: newRanges(s.fromAlong), fromLine: newRanges(s.fromLine), rate: newRanges(s.rate)}
	if s.both != nil {
		s.bounds.turns = turns{indices(s.along, s.shape.AlongTurns), indices(s.line, s.shape.LineTurns)}
		s.seen = map[[2]int]float64{}
	}
}

func indices(values, turns []quantity.Length) []int {
	list := make([]int, len(turns))
	for k, turn := range turns {
		list[k], _ = slices.BinarySearch(values, turn)
	}
	return list
}

// over returns the bounds over a block; those of a single pair are its number.
func (s *sampled) over(b block) (low, high float64) {
	low, high = s.bounds.fromAlong.over(b.along)
	lineLow, lineHigh := s.bounds.fromLine.over(b.line)
	low, high = low+lineLow, high+lineHigh
	if s.rate != nil {
		near, far := float64(s.along[b.along.lo]), float64(s.along[b.along.hi-1])
		rateLow, rateHigh := s.bounds.rate.over(b.line)
		low += min(float64(near*rateLow), float64(far*rateLow))
		high += max(float64(near*rateHigh), float64(far*rateHigh))
	}
	if s.both != nil {
		bothLow, bothHigh := s.bothOver(b)
		low, high = low+bothLow, high+bothHigh
	}
	return low, high
}

// rounding widens bounds from corners: a monotone function need not stay quite
// monotone when its numbers are rounded.
const rounding = 1e-12

// bothOver takes a part of two arguments to lie between its values at the
// corners of a block without a turn, and looks whether that in the middle does.
func (s *sampled) bothOver(b block) (low, high float64) {
	if b.cells() == 1 {
		v := s.call(b.along.lo, b.line.lo)
		return v, v
	}
	if along, line := s.bounds.turns.in(b); along || line {
		return math.Inf(-1), math.Inf(1)
	}
	near, far := b.along.lo, b.along.hi-1
	short, long := b.line.lo, b.line.hi-1
	p, q, r, t := s.call(near, short), s.call(near, long), s.call(far, short), s.call(far, long)
	low, high = min(p, q, r, t), max(p, q, r, t)
	low, high = low-rounding*(1+math.Abs(low)), high+rounding*(1+math.Abs(high))
	if middle := s.call((near+far)/2, (short+long)/2); middle < low || middle > high {
		s.bounds.broken = true
	}
	return low, high
}

// in says whether a block has a turn inside.
func (t turns) in(b block) (along, line bool) {
	return straddles(t.along, b.along), straddles(t.line, b.line)
}

func straddles(turns []int, s span) bool {
	for _, turn := range turns {
		if s.lo < turn && turn < s.hi {
			return true
		}
	}
	return false
}
