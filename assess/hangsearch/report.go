package hangsearch

import (
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
