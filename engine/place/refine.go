package place

import "math"

// refined is the solver that takes coarse blocks first and halves only those
// that their bounds leave undecided (branch and bound: Land and Doig 1960,
// from memory).
type refined struct{ *problem }

// limit asks for a number of a field or more.
type limit struct {
	of    *sampled
	least float64
}

func newRefined(p *problem) refined {
	for _, f := range p.fields() {
		f.prepare()
	}
	return refined{p}
}

func (r refined) solve(in block, ask query) answer {
	var out answer
	for _, meets := range ask.counts {
		out.counts = append(out.counts, r.count(in, r.limits(meets, -Slack)))
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

// count returns how many pairs of a block keep all limits.
func (r refined) count(b block, limits []limit) int {
	all := true
	for _, l := range limits {
		low, high := l.of.over(b)
		if !(high >= l.least) {
			return 0
		}
		all = all && low >= l.least
	}
	if all {
		return b.cells()
	}
	near, far := r.split(b)
	return r.count(near, limits) + r.count(far, limits)
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
	r.improve(in, ceiling(in, value), value, limits, &found)
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

func (r refined) improve(b block, most float64, value []*sampled, limits []limit, found *best) {
	if !(most > found.value) {
		return
	}
	for _, l := range limits {
		if _, high := l.of.over(b); !(high >= l.least) {
			return
		}
	}
	if b.cells() == 1 {
		*found = best{cell{b.along.lo, b.line.lo, true}, most}
		return
	}
	first, second := r.split(b)
	mostFirst, mostSecond := ceiling(first, value), ceiling(second, value)
	if mostSecond > mostFirst {
		first, second, mostFirst, mostSecond = second, first, mostSecond, mostFirst
	}
	r.improve(first, mostFirst, value, limits, found)
	r.improve(second, mostSecond, value, limits, found)
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

// straddled says whether a block has a turn of any margin inside.
func (r refined) straddled(b block) (along, line bool) {
	for _, m := range r.margins {
		if shape := m.bounds.shape; shape != nil {
			along = along || straddles(shape.along, b.along)
			line = line || straddles(shape.line, b.line)
		}
	}
	return along, line
}
