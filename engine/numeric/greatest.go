package numeric

import "math"

// Greatest narrows down where f is greatest between low and high, and returns
// the best place that it has looked at and the value there: parabolas through
// the three best places where they may be trusted, golden sections where not.
// It stops after the steps given, or sooner where the interval is down to the
// root of rounding, below which a smooth peak is flat. Both ends are left out.
// Of an f with more peaks it finds one.
//
// Source: Brent, Algorithms for Minimization without Derivatives, 1973, chapter
// 5 (from memory).
func Greatest(f func(float64) float64, low, high float64, steps int) (at, value float64) {
	p := peak{low: low, high: high, flat: flatPeak * (high - low)}
	first := low + golden*(high-low)
	p.best = looked{first, f(first)}
	p.second, p.third = p.best, p.best
	for range steps + 1 {
		next, narrow := p.next()
		if narrow {
			break
		}
		p.take(looked{next, f(next)})
	}
	return p.best.at, p.best.value
}

const (
	golden   = 0.3819660112501051 // (3 - sqrt 5)/2, the shorter share of a golden section
	flatPeak = 1e-8               // about the root of rounding
)

// looked is a place that was looked at.
type looked struct{ at, value float64 }

// peak is the interval that holds the top, and the best three places in it.
type peak struct {
	low, high           float64
	best, second, third looked
	move, before        float64 // the last move, and the one before it
	flat                float64 // moves are no shorter
}

// next is where to look next; narrow says that the interval is down to its
// least width.
func (p *peak) next() (at float64, narrow bool) {
	middle := (p.low + p.high) / 2
	tolerance := p.flat + 1e-15*math.Abs(p.best.at)
	if math.Abs(p.best.at-middle) <= 2*tolerance-(p.high-p.low)/2 {
		return p.best.at, true
	}
	move, trusted := p.parabola()
	switch {
	case trusted:
		if to := p.best.at + move; to-p.low < 2*tolerance || p.high-to < 2*tolerance {
			move = math.Copysign(tolerance, middle-p.best.at)
		}
		p.before = p.move
	default:
		p.before = p.low - p.best.at
		if p.best.at < middle {
			p.before = p.high - p.best.at
		}
		move = golden * p.before
	}
	p.move = move
	if math.Abs(move) < tolerance {
		move = math.Copysign(tolerance, move)
	}
	return p.best.at + move, false
}

// parabola is the move to the top of the parabola through the three best
// places, trusted where it stays inside and is less than half the move before
// the last.
func (p *peak) parabola() (move float64, trusted bool) {
	r := (p.best.at - p.second.at) * (p.best.value - p.third.value)
	q := (p.best.at - p.third.at) * (p.best.value - p.second.value)
	up := (p.best.at-p.third.at)*q - (p.best.at-p.second.at)*r
	down := 2 * (r - q)
	if down == 0 {
		return 0, false
	}
	move = up / down
	to := p.best.at + move
	return move, math.Abs(move) < math.Abs(p.before)/2 && to > p.low && to < p.high
}

// take narrows the interval by what was found at a place.
func (p *peak) take(x looked) {
	if x.value >= p.best.value {
		if x.at >= p.best.at {
			p.low = p.best.at
		} else {
			p.high = p.best.at
		}
		p.best, p.second, p.third = x, p.best, p.second
		return
	}
	if x.at < p.best.at {
		p.low = x.at
	} else {
		p.high = x.at
	}
	switch {
	case x.value >= p.second.value || p.second.at == p.best.at:
		p.second, p.third = x, p.second
	case x.value >= p.third.value || p.third.at == p.best.at || p.third.at == p.second.at:
		p.third = x
	}
}
