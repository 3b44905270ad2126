package place

import "boughline/quantity"

// Result is the answer to a Problem.
type Result struct {
	Cells    int
	Feasible int   // pairs that meet every constraint
	Passed   []int // pairs that meet each constraint by itself; nil unless asked for
	// Along and Line are the extent of feasible pairs, nil where there are none.
	Along, Line *Range
	Bests       []*Hang // by aim; nil where no feasible pair serves it
	Bands       []Band  // as asked for
	// NearestMiss has the largest least margin, and Dropped says for each
	// constraint what leaving it out would open. Only where nothing is feasible.
	NearestMiss *Hang
	Dropped     []Dropped
}

// Range is two lengths and all between them.
type Range struct{ From, To quantity.Length }

// Hang is one pair of the grid.
type Hang struct {
	Along, Line quantity.Length
	Margins     []float64 // by constraint
	Least       float64
	Binding     string // the first constraint within Slack of the least margin
}

// Band is the feasible hang points with one line.
type Band struct {
	Line  quantity.Length
	Count int
	// Feasible reaches from the least to the greatest feasible hang point, nil
	// where there is none; Whole says that all between them are feasible.
	Feasible *Range
	Whole    bool
	// BeyondLow and BeyondHigh are the pairs next to the band, with what binds
	// there; nil where the grid ends.
	BeyondLow, BeyondHigh *Hang
	Nearest               *Hang // largest least margin, where nothing is feasible
}

// Dropped is what a search without one constraint finds.
type Dropped struct {
	Count int   // pairs that meet all others
	Best  *Hang // the one of them with the largest margin of this constraint; nil where there is none
}
