package hangsearch

import (
	"cmp"
	"slices"

	"boughline/assess"
)

// candidate is a spot with one line.
type candidate struct {
	spot
	line  centimetres
	value float64 // by the aim, the more the better
	// among are the lines of which the best has yet to be found; until then
	// value is what it can come to at most. Nil once line is known.
	among *run
}

// candidates lists the best line of every run of the rows.
func (f *finder) candidates(rows []row) ([]candidate, error) {
	var list []candidate
	for _, r := range rows {
		for _, run := range r.runs {
			c, err := f.bestLine(r.spot, run)
			if err != nil {
				return nil, err
			}
			list = append(list, c)
		}
	}
	return list, nil
}

// next takes the first of the candidates out of the list. The line of one is
// looked for only when what it can come to at most would make it the first.
func (f *finder) next(list *[]candidate, order func(a, b candidate) int) (candidate, error) {
	for {
		first := 0
		for i := range *list {
			if order((*list)[i], (*list)[first]) < 0 {
				first = i
			}
		}
		c := (*list)[first]
		if c.among == nil {
			*list = slices.Delete(*list, first, first+1)
			return c, nil
		}
		w, err := f.swing(c.spot)
		if err != nil {
			return c, err
		}
		line, room := f.mostInHand(w, *c.among)
		(*list)[first] = candidate{spot: c.spot, line: line, value: min(c.value, room)}
	}
}

// order puts the better candidate first: of the same value the one nearer to
// the union, which strains the limb less.
func (c candidate) order(other candidate) int {
	return cmp.Or(cmp.Compare(other.value, c.value), cmp.Compare(c.along, other.along))
}

// bestLine takes the line of a run that the aim asks for.
func (f *finder) bestLine(at spot, r run) (candidate, error) {
	w, err := f.swing(at)
	if err != nil {
		return candidate{}, err
	}
	c := candidate{spot: at, line: r.to}
	switch f.options.Aim {
	case LowestFall:
		if w.Fall(r.from.metres(), f.amplitude) < w.Fall(r.to.metres(), f.amplitude) {
			c.line = r.from
		}
		c.value = -float64(w.Fall(c.line.metres(), f.amplitude))
	case MostInHand:
		c.among, c.value = &r, f.strength(at, w).Margin
	default:
		c.value = float64(c.line)
	}
	return c, nil
}

// mostInHand halves steps towards the line of a run with the most in hand, and
// returns how much that is: shorter lines fall from higher, longer ones come
// nearer to the ground and to what stands there, so that what binds says on
// which side to go on.
func (f *finder) mostInHand(w assess.Swing, r run) (line centimetres, room float64) {
	low, high := r.from, r.to
	for low <= high {
		middle := (low + high) / 2
		least := w.Space(middle.metres(), f.amplitude)
		if least.Margin > room {
			line, room = middle, least.Margin
		}
		if tooLong(least.Code) {
			high = middle - 1
		} else {
			low = middle + 1
		}
	}
	return line, room
}
