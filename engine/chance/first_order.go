package chance

import (
	"fmt"
	"math"
)

// DesignPoint is the likeliest failure of a problem and the chance that follows
// from the plane through it.
type DesignPoint struct {
	Figure
	U, X []float64 // the point, as independent standard normal variables and as inputs
	// Importance is the unit vector towards failure at the point, by input: below 0
	// the input is low at failure, as a strength is, above 0 it is high, as a load. The
	// squares add up to 1. With correlation they belong to the independent variables.
	Importance []float64
	// SecondOrder is the chance with the curvature of the margin; nil where the
	// curvature is too great for it.
	SecondOrder *Figure
	Steps       int
}

const (
	mostSteps    = 200
	settledPoint = 1e-6 // of the distance off the normal, so beta is within its square
	settledRest  = 1e-9 // of the margin, against its slope
)

// FirstOrder returns the first-order reliability of a problem: the point of the
// limit state nearest to the origin of standard normal space, found from start (nil: the
// medians). Another start can find another point where there are several. Beta is below 0
// if the medians fail.
// Errors: a margin or slope that is not finite, no slope, no point within 200 steps.
// Source: Hasofer & Lind, 1974; Rackwitz & Fiessler, 1978; line search on a merit function
// by Zhang & Der Kiureghian, 1995 (all from memory).
func (p Problem) FirstOrder(start []float64) (DesignPoint, error) {
	if err := p.check(); err != nil {
		return DesignPoint{}, fmt.Errorf("first-order reliability: %w", err)
	}
	n := p.Inputs.Len()
	if start != nil && len(start) != n {
		return DesignPoint{}, fmt.Errorf("first-order reliability: start of %d values; expected %d", len(start), n)
	}
	w := walk{standard: p.standard(), u: make([]float64, n), slope: make([]float64, n), step: make([]float64, n), next: make([]float64, n)}
	copy(w.u, start)
	if err := w.run(); err != nil {
		return DesignPoint{}, fmt.Errorf("first-order reliability: %w", err)
	}
	return w.point(), nil
}

// MeanValue returns the reliability index by the margin and its slope at the
// medians: a first look that costs one slope, exact only for a margin that is straight in
// standard normal space. It is +Inf or -Inf where the margin does not change.
// Source: Cornell, 1969, Journal of the American Concrete Institute 66:974 (from memory).
func (p Problem) MeanValue() float64 {
	s, n := p.standard(), p.Inputs.Len()
	u, slope := make([]float64, n), make([]float64, n)
	s.gradient(slope, u)
	return s.margin(u) / norm(slope)
}

// walk goes down to the design point.
type walk struct {
	*standard
	u, slope, step, next []float64
	value, steepness     float64 // margin and length of the slope at u
	penalty              float64
	steps                int
}

func (w *walk) run() error {
	w.value = w.margin(w.u)
	for w.steps = range mostSteps {
		w.gradient(w.slope, w.u)
		w.steepness = norm(w.slope)
		if math.IsNaN(w.value+w.steepness) || math.IsInf(w.value+w.steepness, 0) {
			return fmt.Errorf("margin %v with a slope of %v at %v; expected finite values", w.value, w.steepness, w.u)
		}
		if w.steepness == 0 {
			return fmt.Errorf("the margin %v does not change with any input at %v; expected a slope", w.value, w.u)
		}
		w.aim()
		if w.settled() {
			return nil
		}
		w.advance()
	}
	return fmt.Errorf("no design point within %d steps, last at %v; expected one", mostSteps, w.u)
}

// aim sets the step to the nearest point of the plane that continues the margin.
func (w *walk) aim() {
	along := (dot(w.slope, w.u) - w.value) / (w.steepness * w.steepness)
	for i := range w.step {
		w.step[i] = along*w.slope[i] - w.u[i]
	}
}

// settled tells whether u lies on the limit state and along its normal.
func (w *walk) settled() bool {
	return math.Abs(w.value) <= settledRest*w.steepness && norm(w.step) <= settledPoint
}

// advance takes the longest of ever halved steps that lowers the merit enough:
// half the squared distance plus a penalty on the margin.
func (w *walk) advance() {
	w.penalty = math.Max(w.penalty, 2*norm(w.u)/w.steepness+1/w.steepness)
	merit := func(u []float64, value float64) float64 { return dot(u, u)/2 + w.penalty*math.Abs(value) }
	now := merit(w.u, w.value)
	fall := dot(w.u, w.step) - w.penalty*math.Abs(w.value) // slope of the merit along the step
	const shortest = 1.0 / 1024
	for share := 1.0; ; share /= 2 {
		for i := range w.next {
			w.next[i] = w.u[i] + share*w.step[i]
		}
		value := w.margin(w.next)
		if merit(w.next, value) <= now+share*fall/10 || share <= shortest {
			w.u, w.next, w.value = w.next, w.u, value
			return
		}
	}
}

func (w *walk) point() DesignPoint {
	alpha := make([]float64, len(w.u))
	for i, s := range w.slope {
		alpha[i] = -s / w.steepness
	}
	beta := dot(alpha, w.u)
	d := DesignPoint{
		Figure:     Figure{Probability: Probability(beta), Beta: beta},
		U:          w.u,
		X:          make([]float64, len(w.u)),
		Importance: alpha,
		Steps:      w.steps + 1,
	}
	w.Inputs.Values(d.X, d.U)
	d.SecondOrder = w.curved(beta, alpha)
	return d
}
