package hangsearch

import (
	"math"

	"boughline/assess"
	"boughline/quantity"
)

// Places along a limb and lines are whole centimetres, directions whole
// degrees, so that every hang that is tried can be written down exactly.
type (
	centimetres int
	degrees     int
)

func (c centimetres) metres() quantity.Length { return quantity.Length(c) / 100 }
func (d degrees) angle() quantity.Angle       { return quantity.Angle(d) * quantity.Degree }

// The steps of the sweep.
const (
	alongStep centimetres = 50
	lineStep  centimetres = 40
	endRoom   centimetres = 30 // from both ends of a limb
	headRoom  centimetres = 30 // of a line that ends above the ground
)

// Directions are tried 10 degrees apart, up to 40 off the one square to the
// limb: first every other one, then those between them.
var (
	evenTurns = []degrees{0, -20, 20, -40, 40}
	oddTurns  = []degrees{-10, 10, -30, 30}
)

// points are the hang points and directions of one limb that were tried, for
// all groups.
type points struct {
	prospect   assess.Prospect
	limb       assess.Limb
	at         map[centimetres]assess.HangPoint
	directions map[spot]assess.Direction
}

func pointsOn(p assess.Prospect, limb assess.Limb) *points {
	return &points{p, limb, map[centimetres]assess.HangPoint{}, map[spot]assess.Direction{}}
}

func (p *points) point(along centimetres) (assess.HangPoint, error) {
	if known, ok := p.at[along]; ok {
		return known, nil
	}
	point, err := p.prospect.At(p.limb.ID, along.metres())
	if err == nil {
		p.at[along] = point
	}
	return point, err
}

func (p *points) direction(at spot) (assess.Direction, error) {
	if known, ok := p.directions[at]; ok {
		return known, nil
	}
	point, err := p.point(at.along)
	if err != nil {
		return assess.Direction{}, err
	}
	direction, err := point.Turned(at.heading.angle())
	if err == nil {
		p.directions[at] = direction
	}
	return direction, err
}

// last is the farthest place along the limb that is tried.
func (p *points) last() centimetres {
	return centimetres(math.Floor(float64(p.limb.Length)*100)) - endRoom
}

// spot is a hang point and a swing direction, clockwise from north.
type spot struct {
	along   centimetres
	heading degrees
}

// finder looks for the hangs of one group on one limb.
type finder struct {
	*points
	options   Options
	group     string
	chain     string
	amplitude quantity.Angle
	swings    map[spot]assess.Swing
	bears     map[spot]assess.Short
	bore      int // spots of the last ray that had the strength
}

func finderFor(p *points, o Options, group, chain string) *finder {
	return &finder{points: p, options: o, group: group, chain: chain, swings: map[spot]assess.Swing{}, bears: map[spot]assess.Short{}}
}

// swing returns the swings from a spot.
func (f *finder) swing(at spot) (assess.Swing, error) {
	if known, ok := f.swings[at]; ok {
		return known, nil
	}
	direction, err := f.direction(at)
	if err != nil {
		return assess.Swing{}, err
	}
	w, err := direction.With(f.group, f.chain)
	if err == nil {
		f.swings[at] = w
	}
	return w, err
}

// square is the swing direction square to the limb, from 0 to 359 degrees.
func (f *finder) square(along centimetres) (degrees, error) {
	point, err := f.point(along)
	if err != nil {
		return 0, err
	}
	return turned(degrees(math.Round(point.Azimuth().Degrees())), 0), nil
}

func turned(heading, by degrees) degrees { return ((heading+by)%360 + 360) % 360 }

// row is the lines that fit at one spot by strength in still air and by space.
type row struct {
	spot
	runs []run
	// bind is what falls short where there are none; line the line at which it
	// was met, 0 where no line matters.
	bind assess.Short
	line centimetres
}

// run is line lengths in a row that fit, with what falls short just beyond.
type run struct {
	from, to        centimetres
	shorter, longer *assess.Short
}

// row tries all lines at a spot.
func (f *finder) row(at spot) (row, error) {
	r := row{spot: at}
	w, err := f.swing(at)
	if err != nil {
		return r, err
	}
	if r.bind = f.strength(at, w); !r.bind.Holds() {
		return r, nil
	}
	return f.fitting(at, w), nil
}

// fitting tries all lines at a spot that has the strength.
func (f *finder) fitting(at spot, w assess.Swing) row {
	r := row{spot: at}
	r.runs, r.bind, r.line = f.linesAt(at, w).runs()
	return r
}

// strength works the strength at a spot out once, whatever the amplitude.
func (f *finder) strength(at spot, w assess.Swing) assess.Short {
	known, ok := f.bears[at]
	if !ok {
		known = w.Strength()
		f.bears[at] = known
	}
	return known
}

// linesAt is the range of lines that are tried at a spot.
func (f *finder) linesAt(at spot, w assess.Swing) lines {
	point, _ := f.point(at.along) // the swing was made from it
	longest := centimetres(math.Floor(float64(point.Height())*100)) - headRoom
	return lines{
		shortest: centimetres(math.Ceil(float64(f.options.Shortest)*100 - 1e-6)), longest: longest,
		try: func(line centimetres) assess.Short { return w.Fits(line.metres(), f.amplitude) },
	}
}
