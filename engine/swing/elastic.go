package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// ElasticSwing is a rider on a line that stretches and pulls but never pushes,
// swinging in one plane without air drag. The pull is k e + c e' while the
// stretch e is above 0 and the sum is, and nothing otherwise; when the line is
// slack the rider falls freely.
type ElasticSwing struct {
	Length    quantity.Length // of the unstretched line
	Stiffness quantity.Stiffness
	Damping   Damping // along the line
	Mass      quantity.Mass
	Gravity   Acceleration
	// Ground gives the depth of the ground below the hang point at the
	// distance x from the plumb line; nil means none within reach.
	Ground func(x quantity.Length) quantity.Length
}

// PlanarState is where the rider is, from the hang point: X sideways, Depth
// downward.
type PlanarState struct {
	X, Depth   quantity.Length
	VX, VDepth quantity.Speed
}

// PlanarContact is the first moment at which something was met, if it was.
type PlanarContact struct {
	Met   bool
	At    quantity.Time
	State PlanarState
}

// ElasticSpan is what happened from the start to the end of one window.
type ElasticSpan struct {
	PeakPull, LeastPull Extreme[quantity.Force]
	LowestDepth         Extreme[quantity.Length] // below the hang point
	LowestX             quantity.Length          // where the lowest point was
	GreatestRadius      Extreme[quantity.Length]
	Taut                PlanarContact // the line first came tight
	Ground              PlanarContact // the rider first met the ground, and is followed on as if there were none
}

// AtRest returns the state of a rider at rest, at an angle from the plumb line and
// a distance from the hang point.
func AtRest(angle quantity.Angle, distance quantity.Length) PlanarState {
	return PlanarState{X: distance * quantity.Length(angle.Sin()), Depth: distance * quantity.Length(angle.Cos())}
}

// Balanced returns the distance at which the stretched line carries the
// weight's part along it: L + m g cos q / k.
func (s ElasticSwing) Balanced(angle quantity.Angle) quantity.Length {
	pull := float64(s.Mass) * s.Gravity.orStandard() * angle.Cos()
	return s.Length + quantity.Length(pull/float64(s.Stiffness))
}

// Move follows the rider from the start and returns what happened up to the
// end of each window; windows count from the start and rise. Slack and tight
// phases are joined where the pull crosses zero, and extremes are the zeros of
// the rate of each quantity, so nothing is sampled.
// It fails on inputs out of range and where the rider is at the hang point.
// Source: Newton's second law; the pull of a Kelvin-Voigt line.
func (s ElasticSwing) Move(start PlanarState, windows ...quantity.Time) ([]ElasticSpan, error) {
	if err := s.check(start, windows); err != nil {
		return nil, fmt.Errorf("elastic swing: %w", err)
	}
	run := newElasticRun(s, start)
	m, err := begin(&run.elastic, run.start[:], run.observer, run.see, run.events(s.Ground)...)
	if err != nil {
		return nil, fmt.Errorf("elastic swing: %w", err)
	}
	spans := make([]ElasticSpan, len(windows))
	for i, window := range windows {
		if err := m.until(window, func() { run.change(m.Time(), m.State()) }); err != nil {
			return nil, fmt.Errorf("elastic swing: %w", err)
		}
		spans[i] = run.span()
	}
	return spans, nil
}

func (s ElasticSwing) check(start PlanarState, windows []quantity.Time) error {
	if err := requirePositive(field{"length", float64(s.Length), "m"}, field{"stiffness", float64(s.Stiffness), "N/m"},
		field{"mass", float64(s.Mass), "kg"}, field{"gravity", s.Gravity.orStandard(), "m/s2"},
		field{"distance from the hang point", math.Hypot(float64(start.X), float64(start.Depth)), "m"}); err != nil {
		return err
	}
	if err := requireNotNegative(field{"damping", float64(s.Damping), "N s/m"}); err != nil {
		return err
	}
	return requireRising(windows)
}

// elastic is the system: x and depth, then their rates.
type elastic struct {
	length, stiffness, damping, mass, gravity float64
	taut                                      bool
}

// stretch returns the distance from the hang point and its rate.
func (e *elastic) stretch(y []float64) (radius, rate float64) {
	radius = math.Sqrt(y[0]*y[0] + y[1]*y[1])
	return radius, (y[0]*y[2] + y[1]*y[3]) / radius
}

// extension is the stretch at a radius; what rounding makes of none is none.
func (e *elastic) extension(radius float64) float64 {
	stretch := radius - e.length
	if math.Abs(stretch) < 1e-15*e.length {
		return 0
	}
	return stretch
}

// grip is the pull while it is above zero; below, it tells how far the line is
// from being tight.
func (e *elastic) grip(y []float64) float64 {
	radius, rate := e.stretch(y)
	grip := e.stiffness * e.extension(radius)
	if grip > 0 {
		grip += e.damping * rate
	}
	return grip
}

func (e *elastic) pull(y []float64) float64 {
	if !e.taut {
		return 0
	}
	radius, rate := e.stretch(y)
	return math.Max(0, e.stiffness*e.extension(radius)+e.damping*rate)
}

// Rates implements numeric.System.
func (e *elastic) Rates(_ float64, y, rates []float64) {
	rates[0], rates[1] = y[2], y[3]
	rates[2], rates[3] = 0, e.gravity
	if e.taut {
		radius, rate := e.stretch(y)
		pull := (e.stiffness*e.extension(radius) + e.damping*rate) / (e.mass * radius)
		rates[2] -= pull * y[0]
		rates[3] -= pull * y[1]
	}
}

// pullRate is the rate of the pull.
func (e *elastic) pullRate(y []float64) float64 {
	if !e.taut {
		return 0
	}
	radius, rate := e.stretch(y)
	if e.damping == 0 {
		return e.stiffness * rate
	}
	var d [4]float64
	e.Rates(0, y, d[:])
	bend := (y[2]*y[2] + y[3]*y[3] + y[0]*d[2] + y[1]*d[3] - rate*rate) / radius
	return e.stiffness*rate + e.damping*bend
}
