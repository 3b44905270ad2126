package hangsearch

import (
	"cmp"
	"slices"
	"sort"

	"boughline/assess"
)

// candidate is a spot with one line.
type candidate struct {
	spot
	line  centimetres
	value float64 // by the aim, the more the better
	// outcome is what follows for it by all that is no check.
	outcome assess.Outcome
}

// place finds the best hang of the group on the limb at the widest amplitude
// that serves.
func (f *finder) place() (Place, error) {
	p := Place{Limb: f.limb.ID, Riders: f.group}
	var nearest *row
	for _, f.amplitude = range f.options.Amplitudes {
		rows, err := f.sweep()
		if err != nil {
			return p, err
		}
		best, costly, err := f.best(rows)
		if err != nil {
			return p, err
		}
		if best != nil {
			return f.report(p, *best)
		}
		near := nearestOf(rows, costly)
		if nearest == nil || near.bind.Margin > nearest.bind.Margin {
			nearest = &near
		}
		if near.line == 0 { // by strength alone: no amplitude changes it
			break
		}
	}
	return f.missed(p, *nearest)
}

// sweep tries all spots of the coarse grid.
func (f *finder) sweep() ([]row, error) {
	var rows []row
	for turn := -turnMost; turn <= turnMost; turn += turnStep {
		var ray []spot
		for along := alongStep; along <= max(alongStep, f.last()); along += alongStep {
			square, err := f.square(along)
			if err != nil {
				return nil, err
			}
			ray = append(ray, spot{along, turned(square, turn)})
		}
		tried, err := f.ray(ray)
		if err != nil {
			return nil, err
		}
		rows = append(rows, tried...)
	}
	return rows, nil
}

// ray tries spots farther and farther out, up to the first at which strength
// falls short: a longer arm is never better.
func (f *finder) ray(spots []spot) ([]row, error) {
	bearing, err := f.bearing(spots)
	if err != nil {
		return nil, err
	}
	var rows []row
	for _, at := range spots[:bearing] {
		w, err := f.swing(at)
		if err != nil {
			return nil, err
		}
		rows = append(rows, f.fitting(at, w))
	}
	if bearing == len(spots) {
		return rows, nil
	}
	weak, err := f.row(spots[bearing])
	return append(rows, weak), err
}

// bearing is how many of the spots, from the first on, have the strength.
func (f *finder) bearing(spots []spot) (int, error) {
	var failed error
	n := sort.Search(len(spots), func(i int) bool {
		w, err := f.swing(spots[i])
		if err != nil {
			failed = cmp.Or(failed, err)
			return true
		}
		return !f.strength(spots[i], w).Holds()
	})
	return n, failed
}

// candidates lists the best line of every run of the rows, the best first: by
// what follows for it, then by the aim.
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
	slices.SortStableFunc(list, candidate.order)
	return list, nil
}

// order puts the better candidate first: of the same value the one nearer to
// the union, which strains the limb less.
func (c candidate) order(other candidate) int {
	return cmp.Or(cmp.Compare(c.outcome, other.outcome), cmp.Compare(other.value, c.value), cmp.Compare(c.along, other.along))
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
		c.line = f.mostInHand(w, r)
		c.value = min(f.strength(at, w).Margin, w.Space(c.line.metres(), f.amplitude).Margin, w.Line(c.line.metres()).Margin)
	default:
		c.value = float64(c.line)
	}
	c.outcome = w.Conditions(c.line.metres(), f.amplitude)
	return c, nil
}

// mostInHand halves steps towards the line of a run with the most in hand:
// shorter lines fall from higher, longer ones come nearer to the ground.
func (f *finder) mostInHand(w assess.Swing, r run) centimetres {
	room := func(line centimetres) float64 { return w.Space(line.metres(), f.amplitude).Margin }
	low, high := r.from, r.to
	for high-low > 1 {
		middle := (low + high) / 2
		if room(middle) >= room(middle+1) {
			high = middle
		} else {
			low = middle + 1
		}
	}
	if room(low) >= room(high) {
		return low
	}
	return high
}

// tries is how many candidates are tried with the checks that take long.
const tries = 8

// best takes the best candidate at which the checks of chance, motion and calm
// weather hold too, and refines it. Where none holds it returns the one that
// came nearest.
func (f *finder) best(rows []row) (found *candidate, nearest *row, err error) {
	list, err := f.candidates(rows)
	if err != nil {
		return nil, nil, err
	}
	for _, c := range shortlist(list) {
		w, err := f.swing(c.spot)
		if err != nil {
			return nil, nil, err
		}
		short := w.Line(c.line.metres())
		if short.Holds() {
			c, err = f.refine(c)
			return &c, nil, err
		}
		if nearest == nil || short.Margin > nearest.bind.Margin {
			nearest = &row{spot: c.spot, bind: short, line: c.line}
		}
	}
	return nil, nearest, nil
}

// shortlist is the best candidates, and should none of those do the ones with
// the shortest arms, which what takes long finds the easiest.
func shortlist(list []candidate) []candidate {
	if len(list) <= tries {
		return list
	}
	rest := slices.Clone(list[tries:])
	slices.SortStableFunc(rest, func(a, b candidate) int { return cmp.Or(cmp.Compare(a.along, b.along), a.order(b)) })
	return append(slices.Clone(list[:tries]), rest[:min(len(rest), tries)]...)
}

// refine walks from a candidate to better neighbours with ever smaller steps,
// down to 1 cm along the limb and 2 degrees.
func (f *finder) refine(c candidate) (candidate, error) {
	for _, step := range []struct {
		along centimetres
		turn  degrees
	}{{25, 6}, {12, 4}, {6, 2}, {3, 2}, {1, 2}} {
		for _, next := range []spot{
			{c.along - step.along, c.heading}, {c.along + step.along, c.heading},
			{c.along, turned(c.heading, -step.turn)}, {c.along, turned(c.heading, step.turn)},
		} {
			better, err := f.betterAt(next, c)
			if err != nil {
				return c, err
			}
			if better != nil {
				c = *better
			}
		}
	}
	return c, nil
}

// betterAt returns the best candidate at a spot if it is better than another.
func (f *finder) betterAt(at spot, than candidate) (*candidate, error) {
	if at.along < endRoom || at.along > f.last() {
		return nil, nil
	}
	r, err := f.row(at)
	if err != nil {
		return nil, err
	}
	list, err := f.candidates([]row{r})
	if err != nil || len(list) == 0 || list[0].order(than) >= 0 {
		return nil, err
	}
	w, err := f.swing(at)
	if err != nil || !w.Line(list[0].line.metres()).Holds() {
		return nil, err
	}
	return &list[0], nil
}

// nearestOf is the row that comes nearest to serving.
func nearestOf(rows []row, costly *row) row {
	if costly != nil {
		return *costly
	}
	return slices.MaxFunc(rows, func(a, b row) int { return cmp.Compare(a.bind.Margin, b.bind.Margin) })
}
