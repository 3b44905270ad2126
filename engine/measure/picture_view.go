package measure

import (
	"errors"
	"fmt"
	"math"

	"boughline/quantity"
)

// Names under which the readings of a picture share the variance.
const (
	marks    = "marks"
	strays   = "strays"
	centre   = "centre"
	together = "references"
)

// view is a picture as the formula sees it: its readings in a row, and where in
// the row each thing stands.
type view struct {
	names    []string
	readings []Reading

	width, height                          float64
	focal, angle, tilt, roll, turned, bend int // angle of view; -1 the one not known
	centre                                 [2]int
	references                             []referenceView
	extra                                  int // what references that disagree add
	weights                                []float64
	stations                               []stationView
	spans                                  [][2]markView
	corners                                [][3]markView
	gives                                  []Output
	how                                    quantity.How // a guessed reference makes all a guess
}

type markView [2]int

type referenceView struct {
	known, nearer int
	from, to      markView
	distance      bool // known is the distance to from
}

type stationView struct {
	edges [2]markView
	thick bool // it has edges; otherwise edges[0] is its middle
	stray int
}

// ledger takes in readings, and every fault that they have.
type ledger struct {
	view
	spread Spread
	markSd float64
	faults error
}

func (l *ledger) add(name string, r Reading) int {
	l.names, l.readings = append(l.names, name), append(l.readings, r)
	return len(l.readings) - 1
}

func (l *ledger) fault(format string, args ...any) {
	l.faults = errors.Join(l.faults, fmt.Errorf(format, args...))
}

// mark takes in a mark at a place of the document.
func (l *ledger) mark(place string, m *Mark) markView {
	if m == nil {
		l.fault("%s is missing; expected a mark, [right, down] in px", place)
		return markView{}
	}
	for i, most := range [2]float64{l.width, l.height} {
		if !(m[i] >= 0 && m[i] <= most) {
			l.fault("%s: [%v, %v]; expected a point within %v by %v px", place, m[0], m[1], l.width, l.height)
		}
	}
	return markView{l.add(marks, Reading{Value: m[0], Sd: l.markSd}), l.add(marks, Reading{Value: m[1], Sd: l.markSd})}
}

// apart wants two marks farther from each other than they can be read.
func (l *ledger) apart(place string, a, b *Mark) {
	if a == nil || b == nil {
		return // mark tells of it
	}
	if d := math.Hypot(a[0]-b[0], a[1]-b[1]); d < leastApart*l.markSd {
		l.fault("%s: two marks %.3g px apart; expected at least %.3g px, more than the error of a mark: go nearer", place, d, leastApart*l.markSd)
	}
}

// value takes in a value under the name of its place.
func (l *ledger) value(f Field, place string, text Value) int {
	return l.add(place, l.parse(f, place, text))
}

// parse reads a value, or what stands in for it.
func (l *ledger) parse(f Field, place string, text Value) Reading {
	f.Name = place
	if text == "" {
		text = Value(f.Default)
	}
	if text == "" {
		l.fault("%s is missing: %s", place, f.Label)
		return Reading{}
	}
	r, err := f.Parse(string(text), l.spread)
	if err == nil {
		err = f.check(r)
	}
	if err != nil {
		l.fault("%w", err)
	}
	return r
}

// view checks a picture and lays out its readings.
func (p Picture) view(spread Spread) (*view, error) {
	l := &ledger{spread: spread, markSd: p.MarkSd}
	l.how = quantity.Photo
	l.width, l.height = p.Width, p.Height
	if l.markSd == 0 {
		l.markSd = markSd
	}
	switch {
	case !(p.Width >= 100 && p.Width <= 1e5 && p.Height >= 100 && p.Height <= 1e5):
		l.fault("width_px and height_px: %v by %v; expected 100 to 100000 each, those of the uncropped picture", p.Width, p.Height)
	case !(l.markSd > 0 && l.markSd <= 100):
		l.fault("mark_sd_px: %v; expected more than 0, at most 100", p.MarkSd)
	case len(p.References) == 0:
		l.fault("references: there are none; expected a known length or distance")
	case len(p.Limb)+len(p.Lengths)+len(p.Angles) == 0:
		l.fault("limb, lengths and angles: nothing is marked; expected something to measure")
	}
	l.camera(p)
	for i, r := range p.References {
		l.reference(fmt.Sprintf("references[%d]", i), r)
	}
	l.extra = l.add(together, Reading{})
	l.limb(p)
	l.free(p)
	if l.faults == nil {
		l.faults = l.faces()
	}
	return &l.view, l.faults
}

// camera takes in what is known of the camera. What it wrote into the picture
// of its focal length is surer than a value from a table at large.
func (l *ledger) camera(p Picture) {
	own := l.spread
	l.spread = func(_ quantity.How, _ Dimension, value float64) float64 { return focalSd * value }
	l.focal, l.angle = -1, -1
	if p.View != "" && p.Focal == "" {
		l.angle = l.value(viewField, "view", p.View)
	} else {
		l.focal = l.value(focalField, "focal_35mm", p.Focal)
	}
	l.spread = own
	l.tilt = l.value(tiltField, "tilt", p.Tilt)
	l.roll = l.value(rollField, "roll", p.Roll)
	l.turned = l.value(turnedField, "turned", p.Turned)
	bound := bend
	if p.Bend != nil {
		bound = *p.Bend
	}
	if !(bound >= 0 && bound <= 0.2) {
		l.fault("bend: %v; expected 0 to 0.2", bound)
	}
	// Anything within the bound is equally likely.
	l.bend = l.add("bend", Reading{Sd: bound / math.Sqrt(3)})
	sd := centreSd * math.Hypot(p.Width, p.Height)
	l.centre = [2]int{l.add(centre, Reading{Value: p.Width / 2, Sd: sd}), l.add(centre, Reading{Value: p.Height / 2, Sd: sd})}
}
