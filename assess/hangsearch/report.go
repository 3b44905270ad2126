package hangsearch

import (
	"boughline/assess"
	"boughline/quantity"
)

// fits works a hang out as far as is needed to say what falls short.
func (f *finder) fits(at spot, line centimetres) (assess.Short, error) {
	w, err := f.swing(at)
	if err != nil {
		return assess.Short{}, err
	}
	if short := f.strength(at, w); !short.Holds() {
		return short, nil
	}
	if short := w.Fits(line.metres(), f.amplitude); !short.Holds() {
		return short, nil
	}
	return w.Line(line.metres()), nil
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
	return p, f.edges(found, c)
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
func (f *finder) edges(found *Found, c candidate) error {
	line := func(l centimetres) (assess.Short, error) { return f.fits(c.spot, l) }
	along := func(s centimetres) (assess.Short, error) { return f.fits(spot{s, c.heading}, c.line) }
	w, err := f.swing(c.spot)
	if err != nil {
		return err
	}
	l := f.linesAt(c.spot, w)
	for _, e := range []struct {
		to        **Edge
		from, end centimetres
		try       func(centimetres) (assess.Short, error)
	}{
		{&found.Nearer, c.along, endRoom, along}, {&found.Farther, c.along, f.last(), along},
		{&found.Shorter, c.line, l.shortest, line}, {&found.Longer, c.line, l.longest, line},
	} {
		if *e.to, err = firstBeyond(e.from, e.end, e.try); err != nil {
			return err
		}
	}
	return nil
}

// firstBeyond halves the way from a length that serves to the end of what is
// tried, down to neighbours; nil where the end serves too.
func firstBeyond(serves, end centimetres, try func(centimetres) (assess.Short, error)) (*Edge, error) {
	short, err := try(end)
	if err != nil || short.Holds() {
		return nil, err
	}
	for end-serves > 1 || serves-end > 1 {
		middle := (serves + end) / 2
		at, err := try(middle)
		if err != nil {
			return nil, err
		}
		if at.Holds() {
			serves = middle
		} else {
			end, short = middle, at
		}
	}
	return &Edge{end.metres(), bindOf(short)}, nil
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
