package place

import "math"

// refined is the solver that takes coarse blocks first and halves only those
// that their bounds leave undecided (branch and bound: Land and Doig 1960,
// from memory).
type refined struct {
	*problem
	shapes []*sampled // fields with turns
}

// limit asks for a number of a field or more.
type limit struct {
	of    *sampled
	least float64
}

func newRefined(p *problem) refined {
	r := refined{problem: p}
	for _, f := range p.fields() {
		f.prepare()
		if f.both != nil {
			r.shapes = append(r.shapes, f)
		}
	}
	return r
}

func (r refined) solve(in block, ask query) answer {
	var out answer
	for _, meets := range ask.counts {
		limits := r.limits(meets, -Slack)
		out.counts = append(out.counts, r.count(in, limits, allOf(len(limits))))
	}
	for _, p := range ask.picks {
		out.found = append(out.found, r.pick(in, p))
	}
	return out
}

// limits asks every constraint of a set for a margin.
func (r refined) limits(meets set, least float64) []limit {
	var list []limit
	for k, m := range r.margins {
		if meets&(1<<k) != 0 {
			list = append(list, limit{m, least})
		}
	}
	return list
}

// pick finds the greatest value, then, among its ties, the largest first
// margin, the longest line and the nearest hang point.
func (r refined) pick(in block, p pick) cell {
	limits := r.limits(p.meets, -Slack)
	if p.from == len(r.line) {
		return cell{}
	}
	if p.from > 0 {
		limits = append(limits, limit{r.longer, float64(r.line[p.from])})
	}
	value := []*sampled{p.value}
	if p.value == nil {
		value = r.margins
	}
	best := r.greatest(in, value, limits)
	if !best.ok {
		return best.cell
	}
	for _, v := range value {
		limits = append(limits, limit{v, best.value - Slack})
	}
	first := r.greatest(in, r.margins[:1], limits)
	limits = append(limits, limit{r.margins[0], first.value - Slack})
	longest := r.greatest(in, []*sampled{r.longer}, limits)
	in.line = single(longest.j)
	return r.greatest(in, []*sampled{r.nearer}, limits).cell
}

// undecided returns which of the open limits some pairs of a block keep and
// some may not; ok is false where one is kept by none.
func undecided(b block, limits []limit, open set) (left set, ok bool) {
	for k := range limits {
		if open&(1<<k) == 0 {
			continue
		}
		low, high := limits[k].of.over(b)
		if !(high >= limits[k].least) {
			return open, false
		}
		if low >= limits[k].least {
			open = open.without(k)
		}
	}
	return open, true
}

// count returns how many pairs of a block keep all open limits.
func (r refined) count(b block, limits []limit, open set) int {
	open, ok := undecided(b, limits, open)
	if !ok {
		return 0
	}
	if open == 0 {
		return b.cells()
	}
	near, far := r.split(b)
	return r.count(near, limits, open) + r.count(far, limits, open)
}

// best is the best pair found so far.
type best struct {
	cell
	value float64
}

// greatest finds the pair of a block that keeps all limits and has the
// greatest value: the smallest of the given fields.
func (r refined) greatest(in block, value []*sampled, limits []limit) best {
	found := best{value: math.Inf(-1)}
	s := ascent{r, value, limits, &found}
	s.improve(in, ceiling(in, value), allOf(len(limits)))
	return found
}

// ceiling is a number that the smallest of some fields does not pass.
func ceiling(b block, value []*sampled) float64 {
	least := math.Inf(1)
	for _, v := range value {
		_, high := v.over(b)
		least = math.Min(least, high)
	}
	return least
}

// ascent is one search for the greatest value.
type ascent struct {
	refined
	value  []*sampled
	limits []limit
	found  *best
}

// improve looks for a better pair in a block, where no value passes most and
// only some limits are still open.
func (a ascent) improve(b block, most float64, open set) {
	if !(most > a.found.value) {
		return
	}
	open, ok := undecided(b, a.limits, open)
	if !ok {
		return
	}
	if b.cells() == 1 {
		*a.found = best{cell{b.along.lo, b.line.lo, true}, most}
		return
	}
	first, second := a.split(b)
	mostFirst, mostSecond := ceiling(first, a.value), ceiling(second, a.value)
	if mostSecond > mostFirst {
		first, second, mostFirst, mostSecond = second, first, mostSecond, mostFirst
	}
	a.improve(first, mostFirst, open)
	a.improve(second, mostSecond, open)
}

// split halves a block: across a turn first, else across its longer side.
func (r refined) split(b block) (near, far block) {
	alongTurn, lineTurn := r.straddled(b)
	acrossAlong := b.along.count() >= b.line.count()
	if alongTurn != lineTurn {
		acrossAlong = alongTurn
	}
	near, far = b, b
	if acrossAlong {
		near.along, far.along = b.along.halves()
	} else {
		near.line, far.line = b.line.halves()
	}
	return near, far
}

// straddled says whether a block has a turn of any field inside.
func (r refined) straddled(b block) (along, line bool) {
	for _, f := range r.shapes {
		a, l := f.bounds.turns.in(b)
		along, line = along || a, line || l
	}
	return along, line
}
