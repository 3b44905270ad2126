package assess

import (
	"math"

	"boughline/quantity"
)

// trial is a use that checks are tried at: the one asked for, or a smaller one.
type trial struct {
	mass      quantity.Mass // all riders, without seat
	amplitude quantity.Angle
	gust      quantity.Speed // 3 s, at 10 m in the open
	line      quantity.Length
}

// figure is what a check compares, at one trial.
type figure struct {
	demand, capacity float64
	where            Where
}

// greatestMargin stands for any margin above it, so that a demand of 0 gives
// a number that can be written.
const greatestMargin = 1000

// margin returns capacity over demand, from 0 to greatestMargin.
func (f figure) margin() float64 {
	switch {
	case !(f.capacity > 0):
		return 0
	case f.demand*greatestMargin <= f.capacity:
		return greatestMargin
	}
	return f.capacity / f.demand
}

// cure says which smaller use can help a check.
type cure int

const (
	byLighter cure = iota // fewer or lighter riders
	byCalm                // less wind, then lighter riders
	bySpace               // lower, or a shorter line
)

// written holds a figure to what JSON can carry: a demand beyond all bounds
// stays beyond all bounds.
func written(x float64) float64 {
	const beyondAll = 1e15
	return math.Min(x, beyondAll)
}

// checker is one check of a hang.
type checker struct {
	code Code
	unit string
	cure cure
	// try works the check out at a use; it is monotone in mass, gust and
	// amplitude.
	try func(trial, scenario) figure
	// terms lists what went into a figure.
	terms func(trial, figure) []Term
}

// holds reports whether a margin is enough. Rounding of the search for the
// greatest use is forgiven.
func holds(margin float64) bool { return margin >= 1-1e-9 }

// result works a check out at the use asked for; decide tells what follows
// where it does not hold there.
func (c checker) result(asked trial, decide func(checker) Outcome) Check {
	f := c.try(asked, unfavourable)
	alone := MayHang
	if !holds(f.margin()) {
		alone = decide(c)
	}
	return Check{
		Code: c.code, Demand: written(f.demand), Capacity: written(f.capacity), Unit: c.unit,
		Margin: f.margin(), Best: math.Max(f.margin(), c.try(asked, favourable).margin()),
		Where: f.where, Terms: c.terms(asked, f), Alone: alone,
	}
}
