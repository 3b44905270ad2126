package hangsearch

import (
	"math"
	"slices"

	"boughline/assess"
	"boughline/quantity"
)

// edges finds the first hang points and lines that no longer serve.
// Along the limb the rows of the band say where to begin.
func (f *finder) edges(found *Found, c candidate, b Band) error {
	line := func(l centimetres, whole bool) (assess.Short, error) { return f.fits(c.spot, l, whole) }
	along := func(s centimetres, whole bool) (assess.Short, error) {
		return f.fits(spot{s, c.heading}, c.line, whole)
	}
	w, err := f.swing(c.spot)
	if err != nil {
		return err
	}
	l := f.linesAt(c.spot, w)
	nearest, nearer := b.servesTo(c, -1, endRoom)
	farthest, farther := b.servesTo(c, 1, f.last())
	for _, e := range []struct {
		to                **Edge
		from, serves, end centimetres
		try               func(centimetres, bool) (assess.Short, error)
	}{
		{&found.Nearer, c.along, nearest, nearer, along}, {&found.Farther, c.along, farthest, farther, along},
		{&found.Shorter, c.line, c.line, l.shortest, line}, {&found.Longer, c.line, c.line, l.longest, line},
	} {
		if *e.to, err = firstBeyond(e.from, e.serves, e.end, e.try); err != nil {
			return err
		}
	}
	return nil
}

// servesTo is how far the rows of the band serve with the line of a candidate,
// without a gap, towards the tip (1) or the union (-1), and the first row that
// does not, or the end.
func (b Band) servesTo(c candidate, towards int, end centimetres) (serves, beyond centimetres) {
	serves, beyond = c.along, end
	for i := range b.Rows {
		row := &b.Rows[i]
		if towards < 0 {
			row = &b.Rows[len(b.Rows)-1-i]
		}
		at := centimetres(math.Round(float64(row.Along) * 100))
		if (at-c.along)*centimetres(towards) <= 0 {
			continue
		}
		if !row.has(c.line.metres()) {
			return serves, at
		}
		serves = at
	}
	return serves, beyond
}

// has reports whether a line serves, to rounding.
func (r *Row) has(line quantity.Length) bool {
	return slices.ContainsFunc(r.Lines, func(l Lines) bool { return line >= l.From-1e-6 && line <= l.To+1e-6 })
}

// firstBeyond looks for the first length that no longer serves, between one that
// does by the quick checks and the end of what is tried: first by the checks that are quick, then,
// where the last one that serves by those fails by the others, by all. Nil where
// the end serves too.
func firstBeyond(from, serves, end centimetres, try func(centimetres, bool) (assess.Short, error)) (*Edge, error) {
	last, beyond, err := halve(serves, end, false, try)
	if err != nil {
		return nil, err
	}
	switch short, err := try(last, true); {
	case err != nil:
		return nil, err
	case !short.Holds():
		_, beyond, err = halve(from, last, true, try)
		return beyond, err
	}
	return beyond, nil
}

// halve closes in on the end of what serves, down to neighbours: the last length
// that serves and the first that does not. What takes long is first looked for
// where a straight line between the margins at both sides would be 1.
func halve(serves, end centimetres, whole bool, try func(centimetres, bool) (assess.Short, error)) (centimetres, *Edge, error) {
	out, err := try(end, whole)
	if err != nil || out.Holds() {
		return end, nil, err
	}
	g := gap{serves: serves, end: end}
	if whole && g.open() {
		if g.in, err = try(serves, true); err != nil {
			return serves, nil, err
		}
	}
	g.out = out
	for n := 0; g.open(); n++ {
		next := (g.serves + g.end) / 2
		if whole && n < guesses {
			next = g.guess(n)
		}
		short, err := try(next, whole)
		if err != nil {
			return g.serves, nil, err
		}
		g.narrow(next, short)
	}
	return g.serves, &Edge{g.end.metres(), bindOf(g.out)}, nil
}

// guesses is how often a place is guessed by the margins before halving.
const guesses = 8

// gap lies between a length that serves and one that does not.
type gap struct {
	serves, end centimetres
	in, out     assess.Short // what was found at both
	held        bool         // the last one tried served
}

func (g *gap) open() bool { return g.end-g.serves > 1 || g.serves-g.end > 1 }

func (g *gap) narrow(at centimetres, short assess.Short) {
	if g.held = short.Holds(); g.held {
		g.serves, g.in = at, short
	} else {
		g.end, g.out = at, short
	}
}

// guess alternates between a length by the margins and the neighbour of the one
// tried last.
func (g *gap) guess(n int) centimetres {
	towards := centimetres(1)
	if g.end < g.serves {
		towards = -1
	}
	switch {
	case n%2 == 1 && g.held:
		return g.serves + towards
	case n%2 == 1:
		return g.end - towards
	}
	share := 0.5
	if g.in.Margin > 1 && g.out.Margin < 1 {
		share = (g.in.Margin - 1) / (g.in.Margin - g.out.Margin)
	}
	wide := (g.end - g.serves) * towards
	return g.serves + towards*min(max(1, centimetres(share*float64(wide))), wide-1)
}
