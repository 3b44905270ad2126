package chance

import (
	"fmt"
	"math"
)

// plane is a margin continued in a straight line from a point u of standard
// normal space, where it has the value.
type plane struct {
	*standard
	value, steepness float64
	slope            []float64
}

func newPlane(p Problem) *plane {
	return &plane{standard: p.standard(), slope: make([]float64, p.Inputs.Len())}
}

// lay works the plane out at u.
func (p *plane) lay(u []float64) error {
	p.value = p.margin(u)
	p.gradient(p.slope, u)
	p.steepness = norm(p.slope)
	if sum := p.value + p.steepness; math.IsNaN(sum) || math.IsInf(sum, 0) {
		return fmt.Errorf("margin %v with a slope of %v at %v; expected finite values", p.value, p.steepness, u)
	}
	return nil
}

// level is what slope times v comes to where the plane is 0.
func (p *plane) level(u []float64) float64 { return dot(p.slope, u) - p.value }

// jointWalk goes down to the point nearest to the origin at which a margin is 0
// and another, of what was seen, is not less than 0.
type jointWalk struct {
	fails, seen *plane
	u, step     []float64
	// Penalties of the merit, above the multipliers of the two planes, which
	// makes the step a way down.
	ofFails, ofSeen float64
	steps           int
}

func (in Inputs) jointWalk(way Way) *jointWalk {
	n := in.Len()
	return &jointWalk{
		fails: newPlane(Problem{Inputs: in, Margin: way.Fails}), seen: newPlane(Problem{Inputs: in, Margin: way.Seen}),
		u: make([]float64, n), step: make([]float64, n),
	}
}

func (w *jointWalk) run() error {
	for w.steps = range mostSteps {
		if err := w.lay(); err != nil {
			return err
		}
		if w.fails.steepness == 0 {
			return fmt.Errorf("the margin %v does not change with any input at %v; expected a slope", w.fails.value, w.u)
		}
		if err := w.aim(); err != nil {
			return err
		}
		if w.settled() {
			return nil
		}
		w.advance()
	}
	return fmt.Errorf("no design point within %d steps, last at %v; expected one", mostSteps, w.u)
}

func (w *jointWalk) lay() error {
	if err := w.fails.lay(w.u); err != nil {
		return err
	}
	return w.seen.lay(w.u)
}

// aim sets the step to the nearest point at which both planes are as they must
// be: on the plane of failure, and along the edge of the two where that point alone would
// contradict what was seen.
func (w *jointWalk) aim() error {
	a, b := w.fails.slope, w.seen.slope
	levelA, levelB := w.fails.level(w.u), w.seen.level(w.u)
	aa, ab, bb := dot(a, a), dot(a, b), dot(b, b)
	ofA, ofB := levelA/aa, 0.0
	if ofA*ab < levelB {
		edge := aa*bb - ab*ab
		if edge <= 1e-12*aa*bb {
			return fmt.Errorf("at %v what was seen leaves no such failure; expected one", w.u)
		}
		ofA, ofB = (levelA*bb-levelB*ab)/edge, (levelB*aa-levelA*ab)/edge
	}
	for i := range w.step {
		w.step[i] = ofA*a[i] + ofB*b[i] - w.u[i]
	}
	w.ofFails = math.Max(w.ofFails, 2*math.Abs(ofA)+1/w.fails.steepness)
	w.ofSeen = math.Max(w.ofSeen, 2*math.Abs(ofB))
	return nil
}

// settledJoint is how near a joint point must be reached, in standard
// deviations: beta is within its square.
const settledJoint = 1e-5

func (w *jointWalk) settled() bool {
	off := math.Abs(w.fails.value)/w.fails.steepness + math.Max(0, -w.seen.value)/math.Max(w.seen.steepness, math.SmallestNonzeroFloat64)
	return off <= settledJoint && norm(w.step) <= settledJoint
}

// advance takes the longest of ever halved steps that lowers the merit: half the
// squared distance plus penalties on what each margin is off by.
func (w *jointWalk) advance() {
	merit := func(u []float64, fails, seen float64) float64 {
		return dot(u, u)/2 + w.ofFails*math.Abs(fails) + w.ofSeen*math.Max(0, -seen)
	}
	now := merit(w.u, w.fails.value, w.seen.value)
	next := make([]float64, len(w.u))
	const shortest = 1.0 / 1024
	for share := 1.0; ; share /= 2 {
		for i := range next {
			next[i] = w.u[i] + share*w.step[i]
		}
		if merit(next, w.fails.margin(next), w.seen.margin(next)) < now || share <= shortest {
			w.u = next
			return
		}
	}
}

// point is the design point, its chance that of both planes together.
func (w *jointWalk) point() DesignPoint {
	alpha := make([]float64, len(w.u))
	for i, s := range w.fails.slope {
		alpha[i] = -s / w.fails.steepness
	}
	d := DesignPoint{U: w.u, X: make([]float64, len(w.u)), Importance: alpha, Steps: w.steps + 1}
	w.fails.Inputs.Values(d.X, d.U)
	d.Figure = FigureOf(w.both(alpha))
	return d
}

// both is the chance of failing and having held, by the two planes.
func (w *jointWalk) both(alpha []float64) float64 {
	beta := dot(alpha, w.u)
	if w.seen.steepness == 0 {
		return Probability(beta)
	}
	reserve := (w.seen.value - dot(w.seen.slope, w.u)) / w.seen.steepness
	rho := -dot(alpha, w.seen.slope) / w.seen.steepness
	return belowAbove(-beta, -reserve, rho)
}
