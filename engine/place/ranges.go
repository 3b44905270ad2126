package place

// ranges holds the least and greatest value of a table over every part that
// halving reaches: node 1 is the whole, nodes 2k and 2k+1 the halves of node k.
type ranges struct{ table, low, high []float64 }

// newRanges returns nil for no table; its values are 0.
func newRanges(table []float64) *ranges {
	if table == nil {
		return nil
	}
	r := &ranges{table: table, low: make([]float64, nodes(len(table))), high: make([]float64, nodes(len(table)))}
	r.fill(span{0, len(table), 1})
	return r
}

// nodes is how many a tree of halves over n values numbers at most.
func nodes(n int) int {
	count := 2
	for leaves := 1; leaves < n; leaves *= 2 {
		count *= 2
	}
	return count
}

func (r *ranges) fill(s span) (low, high float64) {
	low, high = r.table[s.lo], r.table[s.lo]
	if s.count() > 1 {
		near, far := s.halves()
		nearLow, nearHigh := r.fill(near)
		farLow, farHigh := r.fill(far)
		low, high = min(nearLow, farLow), max(nearHigh, farHigh)
	}
	r.low[s.node], r.high[s.node] = low, high
	return low, high
}

func (r *ranges) over(s span) (low, high float64) {
	if r == nil {
		return 0, 0
	}
	if s.count() == 1 {
		return r.table[s.lo], r.table[s.lo]
	}
	return r.low[s.node], r.high[s.node]
}
