package place

import (
	"slices"

	"boughline/quantity"
)

// report asks a solver for what a Result holds.
type report struct {
	Problem
	on *problem
	solver
}

func (r report) result() Result {
	n := len(r.Constraints)
	ask := query{counts: []set{allOf(n)}}
	if r.Counts {
		for k := range n {
			ask.counts = append(ask.counts, 1<<k)
		}
	}
	for _, extent := range []*sampled{r.on.nearer, r.on.farther, r.on.shorter, r.on.longer} {
		ask.picks = append(ask.picks, pick{meets: allOf(n), value: extent})
	}
	for k, aim := range r.on.aims {
		ask.picks = append(ask.picks, pick{allOf(n), aim, r.on.from[k]})
	}
	whole := r.on.whole()
	got := r.solve(whole, ask)
	out := Result{Cells: whole.cells(), Feasible: got.counts[0], Bands: r.bands()}
	if r.Counts {
		out.Passed = got.counts[1:]
	}
	for _, found := range got.found[4:] {
		out.Bests = append(out.Bests, r.at(found))
	}
	if out.Feasible > 0 {
		out.Along = &Range{r.on.along[got.found[0].i], r.on.along[got.found[1].i]}
		out.Line = &Range{r.on.line[got.found[2].j], r.on.line[got.found[3].j]}
		return out
	}
	out.NearestMiss, out.Dropped = r.missed(whole)
	return out
}

// missed tells how far a search without a hang fell short.
func (r report) missed(whole block) (*Hang, []Dropped) {
	all := allOf(len(r.Constraints))
	ask := query{picks: []pick{{}}}
	for k, margin := range r.on.margins {
		ask.counts = append(ask.counts, all.without(k))
		ask.picks = append(ask.picks, pick{meets: all.without(k), value: margin})
	}
	got := r.solve(whole, ask)
	dropped := make([]Dropped, len(r.Constraints))
	for k := range dropped {
		dropped[k] = Dropped{got.counts[k], r.at(got.found[k+1])}
	}
	return r.at(got.found[0]), dropped
}

func (r report) bands() []Band {
	var list []Band
	for _, line := range r.Bands {
		j, _ := r.Grid.Line.index(line)
		list = append(list, r.band(j))
	}
	return list
}

func (r report) band(j int) Band {
	all := allOf(len(r.Constraints))
	got := r.solve(r.on.row(j), query{[]set{all}, []pick{
		{meets: all, value: r.on.nearer}, {meets: all, value: r.on.farther}, {},
	}})
	band := Band{Line: r.on.line[j], Count: got.counts[0]}
	if band.Count == 0 {
		band.Nearest = r.at(got.found[2])
		return band
	}
	low, high := got.found[0].i, got.found[1].i
	band.Feasible = &Range{r.on.along[low], r.on.along[high]}
	band.Whole = band.Count == high-low+1
	band.BeyondLow = r.at(cell{low - 1, j, low > 0})
	band.BeyondHigh = r.at(cell{high + 1, j, high+1 < len(r.on.along)})
	return band
}

// at describes a pair, nil for none.
func (r report) at(c cell) *Hang {
	if !c.ok {
		return nil
	}
	margins := make([]float64, len(r.on.margins))
	for k, m := range r.on.margins {
		margins[k] = m.at(c.i, c.j)
	}
	hang := r.hang(r.on.along[c.i], r.on.line[c.j], margins)
	return &hang
}

func (p Problem) hang(along, line quantity.Length, margins []float64) Hang {
	least := slices.Min(margins)
	binding := slices.IndexFunc(margins, func(m float64) bool { return m <= least+Slack })
	return Hang{along, line, margins, least, p.Constraints[max(binding, 0)].Name}
}
