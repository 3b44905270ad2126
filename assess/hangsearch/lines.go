package hangsearch

import "boughline/assess"

// lines is the search for the line lengths that fit at one spot.
type lines struct {
	shortest, longest centimetres
	try               func(centimetres) assess.Short
}

// mark is a line that was tried.
type mark struct {
	line  centimetres
	short assess.Short
}

// runs returns the lines that fit, or what falls short and at which line: of
// all lines tried the one that comes nearest.
func (l lines) runs() (found []run, nearest assess.Short, at centimetres) {
	if l.longest < l.shortest {
		return nil, l.try(max(1, l.longest)), l.longest
	}
	var before *mark
	var open *run
	for line := l.longest; ; line = max(line-lineStep, l.shortest) {
		here := mark{line, l.try(line)}
		if here.short.Margin > nearest.Margin || at == 0 {
			nearest, at = here.short, line
		}
		switch {
		case here.short.Holds() && open == nil:
			open = l.opened(before, here)
		case !here.short.Holds() && open != nil:
			found, open = append(found, l.closed(*open, before.line, here)), nil
		case !here.short.Holds() && before != nil && here.short.Code != before.short.Code:
			found = append(found, l.between(*before, here)...)
		}
		before = &here
		if line == l.shortest {
			break
		}
	}
	if open != nil {
		open.from = l.shortest
		found = append(found, *open)
	}
	return found, nearest, at
}

// opened starts a run at a line that fits, the one before having been too long.
func (l lines) opened(before *mark, here mark) *run {
	if before == nil {
		return &run{to: here.line}
	}
	fits, not := l.edge(here, *before)
	return &run{to: fits, longer: &not.short}
}

// closed ends a run before a line that is too short.
func (l lines) closed(r run, fits centimetres, here mark) run {
	from, not := l.edge(mark{line: fits}, here)
	r.from, r.shorter = from, &not.short
	return r
}

// edge halves the way from a line that fits to one that does not, down to
// neighbours.
func (l lines) edge(fits, not mark) (centimetres, mark) {
	for fits.line-not.line > 1 || not.line-fits.line > 1 {
		middle := (fits.line + not.line) / 2
		if short := l.try(middle); short.Holds() {
			fits.line = middle
		} else {
			not = mark{middle, short}
		}
	}
	return fits.line, not
}

// tooLong reports whether a shorter line helps a check of space: it comes less
// near to the ground and to what stands beside it.
func tooLong(c assess.Code) bool {
	switch c {
	case assess.SeatClearance, assess.FootClearance, assess.StemClearance, assess.Obstructed:
		return true
	}
	return false
}

// between looks for lines that fit between a longer one that fails by one
// check and a shorter one that fails by another.
func (l lines) between(longer, shorter mark) []run {
	for longer.line-shorter.line > 1 {
		middle := mark{line: (longer.line + shorter.line) / 2}
		middle.short = l.try(middle.line)
		switch {
		case middle.short.Holds():
			to, tooLong := l.edge(middle, longer)
			from, tooShort := l.edge(middle, shorter)
			return []run{{from, to, &tooShort.short, &tooLong.short}}
		case middle.short.Code == longer.short.Code || tooLong(middle.short.Code):
			longer = middle
		default:
			shorter = middle
		}
	}
	return nil
}
