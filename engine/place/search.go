package place

import "boughline/quantity"

// Search works out every pair of the grid and takes nothing for granted. A
// part of two arguments is called once for every pair, again for each band, in
// rows whose bests tie, and once more where nothing is feasible; nothing is
// kept for each pair. Errors name a grid out of range or a field that gave no
// finite number.
func Search(p Problem) (Result, error) {
	s, err := p.prepare()
	if err != nil {
		return Result{}, err
	}
	result := report{p, s, newScan(s)}.result()
	return result, s.notNumber()
}

// Refine gives the same Result as Search from coarse blocks, halved down to
// single pairs only where bounds leave them undecided; every count, edge and
// best is decided at single pairs or by bounds that hold for all.
//
// Fields of Along, Line and PerAlong need no assumption: their bounds come
// from all values of the axes. A field with Both needs a Shape that holds: its
// least and greatest number over a block without a turn then lie at corners.
// Every such block is looked at in the middle too. Where a Shape is missing or
// seen not to hold, the answer is that of Search; one that fails where no look
// falls can go unseen. Both is called once for a pair, and what it gave is
// kept: numbers for the pairs near an edge or a best, not for the grid.
func Refine(p Problem) (Result, error) {
	s, err := p.prepare()
	if err != nil {
		return Result{}, err
	}
	if !s.shaped() {
		return Search(p)
	}
	result := report{p, s, newRefined(s)}.result()
	if s.broken() {
		return Search(p)
	}
	return result, s.notNumber()
}

// Pair works one pair out, whether on the grid or not.
func (p Problem) Pair(along, line quantity.Length) Hang {
	margins := make([]float64, len(p.Constraints))
	for k, c := range p.Constraints {
		margins[k] = c.Margin.At(along, line)
	}
	return p.hang(along, line, margins)
}
