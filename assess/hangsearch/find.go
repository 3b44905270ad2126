package hangsearch

import (
	"cmp"
	"slices"
	"sort"

	"boughline/assess"
)

// place finds the best hang of the group on the limb at the widest amplitude
// that serves.
func (f *finder) place() (Place, error) {
	p := Place{Limb: f.limb.ID, Riders: f.group}
	if known, err := f.groundKnown(); err != nil || !known {
		return f.byStrength(p, err)
	}
	var nearest *row
	for _, f.amplitude = range f.options.Amplitudes {
		rows, err := f.sweep(evenTurns) // every other direction first
		if err != nil {
			return p, err
		}
		best, costly, settled, err := f.best(rows)
		if err != nil {
			return p, err
		}
		if !settled {
			between, err := f.sweep(oddTurns)
			if err != nil {
				return p, err
			}
			rows = append(rows, between...)
			if best, costly, _, err = f.best(rows); err != nil {
				return p, err
			}
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

// sweep tries all spots of the coarse grid in directions turned off the one
// square to the limb.
func (f *finder) sweep(turns []degrees) ([]row, error) {
	var rows []row
	for _, turn := range turns {
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

// bearing is how many of the spots, from the first on, have the strength. The
// answer for the ray before is asked about first: it is often the same.
func (f *finder) bearing(spots []spot) (int, error) {
	var failed error
	weak := func(i int) bool {
		w, err := f.swing(spots[i])
		if err != nil {
			failed = cmp.Or(failed, err)
			return true
		}
		return !f.strength(spots[i], w).Holds()
	}
	n := min(f.bore, len(spots))
	if n < len(spots) && !weak(n) || n > 0 && weak(n-1) {
		n = sort.Search(len(spots), weak)
	}
	f.bore = n
	return n, failed
}

// tries is how many candidates are tried with the checks that take long.
const tries = 8

// choice is the search for the best candidate of a sweep.
type choice struct {
	*finder
	outcome assess.Outcome // of the one that was found
	// seen are the least and the worst outcome of all that were tried.
	seen    [2]assess.Outcome
	found   *candidate
	nearest *row // what came nearest, by the checks that take long
	left    int  // candidates that may still be tried with those
}

// best takes the best candidate at which the checks of chance, motion and calm
// weather hold too, and refines it: one that may be hung, or else the one of
// which the least bad follows. Where none holds it returns what came nearest.
// It is settled where other directions would hardly do better: the one found may
// be hung, or all of them come to the same.
func (f *finder) best(rows []row) (found *candidate, nearest *row, settled bool, err error) {
	list, err := f.candidates(rows)
	if err != nil {
		return nil, nil, false, err
	}
	c := choice{finder: f, outcome: assess.Leave + 1, seen: [2]assess.Outcome{assess.Leave, assess.MayHang}}
	if err := c.among(slices.Clone(list), candidate.order); err != nil {
		return nil, nil, false, err
	}
	if c.found == nil { // what takes long finds the shortest arms the easiest
		nearest := func(a, b candidate) int { return cmp.Or(cmp.Compare(a.along, b.along), a.order(b)) }
		if err := c.among(list, nearest); err != nil {
			return nil, nil, false, err
		}
	}
	if c.found == nil {
		return nil, c.nearest, false, nil
	}
	refined, err := f.refine(*c.found, c.outcome)
	return &refined, nil, c.outcome.Rideable() || c.seen[0] == c.seen[1], err
}

// among looks through candidates up to the first that may be hung.
func (c *choice) among(list []candidate, order func(a, b candidate) int) error {
	c.left = tries
	for len(list) > 0 && !c.outcome.Rideable() && c.left > 0 {
		one, err := c.next(&list, order)
		if err != nil {
			return err
		}
		if err := c.try(one); err != nil {
			return err
		}
	}
	return nil
}

// try takes a candidate if a better outcome follows for it and all checks hold.
func (c *choice) try(one candidate) error {
	w, err := c.swing(one.spot)
	if err != nil {
		return err
	}
	outcome := w.Conditions(one.line.metres(), c.amplitude)
	c.seen[0], c.seen[1] = min(c.seen[0], outcome), max(c.seen[1], outcome)
	if outcome >= c.outcome {
		return nil
	}
	c.left--
	short := w.Line(one.line.metres())
	switch {
	case short.Holds():
		settled := c.settled(one, short)
		c.outcome, c.found = outcome, &settled
	case c.nearest == nil || short.Margin > c.nearest.bind.Margin:
		c.nearest = &row{spot: one.spot, bind: short, line: one.line}
	}
	return nil
}

// refine walks from a candidate to better neighbours with ever smaller steps,
// down to 1 cm along the limb and 2 degrees.
func (f *finder) refine(c candidate, outcome assess.Outcome) (candidate, error) {
	for _, step := range []struct {
		along centimetres
		turn  degrees
	}{{25, 10}, {12, 4}, {6, 2}, {3, 2}, {1, 2}} {
		for _, next := range []spot{
			{c.along - step.along, c.heading}, {c.along + step.along, c.heading},
			{c.along, turned(c.heading, -step.turn)}, {c.along, turned(c.heading, step.turn)},
		} {
			better, err := f.betterAt(next, c, outcome)
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

// betterAt returns the best candidate at a spot if it is better than another
// and what follows for it is no worse.
func (f *finder) betterAt(at spot, than candidate, outcome assess.Outcome) (*candidate, error) {
	if at.along < endRoom || at.along > f.last() {
		return nil, nil
	}
	r, err := f.row(at)
	if err != nil {
		return nil, err
	}
	list, err := f.candidates([]row{r})
	list = slices.DeleteFunc(list, func(c candidate) bool { return c.order(than) >= 0 })
	if err != nil || len(list) == 0 {
		return nil, err
	}
	next, err := f.next(&list, candidate.order)
	if err != nil || next.order(than) >= 0 {
		return nil, err
	}
	w, err := f.swing(at)
	if err != nil {
		return nil, err
	}
	short := w.Line(next.line.metres())
	settled := f.settled(next, short)
	if !short.Holds() || settled.order(than) >= 0 || w.Conditions(next.line.metres(), f.amplitude) > outcome {
		return nil, nil
	}
	return &settled, nil
}

// settled is a candidate whose value counts what takes long too, where the aim
// asks for the most in hand.
func (f *finder) settled(c candidate, short assess.Short) candidate {
	if f.options.Aim == MostInHand {
		c.value = min(c.value, short.Margin)
	}
	return c
}

// nearestOf is the row that comes nearest to serving.
func nearestOf(rows []row, costly *row) row {
	if costly != nil {
		return *costly
	}
	return slices.MaxFunc(rows, func(a, b row) int { return cmp.Compare(a.bind.Margin, b.bind.Margin) })
}
