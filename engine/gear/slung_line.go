package gear

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// SlungLine is an elastic line whose unstretched length is known, between two
// supports of which the left one is the origin: what is put up stays put up,
// however it is loaded then. It resists no bending.
type SlungLine struct {
	Right  Spot            // right support
	Length quantity.Length // without any pull
	Axial  quantity.Force  // pull for a stretch of its own length (EA); +Inf for a line that gives nothing
	Weight quantity.Force  // of the line, for each metre without pull, above 0
}

// Slung is a line in balance under a load at one place of it.
type Slung struct {
	Horizontal  quantity.Force // the same all along
	Left, Right LineEnd
	Load        Spot            // where the load has settled
	Below       quantity.Length // that place below the straight line between the supports
	Stretched   quantity.Length // length under pull
}

// Under returns the line with a load of 0 or more at a share of its length from
// the left, above 0 and below 1. Each part on either side of the load is an
// elastic catenary; one horizontal pull and one vertical at the left support
// close the two sums. Errors name the input outside its range.
// Irvine, Cable Structures, 1981, ch. 2 (from memory).
func (l SlungLine) Under(load quantity.Force, share quantity.Proportion) (Slung, error) {
	if err := l.check(load, share); err != nil {
		return Slung{}, err
	}
	span, all := float64(l.Right.X), float64(load)+float64(l.Weight)*float64(l.Length)
	short := func(logH float64) float64 {
		x, _ := l.end(math.Exp(logH), l.vertical(math.Exp(logH), load, share), load, share)
		return x - span
	}
	// The pull is searched in powers of e: near taut it is many times the load.
	low, high := math.Log(all)-14, math.Log(all)+25
	if short(low) > 0 || short(high) < 0 {
		return Slung{}, fmt.Errorf("length: %v m between supports %.4g m apart; expected a line that reaches and does not hang plumb", l.Length, l.apart())
	}
	h := math.Exp(numeric.Root(short, low, high))
	return l.settled(h, l.vertical(h, load, share), load, share), nil
}

func (l SlungLine) check(load quantity.Force, share quantity.Proportion) error {
	switch {
	case !(l.Right.X > 0 && l.Length > 0 && l.Weight > 0 && l.Axial > 0):
		return fmt.Errorf("line: span %v m, length %v m, weight %v N/m, axial %v N; expected all above 0", l.Right.X, l.Length, l.Weight, l.Axial)
	case math.IsInf(float64(l.Axial), 1) && !(float64(l.Length) > l.apart()):
		return fmt.Errorf("length: %v m between supports %.4g m apart; expected a longer line, as it gives nothing", l.Length, l.apart())
	case !(load >= 0 && !math.IsInf(float64(load), 1)):
		return fmt.Errorf("load: %v N; expected 0 or more", load)
	case !(share > 0 && share < 1):
		return fmt.Errorf("share: %v; expected a place between the supports, above 0 and below 1", share)
	}
	return nil
}

func (l SlungLine) apart() float64 { return math.Hypot(float64(l.Right.X), float64(l.Right.Y)) }

// vertical is the vertical pull at the left support with which the line ends at
// the height of the right one: it rises with that pull.
func (l SlungLine) vertical(h float64, load quantity.Force, share quantity.Proportion) float64 {
	missed := func(v float64) float64 {
		_, down := l.end(h, v, load, share)
		return down + float64(l.Right.Y)
	}
	reach := float64(load) + float64(l.Weight)*float64(l.Length) + h
	for missed(-reach) > 0 || missed(reach) < 0 {
		reach *= 2
	}
	return numeric.Root(missed, -reach, reach)
}

// end walks the line from its left support and returns where it ends, to the
// right and down.
func (l SlungLine) end(h, v float64, load quantity.Force, share quantity.Proportion) (x, down float64) {
	length, w, axial := float64(l.Length), float64(l.Weight), float64(l.Axial)
	first := float64(share) * length
	x1, d1 := elasticPart(h, v, w, first, axial)
	x2, d2 := elasticPart(h, v-w*first-float64(load), w, length-first, axial)
	return x1 + x2, d1 + d2
}

// elasticPart returns how far a part of a line of unstretched length s goes to
// the right and down, where it starts with the pulls h and v.
func elasticPart(h, v, w, s, axial float64) (x, down float64) {
	from, to := v/h, (v-w*s)/h
	if slope := (from + to) / 2; from-to < 1e-5 { // straight but for the square of that
		x, down = s/math.Hypot(1, slope), s*slope/math.Hypot(1, slope)
	} else {
		x = h / w * (math.Asinh(from) - math.Asinh(to))
		down = h / w * (math.Hypot(1, from) - math.Hypot(1, to))
	}
	return x + h*s/axial, down + (v-w*s/2)*s/axial
}

func (l SlungLine) settled(h, v float64, load quantity.Force, share quantity.Proportion) Slung {
	length, w := float64(l.Length), float64(l.Weight)
	first := float64(share) * length
	x, down := elasticPart(h, v, w, first, float64(l.Axial))
	after := v - w*first - float64(load)
	right := after - w*(length-first)
	return Slung{
		Horizontal: quantity.Force(h), Left: lineEnd(h, v/h), Right: lineEnd(h, -right/h),
		Load:      Spot{quantity.Length(x), quantity.Length(-down)},
		Below:     quantity.Length(float64(l.Right.Y)*x/float64(l.Right.X) + down),
		Stretched: quantity.Length(length + (pulled(h, v, w, first)+pulled(h, after, w, length-first))/float64(l.Axial)),
	}
}

// pulled is the pull summed along a part, N m.
func pulled(h, v, w, s float64) float64 {
	from, to := v/h, (v-w*s)/h
	if from-to < 1e-5 {
		return s * h * math.Hypot(1, (from+to)/2)
	}
	sum := func(slope float64) float64 { return slope*math.Hypot(1, slope) + math.Asinh(slope) }
	return h * h / (2 * w) * (sum(from) - sum(to))
}

// SlungToSag returns the line that hangs below the straight line between its
// supports by a drop, with the load at a share of its length. The longer the
// line, the lower it hangs. Errors: inputs outside their range, and a drop that
// no length gives.
func SlungToSag(l SlungLine, load quantity.Force, share quantity.Proportion, drop quantity.Length) (SlungLine, error) {
	if !(drop > 0 && float64(drop) < l.apart()) {
		return SlungLine{}, fmt.Errorf("drop: %v m; expected above 0 and less than the %.4g m between the supports", drop, l.apart())
	}
	at := func(length float64) (Slung, error) {
		l.Length = quantity.Length(length)
		return l.Under(load, share)
	}
	return l.tuned(func(s Slung) float64 { return float64(s.Below - drop) }, at, fmt.Sprintf("drop: %v m", drop))
}

// SlungToPull returns the line that pulls on its left support with a force
// while it hangs empty. The shorter the line, the greater the pull.
func SlungToPull(l SlungLine, pull quantity.Force) (SlungLine, error) {
	if !(pull > 0) {
		return SlungLine{}, fmt.Errorf("pull: %v N; expected above 0", pull)
	}
	at := func(length float64) (Slung, error) {
		l.Length = quantity.Length(length)
		return l.Under(0, 0.5)
	}
	return l.tuned(func(s Slung) float64 { return float64(pull - s.Left.Pull) }, at, fmt.Sprintf("pull: %v N", pull))
}

// tuned finds the length at which a measure that rises with it crosses 0.
func (l SlungLine) tuned(measure func(Slung) float64, at func(float64) (Slung, error), want string) (SlungLine, error) {
	shortest, longest := l.apart()*0.2, l.apart()*3
	if math.IsInf(float64(l.Axial), 1) {
		shortest = l.apart() * (1 + 1e-12)
	}
	l.Length = quantity.Length(longest)
	for _, end := range []float64{shortest, longest} {
		if _, err := at(end); err != nil {
			return SlungLine{}, fmt.Errorf("%s: %w", want, err)
		}
	}
	of := func(length float64) float64 {
		s, err := at(length)
		if err != nil { // both ends could be solved, so that this can
			return math.NaN()
		}
		return measure(s)
	}
	if of(shortest) > 0 || of(longest) < 0 {
		return SlungLine{}, fmt.Errorf("%s: no length from %.4g to %.4g m gives it", want, shortest, longest)
	}
	l.Length = quantity.Length(numeric.Root(of, shortest, longest))
	return l, nil
}
