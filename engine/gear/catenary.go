package gear

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// sagging is a line of weight w per length that hangs between two points,
// reach apart and the second one higher by rise, with the horizontal pull h:
// a catenary. half is w reach/(2 h), middle the hyperbolic angle of the slope
// half way.
type sagging struct{ reach, rise, half, middle, a float64 }

func sag(reach, rise, h, w float64) sagging {
	a := h / w
	half := reach / (2 * a)
	return sagging{reach, rise, half, math.Asinh(rise / (2 * a * math.Sinh(half))), a}
}

func (s sagging) slopeLeft() float64  { return math.Sinh(s.middle - s.half) }
func (s sagging) slopeRight() float64 { return math.Sinh(s.middle + s.half) }
func (s sagging) length() float64     { return math.Hypot(s.rise, 2*s.a*math.Sinh(s.half)) }

// belowChord returns the greatest vertical distance from the chord down to the
// line and where it is, from the first point: where the slopes are the same.
func (s sagging) belowChord() (drop, x float64) {
	left, here := s.middle-s.half, math.Asinh(s.rise/s.reach)
	x = s.a * (here - left)
	// cosh here - cosh left, as a product that keeps its digits.
	fall := 2 * s.a * math.Sinh((here+left)/2) * math.Sinh((here-left)/2)
	return s.rise*x/s.reach - fall, x
}

// LineEnd is the line at one of its supports.
type LineEnd struct {
	Pull, Vertical quantity.Force
	Below          quantity.Angle // of the line below the horizontal
}

// Traverse is a line between two supports with a load on it.
type Traverse struct {
	Horizontal                      quantity.Force // the same all along
	Left, Right                     LineEnd
	PullLeftOfLoad, PullRightOfLoad quantity.Force
	LengthLeft, LengthRight         quantity.Length
	DropBelowChord                  quantity.Length // of the load
	WeightlessHorizontal            quantity.Force  // for a line without weight
	Empty                           EmptyLine
}

// EmptyLine is the same length of line without the load.
type EmptyLine struct {
	Horizontal, PullLeft, PullRight quantity.Force
	DropBelowChord                  quantity.Length // the greatest
	At                              quantity.Length // from the left support
}

// TraverseLine is the question of a line that must hold a load at a place.
type TraverseLine struct {
	Right  Spot           // right support; the left one is the origin
	Load   Spot           // where the load hangs, between the supports and below their chord
	Weight quantity.Force // of the line, for each metre of it, above 0
	Point  quantity.Force // the load, 0 or more
}

// Solve returns the pulls of an inextensible, perfectly flexible line: two
// catenaries of one horizontal pull meet at the load, where the slopes differ
// by the load over that pull. Errors name the input outside its range.
// Statics of the catenary, any textbook.
func (q TraverseLine) Solve() (Traverse, error) {
	span, rise := float64(q.Right.X), float64(q.Right.Y)
	x, y := float64(q.Load.X), float64(q.Load.Y)
	drop := rise*x/span - y
	switch {
	case !(span > 0 && x > 0 && x < span):
		return Traverse{}, fmt.Errorf("load.x: %v m on a span of %v m; expected the load between the supports", x, span)
	case !(drop > 0):
		return Traverse{}, fmt.Errorf("load.y: %v m; expected the load below the line between the supports", y)
	case !(q.Weight > 0 && q.Point >= 0):
		return Traverse{}, fmt.Errorf("weight, point: %v N/m, %v N; expected a weight above 0 and a load of 0 or more", q.Weight, q.Point)
	}
	h, weightless, err := q.horizontal()
	if err != nil {
		return Traverse{}, err
	}
	left, right := q.legs(h)
	t := Traverse{
		Horizontal:           quantity.Force(h),
		Left:                 lineEnd(h, -left.slopeLeft()),
		Right:                lineEnd(h, right.slopeRight()),
		PullLeftOfLoad:       lineEnd(h, left.slopeRight()).Pull,
		PullRightOfLoad:      lineEnd(h, right.slopeLeft()).Pull,
		LengthLeft:           quantity.Length(left.length()),
		LengthRight:          quantity.Length(right.length()),
		DropBelowChord:       quantity.Length(drop),
		WeightlessHorizontal: quantity.Force(weightless),
	}
	t.Empty = emptyLine(span, rise, left.length()+right.length(), float64(q.Weight))
	return t, nil
}

func (q TraverseLine) legs(h float64) (left, right sagging) {
	x, y, w := float64(q.Load.X), float64(q.Load.Y), float64(q.Weight)
	return sag(x, y, h, w), sag(float64(q.Right.X)-x, float64(q.Right.Y)-y, h, w)
}

// horizontal returns the horizontal pull with and without the weight of the
// line. The weight only adds to it.
func (q TraverseLine) horizontal() (h, weightless float64, err error) {
	tooLow := func(h float64) float64 {
		left, right := q.legs(h)
		return h*(right.slopeLeft()-left.slopeRight()) - float64(q.Point)
	}
	weightless = float64(q.Point) / float64((q.Right.Y-q.Load.Y)/(q.Right.X-q.Load.X)-q.Load.Y/q.Load.X)
	from := math.Max(weightless, flattest*float64(q.Weight)*float64(q.Right.X))
	if tooLow(from) > 0 {
		return 0, 0, fmt.Errorf("load.y: %v m; expected a line that does not hang all but plumb", q.Load.Y)
	}
	return rising(tooLow, from), weightless, nil
}

// flattest is the least horizontal pull that is looked for, in weights of a
// line as long as the span; the two ends then hang all but plumb.
const flattest = 0.005

// rising returns where f, which rises, crosses 0 at or above from.
func rising(f func(float64) float64, from float64) float64 {
	to := 2 * from
	for f(to) < 0 {
		from, to = to, 2*to
	}
	return numeric.Root(f, from, to)
}

func lineEnd(h, slope float64) LineEnd {
	return LineEnd{
		Pull:     quantity.Force(h * math.Hypot(1, slope)),
		Vertical: quantity.Force(h * slope),
		Below:    quantity.Angle(math.Atan(slope)),
	}
}

// emptyLine hangs a length between the supports without a load:
// sinh(z)/z = sqrt(S^2 - rise^2)/span with z = w span/(2 H).
func emptyLine(span, rise, length, w float64) EmptyLine {
	longer := math.Sqrt((length-rise)*(length+rise)) / span
	z := rising(func(z float64) float64 { return math.Sinh(z)/z - longer }, 1e-6)
	h := w * span / (2 * z)
	s := sag(span, rise, h, w)
	drop, at := s.belowChord()
	return EmptyLine{
		Horizontal:     quantity.Force(h),
		PullLeft:       lineEnd(h, s.slopeLeft()).Pull,
		PullRight:      lineEnd(h, s.slopeRight()).Pull,
		DropBelowChord: quantity.Length(drop),
		At:             quantity.Length(at),
	}
}
