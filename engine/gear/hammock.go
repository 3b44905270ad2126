package gear

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// Hammock is a body on two straps between two anchors: three straight members
// with a vertical load at each end of the body. The left anchor is the origin.
type Hammock struct {
	RightAnchor         Spot
	LeftStrap           quantity.Length
	Body                quantity.Length // straight between its ends
	RightStrap          quantity.Length
	LoadLeft, LoadRight quantity.Force
}

// HammockPull is a hammock in balance.
type HammockPull struct {
	Horizontal              quantity.Force // the same all along
	Left, Right             LineEnd
	BodyPull                quantity.Force
	BodyRise                quantity.Angle // of the body, towards the right
	LeftOfBody, RightOfBody Spot
}

// Solve returns the pulls and the shape of a hammock of weightless,
// inextensible members. The slopes of neighbours differ by a load over the
// horizontal pull, which leaves two unknowns and two sums of lengths to close.
// Errors: members too short for the span, or so long that the body is not
// held taut. Statics of a funicular polygon.
func (q Hammock) Solve() (HammockPull, error) {
	span, rise := float64(q.RightAnchor.X), float64(q.RightAnchor.Y)
	total := float64(q.LeftStrap + q.Body + q.RightStrap)
	loads := float64(q.LoadLeft + q.LoadRight)
	switch {
	case !(q.LeftStrap > 0 && q.Body > 0 && q.RightStrap > 0 && q.LoadLeft >= 0 && q.LoadRight >= 0 && loads > 0 && span > 0):
		return HammockPull{}, fmt.Errorf("hammock: %+v; expected lengths and span above 0, loads 0 or more and not both 0", q)
	case !(total > math.Hypot(span, rise)):
		return HammockPull{}, fmt.Errorf("hammock: members of %v m for anchors %.4g m apart; expected longer ones", total, math.Hypot(span, rise))
	}
	// The pull is searched in powers of e: near taut it is many times the load.
	short := func(logH float64) float64 { return q.reach(math.Exp(logH)) - span }
	low, high := math.Log(loads)-12, math.Log(loads)+18
	if short(low) > 0 || short(high) < 0 {
		return HammockPull{}, fmt.Errorf("hammock: members of %v m on a span of %v m; expected a body held taut, with some sag", total, span)
	}
	return q.at(math.Exp(numeric.Root(short, low, high))), nil
}

// slopes returns the slopes of the members for a horizontal pull, with the
// body inclined so that the members end at the height of the right anchor.
func (q Hammock) slopes(h float64) [3]float64 {
	left, right := float64(q.LoadLeft)/h, float64(q.LoadRight)/h
	at := func(body float64) [3]float64 { return [3]float64{body - left, body, body + right} }
	lengths := q.lengths()
	missed := func(turn float64) float64 {
		up := -float64(q.RightAnchor.Y)
		for i, slope := range at(math.Tan(turn)) {
			up += lengths[i] * slope / math.Hypot(1, slope)
		}
		return up
	}
	const plumb = math.Pi/2 - 1e-12
	return at(math.Tan(numeric.Root(missed, -plumb, plumb)))
}

func (q Hammock) lengths() [3]float64 {
	return [3]float64{float64(q.LeftStrap), float64(q.Body), float64(q.RightStrap)}
}

// reach returns the horizontal extent of the members for a horizontal pull.
func (q Hammock) reach(h float64) float64 {
	sum, lengths := 0.0, q.lengths()
	for i, slope := range q.slopes(h) {
		sum += lengths[i] / math.Hypot(1, slope)
	}
	return sum
}

func (q Hammock) at(h float64) HammockPull {
	s := q.slopes(h)
	left := quantity.Length(math.Hypot(1, s[0]))
	right := quantity.Length(math.Hypot(1, s[2]))
	return HammockPull{
		Horizontal:  quantity.Force(h),
		Left:        lineEnd(h, -s[0]),
		Right:       lineEnd(h, s[2]),
		BodyPull:    lineEnd(h, s[1]).Pull,
		BodyRise:    quantity.Angle(math.Atan(s[1])),
		LeftOfBody:  Spot{q.LeftStrap / left, q.LeftStrap * quantity.Length(s[0]) / left},
		RightOfBody: Spot{q.RightAnchor.X - q.RightStrap/right, q.RightAnchor.Y - q.RightStrap*quantity.Length(s[2])/right},
	}
}
