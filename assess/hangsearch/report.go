package hangsearch

import (
	"math"
	"slices"

	"boughline/assess"
	"boughline/quantity"
)

// fits works a hang out as far as is needed to say what falls short, the checks
// that take long only where whole is set.
func (f *finder) fits(at spot, line centimetres, whole bool) (assess.Short, error) {
	w, err := f.swing(at)
	if err != nil {
		return assess.Short{}, err
	}
	short := f.strength(at, w)
	if short.Holds() {
		short = w.Fits(line.metres(), f.amplitude)
	}
	if short.Holds() && whole {
		short = w.Line(line.metres())
	}
	return short, nil
}

// report judges the best hang and looks for what binds around it.
func (f *finder) report(p Place, c candidate) (Place, error) {
	w, err := f.swing(c.spot)
	if err != nil {
		return p, err
	}
	found := &Found{Hang: w.Asked(f.limb.ID+"-"+f.group, c.line.metres(), f.amplitude), Fall: w.Fall(c.line.metres(), f.amplitude)}
	judged := w.Judge(&found.Hang)
	found.Judged, found.Outcome = &judged, judged.Outcome
	found.Least, found.area = leastOf(judged), w.Area(&found.Hang)
	p.Best = found
	if p.Band, err = f.band(c.heading); err != nil {
		return p, err
	}
	return p, f.edges(found, c, p.Band)
}

// leastOf is the least margin of what was asked for.
func leastOf(h assess.Hang) Bind {
	if len(h.Checks) == 0 {
		return Bind{}
	}
	c := h.Checks[0] // the least margin is first
	return Bind{c.Code, c.Where.Part, c.Margin}
}

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

// halve halves the way from a length that serves to the end, down to
// neighbours: the last that serves and the first that does not.
func halve(serves, end centimetres, whole bool, try func(centimetres, bool) (assess.Short, error)) (centimetres, *Edge, error) {
	short, err := try(end, whole)
	if err != nil || short.Holds() {
		return end, nil, err
	}
	for end-serves > 1 || serves-end > 1 {
		middle := (serves + end) / 2
		at, err := try(middle, whole)
		if err != nil {
			return serves, nil, err
		}
		if at.Holds() {
			serves = middle
		} else {
			end, short = middle, at
		}
	}
	return serves, &Edge{end.metres(), bindOf(short)}, nil
}

// bandStep is between the rows of a band.
const bandStep centimetres = 25

// band maps the limb in one direction.
func (f *finder) band(heading degrees) (Band, error) {
	b := Band{Azimuth: heading.angle(), Amplitude: f.amplitude, Length: f.limb.Length}
	var spots []spot
	for along := bandStep; along <= f.last(); along += bandStep {
		spots = append(spots, spot{along, heading})
	}
	rows, err := f.ray(spots)
	for i, at := range spots {
		if i < len(rows) {
			b.Rows = append(b.Rows, rows[i].drawn())
			continue
		}
		b.Rows = append(b.Rows, Row{Along: at.along.metres(), Bind: b.Rows[i-1].Bind})
	}
	return b, err
}

// drawn is a row as the result shows it.
func (r row) drawn() Row {
	row := Row{Along: r.along.metres()}
	for _, run := range r.runs {
		row.Lines = append(row.Lines, Lines{run.from.metres(), run.to.metres(), bindPointer(run.shorter), bindPointer(run.longer)})
	}
	if len(r.runs) == 0 {
		row.Bind = bindPointer(&r.bind)
	}
	return row
}

func bindPointer(s *assess.Short) *Bind {
	if s == nil {
		return nil
	}
	b := bindOf(*s)
	return &b
}

// groundKnown reports whether the ground was surveyed below any place along the
// limb.
func (f *finder) groundKnown() (bool, error) {
	for along := alongStep; along <= max(alongStep, f.last()); along += alongStep {
		square, err := f.square(along)
		if err != nil {
			return false, err
		}
		direction, err := f.direction(spot{along, square})
		if err != nil || direction.GroundKnown() {
			return direction.GroundKnown(), err
		}
	}
	return false, nil
}

// byStrength is all that can be said of a limb over ground that nobody has
// surveyed: how far out it has the strength, square to it.
func (f *finder) byStrength(p Place, err error) (Place, error) {
	p.Miss = &Miss{Bind: Bind{Code: assess.GroundNotSurveyed}, Changes: []assess.Change{{Code: assess.ChangeMeasure}}}
	p.Band.Length = f.limb.Length
	for along := bandStep; err == nil && along <= f.last(); along += bandStep {
		var short assess.Short
		if short, err = f.strengthSquare(along, &p.Band); err != nil {
			break
		}
		row := Row{Along: along.metres()}
		if short.Holds() {
			p.Miss.Along = along.metres()
		} else {
			row.Bind = bindPointer(&short)
		}
		p.Band.Rows = append(p.Band.Rows, row)
	}
	return p, err
}

func (f *finder) strengthSquare(along centimetres, b *Band) (assess.Short, error) {
	square, err := f.square(along)
	if err != nil {
		return assess.Short{}, err
	}
	b.Azimuth = square.angle()
	w, err := f.swing(spot{along, square})
	if err != nil {
		return assess.Short{}, err
	}
	return f.strength(spot{along, square}, w), nil
}

// missed tells what comes nearest where nothing serves, and what would help.
func (f *finder) missed(p Place, nearest row) (Place, error) {
	p.Miss = &Miss{Along: nearest.along.metres(), Line: nearest.line.metres(), Azimuth: nearest.heading.angle(), Bind: bindOf(nearest.bind)}
	w, err := f.swing(nearest.spot)
	if err != nil {
		return p, err
	}
	line := max(nearest.line.metres(), quantity.Length(f.options.Shortest))
	p.Miss.Changes = w.Changes(nearest.bind, line)
	p.Band, err = f.band(nearest.heading)
	return p, err
}
