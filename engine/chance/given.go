package chance

import (
	"errors"
	"fmt"
	"math"
)

// Margin is how much is in hand: less than 0 where it fails. It is called from
// several goroutines at once and must not keep or change x.
type Margin func(x []float64) float64

// Given asks how likely a thing fails that has been seen to hold: P(a way fails, Seen is
// not less than 0) / P(Seen is not less than 0), with the same inputs.
//
// It covers what the margins model, not defects nobody saw.
type Given struct {
	Inputs Inputs
	// Least is the least margin of all ways to fail, Seen the least of what it has
	// been seen to bear; nil if nothing. Sampling takes these.
	Least, Seen Margin
	// Ways are the ways to fail one by one, for their design points.
	Ways []Way
}

// Way is one way to fail, smooth near its likeliest failure, and what was seen
// to hold that bears most upon it: a smooth margin too, nil if nothing.
type Way struct{ Fails, Seen Margin }

// unseen is the problem how likely Seen does not hold.
func (g Given) unseen() Problem { return Problem{Inputs: g.Inputs, Margin: g.Seen} }

// joint is the problem of failing after having held.
func (g Given) joint() Problem {
	return Problem{Inputs: g.Inputs, Margin: func(x []float64) float64 {
		least := g.Least(x)
		if least < 0 && g.Seen != nil && g.Seen(x) < 0 {
			return 1
		}
		return least
	}}
}

// MonteCarlo returns the share of failures among the samples that hold, with
// Wilson's interval: given that they hold they are independent.
// Errors: as Problem.MonteCarlo; nothing of what was seen holds by these laws.
func (g Given) MonteCarlo(s Sampling) (Estimate, error) {
	failing, err := g.joint().sample(s, nil)
	if err != nil {
		return Estimate{}, fmt.Errorf("plain sampling: %w", err)
	}
	if g.Seen == nil {
		return failing.plain(), nil
	}
	again := Sampling{Samples: failing.samples, Seed: s.Seed, Progress: s.Progress}
	unseen, err := g.unseen().sample(again, nil)
	if err != nil {
		return Estimate{}, fmt.Errorf("plain sampling: %w", err)
	}
	failing.samples -= unseen.failures
	if failing.samples == 0 {
		return Estimate{}, ErrCannotHold
	}
	return failing.plain(), nil
}

// ErrCannotHold says that the laws contradict what was seen, or planned.
var ErrCannotHold = errors.New("by these laws it could not have borne what it was seen to bear")

// ImportanceSampling returns the chance by samples about the design points, and
// what holds by plain samples of a stream of their own. The two errors add up.
// Errors: as Problem.ImportanceSampling; nothing of what was seen holds by these laws.
func (g Given) ImportanceSampling(s Sampling, centres ...[]float64) (Estimate, error) {
	e, err := g.joint().ImportanceSampling(s, centres...)
	if err != nil || g.Seen == nil {
		return e, err
	}
	plain := Sampling{Samples: min(s.Samples, mostPlain), Seed: s.Seed + 1, Progress: s.Progress}
	unseen, err := g.unseen().MonteCarlo(plain)
	if err != nil {
		return Estimate{}, err
	}
	holds := 1 - unseen.Probability
	if holds == 0 {
		return Estimate{}, ErrCannotHold
	}
	doubt := math.Sqrt(unseen.Probability / holds / float64(unseen.Samples))
	return e.divided(holds, doubt), nil
}

// mostPlain is the most samples for what holds, which is likely as a rule.
const mostPlain = 1 << 16

// divided returns an estimate over another of its own coefficient of variation.
func (e Estimate) divided(by, cov float64) Estimate {
	e.Figure = FigureOf(math.Min(1, e.Probability/by))
	if e.Failures == 0 {
		return e // nothing is known: 0 to 1
	}
	e.CoV = math.Hypot(e.CoV, cov)
	half := confidence * e.Probability * e.CoV
	e.Low, e.High = math.Max(0, e.Probability-half), math.Min(1, e.Probability+half)
	return e
}
