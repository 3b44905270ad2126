package swing

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// PullDirection is the part of the pull that drives a mode of sway.
type PullDirection int

// The parts of the pull.
const (
	HorizontalPull PullDirection = iota
	VerticalPull
)

// SwayFactor returns the dynamic factor of a whole tree under a swing that
// goes on and on: the greatest response of one mode of sway to the part of the
// pull that drives it, over the response to the greatest such part put on
// slowly. The rider gets to the amplitude through all smaller ones, and a
// slower or faster one may lie nearer to the mode, so that it is the greatest
// over them all; it is not let below 1. Harmonics are summed with their
// phases, in steady state: a swing builds up over many passes, and so does the
// sway. One let go at its full amplitude can overshoot for some passes: to less
// than twice the factor where the mode is faster than the swing, to less than
// three times where it is slower.
//
// The mode is given by its frequency and its damping ratio, more than 0. It
// fails on inputs out of range.
// Source: steady response of a damped oscillator to a periodic force, as in
// Clough & Penzien, Dynamics of Structures, chapters 3 and 4 (from memory).
func SwayFactor(length quantity.Length, amplitude quantity.Angle, mode quantity.Frequency, damping quantity.Proportion, direction PullDirection) (quantity.Proportion, error) {
	if err := requirePositive(field{"length", float64(length), "m"}, field{"mode frequency", float64(mode), "Hz"},
		field{"damping ratio", float64(damping), ""}); err != nil {
		return 0, fmt.Errorf("sway: %w", err)
	}
	if err := requireTaut(amplitude); err != nil {
		return 0, fmt.Errorf("sway: %w", err)
	}
	own := oscillator{float64(mode), float64(damping)}
	const steps = 16
	step := float64(amplitude) / steps
	greatest := greatestOf(func(at float64) float64 {
		return own.response(length, quantity.Angle(at), direction)
	}, step, float64(amplitude), steps-1)
	return quantity.Proportion(math.Max(1, greatest/greatestPart(amplitude, direction))), nil
}

// greatestPart is the greatest part of the pull of a weight of 1.
func greatestPart(amplitude quantity.Angle, direction PullDirection) float64 {
	if direction == VerticalPull {
		return 3 - 2*amplitude.Cos()
	}
	const mass = 1
	part, _ := GreatestHorizontal(mass, amplitude)
	return float64(part / quantity.Mass(mass).Weight())
}

// oscillator is a mode of sway: Hz and damping ratio.
type oscillator struct{ frequency, damping float64 }

// response is the greatest steady response to a weight of 1 swinging at the
// amplitude, in units of the response to a force of 1 put on slowly.
func (o oscillator) response(length quantity.Length, amplitude quantity.Angle, direction PullDirection) float64 {
	swing := 1 / float64(SmallPeriod(length)) / float64(PeriodRatio(amplitude))
	horizontal, vertical := harmonicsOverWeight(amplitude)
	var with, across harmonics // of cos and sin of the phase
	for n := range vertical {
		inPhase, behind := o.answer(float64(n) * swing)
		if direction == VerticalPull {
			with[n], across[n] = vertical[n]*inPhase, vertical[n]*behind
		} else {
			with[n], across[n] = -horizontal[n]*behind, horizontal[n]*inPhase
		}
	}
	// After half a period the horizontal pull is the same the other way and
	// the vertical one the same.
	const moments = 64
	return greatestOf(func(phase float64) float64 { return math.Abs(sum(&with, &across, phase)) }, 0, math.Pi, moments)
}

// answer returns the response to cos(2 pi f t) as the parts that go with it
// and with sin(2 pi f t).
func (o oscillator) answer(frequency float64) (inPhase, behind float64) {
	r := frequency / o.frequency
	stiff, damped := 1-r*r, 2*o.damping*r
	size := stiff*stiff + damped*damped
	return stiff / size, damped / size
}

// sum adds with[n] cos(n p) + across[n] sin(n p), by Clenshaw's recurrence.
func sum(with, across *harmonics, p float64) float64 {
	sin, cos := math.Sincos(p)
	c1, c2, s1, s2 := 0.0, 0.0, 0.0, 0.0
	for n := len(with) - 1; n > 0; n-- {
		c1, c2 = with[n]+2*cos*c1-c2, c1
		s1, s2 = across[n]+2*cos*s1-s2, s1
	}
	return with[0] + cos*c1 - c2 + sin*s1
}

// greatestOf looks at f in even steps from a to b and then closes in on the
// greatest between its neighbours by golden section.
func greatestOf(f func(float64) float64, a, b float64, steps int) float64 {
	step, at, most := (b-a)/float64(steps), a, math.Inf(-1)
	for i := range steps + 1 {
		x := a + float64(i)*step
		if y := f(x); y > most {
			at, most = x, y
		}
	}
	low, high := math.Max(a, at-step), math.Min(b, at+step)
	if _, y := numeric.Greatest(f, low, high, 16); y > most {
		return y
	}
	return most
}
