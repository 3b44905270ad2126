package place

// set is a set of constraints, one bit each.
type set uint64

func allOf(n int) set { return 1<<n - 1 }

func (s set) without(k int) set { return s &^ (1 << k) }

// solver answers questions about the pairs of a block of the grid.
type solver interface {
	solve(in block, ask query) answer
}

type query struct {
	counts []set // how many pairs meet each of these sets?
	picks  []pick
}

// pick asks for the pair of greatest value that meets a set of constraints,
// with the ties of Problem.
type pick struct {
	meets set
	value *sampled // nil for the least margin
	from  int      // first row that counts
}

type answer struct {
	counts []int
	found  []cell
}

// cell is a pair by its indices; ok is false for none.
type cell struct {
	i, j int
	ok   bool
}

// span is indices from lo up to hi, which is left out: the whole axis, a half
// of a span, or a single index. The node numbers halves of halves.
type span struct{ lo, hi, node int }

func (s span) count() int { return s.hi - s.lo }

func single(i int) span { return span{lo: i, hi: i + 1} }

func (s span) halves() (near, far span) {
	middle := (s.lo + s.hi) / 2
	return span{s.lo, middle, 2 * s.node}, span{middle, s.hi, 2*s.node + 1}
}

type block struct{ along, line span }

func (b block) cells() int { return b.along.count() * b.line.count() }

func (a axes) whole() block { return block{span{0, len(a.along), 1}, span{0, len(a.line), 1}} }

func (a axes) row(j int) block { return block{span{0, len(a.along), 1}, single(j)} }
