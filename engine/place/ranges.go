package place

import "math/bits"

// ranges answers for the least and greatest value of any part of a table at
// once: level k holds those of all runs of 2^k values (a sparse table, the
// textbook answer to range minimum queries).
type ranges struct{ low, high [][]float64 }

// newRanges returns nil for no table; its values are 0.
func newRanges(table []float64) *ranges {
	if table == nil {
		return nil
	}
	r := &ranges{[][]float64{table}, [][]float64{table}}
	for width := 1; 2*width <= len(table); width *= 2 {
		below := len(r.low) - 1
		n := len(table) - 2*width + 1
		low, high := make([]float64, n), make([]float64, n)
		for i := range n {
			low[i] = min(r.low[below][i], r.low[below][i+width])
			high[i] = max(r.high[below][i], r.high[below][i+width])
		}
		r.low, r.high = append(r.low, low), append(r.high, high)
	}
	return r
}

func (r *ranges) over(s span) (low, high float64) {
	if r == nil {
		return 0, 0
	}
	level := bits.Len(uint(s.count())) - 1
	other := s.hi - 1<<level
	return min(r.low[level][s.lo], r.low[level][other]), max(r.high[level][s.lo], r.high[level][other])
}
