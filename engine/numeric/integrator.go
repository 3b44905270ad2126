package numeric

import (
	"errors"
	"fmt"
	"math"
)

// System is a set of differential equations of first order, dy/dt = f(t, y).
type System interface {
	// Rates writes f(t, y) into rates. It keeps neither slice.
	Rates(t float64, y, rates []float64)
}

// Tolerance is the error allowed in one step: Absolute + Relative |y| in each
// unknown, as a root mean square over the unknowns.
type Tolerance struct{ Relative, Absolute float64 }

// Errors of the integrator.
var (
	// ErrStep: the step fell below the rounding of the time, as happens when
	// the rates jump or run to infinity.
	ErrStep = errors.New("step fell below rounding")
	// ErrStart: the state or its rates are not finite where a run begins.
	ErrStart = errors.New("state or rates are not finite")
)

// Integrator follows a System through time with the Dormand-Prince pair 8(5,3)
// and steps that adapt to the tolerance. Everything it needs is allocated when
// it is made; running allocates nothing.
// Source: Hairer, Norsett & Wanner, Solving Ordinary Differential Equations I
// (1993), II.4 (step control), II.5 and II.6 (pair and extension), II.10.
type Integrator struct {
	system    System
	tolerance Tolerance

	t, step float64   // now, and the step to try next
	y       []float64 // state now
	k       [allStages][]float64
	next    []float64 // state at the end of the step on trial
	probe   []float64 // state of a stage

	from  float64      // where the last step began
	width float64      // how long it was
	dense [8][]float64 // its continuous extension

	watch watch

	// Evaluations counts how often the rates were asked for.
	Evaluations int
}

// NewIntegrator starts at time t in state y, which it copies. It fails with
// ErrStart where the state or its rates are not finite.
func NewIntegrator(system System, t float64, y []float64, tolerance Tolerance) (*Integrator, error) {
	n := len(y)
	in := &Integrator{system: system, tolerance: tolerance}
	room := make([]float64, n*(3+len(in.k)+len(in.dense)))
	take := func() []float64 {
		part := room[:n:n]
		room = room[n:]
		return part
	}
	in.y, in.next, in.probe = take(), take(), take()
	for i := range in.k {
		in.k[i] = take()
	}
	for i := range in.dense {
		in.dense[i] = take()
	}
	return in, in.StartAt(t, y)
}

// Time returns the time reached.
func (in *Integrator) Time() float64 { return in.t }

// State returns the state reached. It changes with the next run.
func (in *Integrator) State() []float64 { return in.y }

// StartAt begins anew at time t in state y, with nothing met before.
func (in *Integrator) StartAt(t float64, y []float64) error {
	in.t, in.watch.fired = t, NoEvent
	return in.Restart(y)
}

// Restart puts the integrator into state y at the time it has reached, as
// after an impact or a change of the equations; y may be State itself.
func (in *Integrator) Restart(y []float64) error {
	copy(in.y, y)
	in.rates(in.t, in.y, in.k[0])
	for i := range in.y {
		if bad(in.y[i]) || bad(in.k[0][i]) {
			return fmt.Errorf("%w at time %g: unknown %d is %g, its rate %g", ErrStart, in.t, i, in.y[i], in.k[0][i])
		}
	}
	in.step = 0
	in.watch.reset(in.t, in.y)
	return nil
}

func bad(x float64) bool { return math.IsNaN(x) || math.IsInf(x, 0) }

func (in *Integrator) rates(t float64, y, rates []float64) {
	in.system.Rates(t, y, rates)
	in.Evaluations++
}

// Run follows the system up to the time given, or to the first event that
// stops it. It returns the index of that event, or NoEvent at the end of time.
func (in *Integrator) Run(until float64) (stoppedBy int, err error) {
	for in.t < until {
		if err := in.advance(until); err != nil {
			return NoEvent, err
		}
		if event := in.look(); event != NoEvent {
			return event, nil
		}
	}
	return NoEvent, nil
}

// Bounds of the change of step between one trial and the next, and the share
// of the step that would just do (Hairer et al., II.4 and their program).
const (
	shrinkMost = 1.0 / 3
	growMost   = 6.0
	caution    = 0.9
	power      = -1.0 / 8
)

// advance takes one step that keeps to the tolerance and ends at until or
// before.
func (in *Integrator) advance(until float64) error {
	if in.step == 0 {
		in.step = in.firstStep(until - in.t)
	}
	grow := growMost
	for {
		h := in.step
		last := in.t+h*(1+1e-12) >= until
		if last {
			h = until - in.t
		} else if h <= 4*epsilon*math.Abs(in.t) {
			return fmt.Errorf("%w at time %g", ErrStep, in.t)
		}
		miss := in.try(h)
		proposal := h * factor(miss, grow)
		if miss <= 1 {
			in.accept(h, last, until)
			if last { // cut short by the end, which says nothing about the next step
				proposal = math.Max(proposal, in.step)
			}
			in.step = proposal
			return nil
		}
		in.step = proposal
		grow = 1
	}
}

// factor is the change of step after an error of miss tolerances. An error
// that is no number counts as the greatest.
func factor(miss, grow float64) float64 {
	f := caution * math.Pow(miss, power)
	if math.IsNaN(f) {
		return shrinkMost
	}
	return math.Min(grow, math.Max(shrinkMost, f))
}

// epsilon is the spacing of numbers at 1.
const epsilon = 0x1p-52

// try works out the step of length h and returns its error in units of the
// tolerance.
func (in *Integrator) try(h float64) float64 {
	for stage := 1; stage < stages; stage++ {
		in.sum(in.probe, h, inner[stage])
		in.rates(in.t+nodes[stage]*h, in.probe, in.k[stage])
	}
	in.sum(in.next, h, inner[endStage])
	in.rates(in.t+h, in.next, in.k[endStage])
	return in.miss(h)
}

// sum writes y + h times a sum over stages into state.
func (in *Integrator) sum(state []float64, h float64, weights []weight) {
	in.combine(state, h, weights)
	for i, y := range in.y {
		state[i] += y
	}
}

// combine writes h times a sum over stages into out.
func (in *Integrator) combine(out []float64, h float64, weights []weight) {
	for i := range out {
		out[i] = 0
	}
	for _, w := range weights {
		share := h * w.share
		for i, rate := range in.k[w.stage][:len(out)] {
			out[i] += share * rate
		}
	}
}

// miss joins the estimates of order 5 and 3 (Hairer et al., equation II.10.17).
func (in *Integrator) miss(h float64) float64 {
	low, high := in.probe, in.dense[7] // free until the step is accepted
	in.combine(high, h, fifth)
	in.combine(low, h, third)
	sum5, sum3 := 0.0, 0.0
	for i, y := range in.y {
		scale := in.tolerance.Absolute + in.tolerance.Relative*math.Max(math.Abs(y), math.Abs(in.next[i]))
		e5 := high[i] / scale
		e3 := (in.next[i] - y - low[i]) / scale
		sum5 += e5 * e5
		sum3 += e3 * e3
	}
	if sum5 == 0 && sum3 == 0 {
		return 0
	}
	return sum5 / math.Sqrt((sum5+0.01*sum3)*float64(len(in.y)))
}

// accept moves to the end of the step.
func (in *Integrator) accept(h float64, last bool, until float64) {
	in.from, in.width = in.t, h
	if len(in.watch.events) > 0 {
		in.extend(h)
	}
	in.t += h
	if last {
		in.t = until
	}
	copy(in.y, in.next)
	copy(in.k[0], in.k[endStage])
}
