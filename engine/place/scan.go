package place

import "math"

// scan is the solver that works out every pair, row by row, and takes nothing
// for granted. It keeps one row and, for each pick, the best of every row.
type scan struct {
	*problem
	margins [][]float64 // of the row at hand, by constraint
	least   []float64   // of the row at hand
	met     []set       // of the row at hand
	runs    []run       // of the row at hand
}

// run is neighbouring pairs of a row that meet the same set.
type run struct {
	lo, hi int
	met    set
}

func newScan(p *problem) *scan {
	n := len(p.along)
	s := &scan{problem: p, least: make([]float64, n), met: make([]set, n)}
	for range p.margins {
		s.margins = append(s.margins, make([]float64, n))
	}
	return s
}

func (s *scan) solve(in block, ask query) answer {
	out := answer{counts: make([]int, len(ask.counts)), found: make([]cell, len(ask.picks))}
	bests := make([][]float64, len(ask.picks))
	for k := range bests {
		bests[k] = make([]float64, in.line.count())
	}
	for j := in.line.lo; j < in.line.hi; j++ {
		s.load(j)
		s.count(ask.counts, out.counts)
		for k, p := range ask.picks {
			bests[k][j-in.line.lo] = s.best(p, j)
		}
	}
	for k, p := range ask.picks {
		out.found[k] = s.settle(p, in.line.lo, bests[k])
	}
	return out
}

// load works the margins of one row out.
func (s *scan) load(j int) {
	for k, margin := range s.problem.margins {
		row := s.margins[k]
		margin.row(j, row)
		if k == 0 {
			clear(s.met)
			copy(s.least, row)
		}
		s.take(row, set(1)<<k)
	}
	s.runs = s.runs[:0]
	for lo := 0; lo < len(s.met); {
		hi := lo + 1
		for hi < len(s.met) && s.met[hi] == s.met[lo] {
			hi++
		}
		s.runs = append(s.runs, run{lo, hi, s.met[lo]})
		lo = hi
	}
}

// take adds the margins of one constraint to what the row meets.
func (s *scan) take(row []float64, bit set) {
	met, least := s.met[:len(row)], s.least[:len(row)]
	for i, m := range row {
		if m >= -Slack {
			met[i] |= bit
		}
		if m < least[i] {
			least[i] = m
		}
	}
}

func (s *scan) count(sets []set, counts []int) {
	for _, r := range s.runs {
		for k, wanted := range sets {
			if r.met&wanted == wanted {
				counts[k] += r.hi - r.lo
			}
		}
	}
}

// best returns the greatest value of a pick in the row at hand, -Inf for none.
func (s *scan) best(p pick, j int) float64 {
	best := math.Inf(-1)
	if j < p.from {
		return best
	}
	for _, r := range s.runs {
		if r.met&p.meets != p.meets {
			continue
		}
		for i := r.lo; i < r.hi; i++ {
			best = max(best, s.value(p, i, j))
		}
	}
	return best
}

func (s *scan) value(p pick, i, j int) float64 {
	if p.value == nil {
		return s.least[i]
	}
	return p.value.at(i, j)
}

// settle resolves ties. Only rows whose best ties are worked out again: once
// for the largest first margin, once for the longest line.
func (s *scan) settle(p pick, first int, bests []float64) cell {
	greatest := math.Inf(-1)
	for _, best := range bests {
		greatest = math.Max(greatest, best)
	}
	if math.IsInf(greatest, -1) {
		return cell{}
	}
	margin := math.Inf(-1)
	for k := range bests {
		if bests[k] < greatest-Slack {
			continue
		}
		s.eachTied(p, first+k, greatest-Slack, func(i int) bool {
			margin = math.Max(margin, s.margins[0][i])
			return true
		})
	}
	var found cell
	for k := len(bests) - 1; k >= 0 && !found.ok; k-- {
		if bests[k] < greatest-Slack {
			continue
		}
		s.eachTied(p, first+k, greatest-Slack, func(i int) bool {
			if s.margins[0][i] >= margin-Slack {
				found = cell{i, first + k, true}
			}
			return !found.ok
		})
	}
	return found
}

// eachTied visits the pairs of a row that meet a pick with a value or more,
// until visit says no.
func (s *scan) eachTied(p pick, j int, value float64, visit func(i int) bool) {
	s.load(j)
	for i, met := range s.met {
		if met&p.meets == p.meets && s.value(p, i, j) >= value && !visit(i) {
			return
		}
	}
}
