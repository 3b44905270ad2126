package swing

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// DriftingSwing is a rider on a rigid line who was launched sideways, so that
// the plane of the swing turns. No drag.
type DriftingSwing struct {
	Length  quantity.Length
	Mass    quantity.Mass
	Gravity Acceleration
}

// SpatialState is where the rider is (m) and how fast (m/s), from the hang
// point, Z up.
type SpatialState struct{ Position, Velocity quantity.Vec3 }

// Bounds are the limits within which a drifting swing stays for ever.
type Bounds struct {
	LeastRadius, GreatestRadius quantity.Length // horizontal, from the plumb line
	LeastPull, PeakPull         quantity.Force
}

// StemAt is an upright stem beside the swing, round, its axis at X and Y from
// the plumb line.
type StemAt struct{ X, Y, Radius quantity.Length }

// DriftSpan is what happened from the start to the end of one window.
type DriftSpan struct {
	LeastX, GreatestX Extreme[quantity.Length]
	LeastY, GreatestY Extreme[quantity.Length]
	// Closest is the least horizontal distance between rider and stem surface,
	// below 0 where the rider would have been inside.
	Closest Extreme[quantity.Length]
	// Touched is the first moment at which it fell to 0, if it did; the rider
	// is followed on as if the stem were not there.
	Touched SpatialContact
}

// SpatialContact is the first moment at which something was met, if it was.
type SpatialContact struct {
	Met   bool
	At    quantity.Time
	State SpatialState
}

// Move follows the rider from the start and returns what happened up to the
// end of each window; windows count from the start and rise. Extremes are the
// zeros of the rate of each quantity, so nothing is sampled. It fails on
// inputs out of range, as Bounds does.
// Source: Newton's second law with the pull that keeps the distance from the
// hang point.
func (s DriftingSwing) Move(start SpatialState, stem StemAt, windows ...quantity.Time) ([]DriftSpan, error) {
	if err := s.check(start); err != nil {
		return nil, fmt.Errorf("drifting swing: %w", err)
	}
	if err := requireRising(windows); err != nil {
		return nil, fmt.Errorf("drifting swing: %w", err)
	}
	run := newDriftRun(s, stem)
	p, v := start.Position, start.Velocity
	m, err := begin(&run.spherical, []float64{p.X, p.Y, p.Z, v.X, v.Y, v.Z}, run.observer, run.see,
		numeric.Event{Value: run.gap, Direction: numeric.Falling})
	if err != nil {
		return nil, fmt.Errorf("drifting swing: %w", err)
	}
	spans := make([]DriftSpan, len(windows))
	for i, window := range windows {
		if err := m.until(window, func() {}); err != nil {
			return nil, fmt.Errorf("drifting swing: %w", err)
		}
		spans[i] = run.span()
	}
	return spans, nil
}

func (s DriftingSwing) check(start SpatialState) error {
	if err := requirePositive(field{"length", float64(s.Length), "m"}, field{"mass", float64(s.Mass), "kg"},
		field{"gravity", s.Gravity.orStandard(), "m/s2"}); err != nil {
		return err
	}
	p, v, l := start.Position, start.Velocity, float64(s.Length)
	if r := p.Norm(); !(math.Abs(r-l) <= 1e-6*l) {
		return fmt.Errorf("start is %g m from the hang point; expected the length of the line, %g m", r, l)
	}
	if along := v.Dot(p) / l; !(math.Abs(along) <= 1e-6*(v.Norm()+1)) {
		return fmt.Errorf("start moves at %g m/s along the line; expected a velocity square to it", along)
	}
	return nil
}

// spherical is the system: position, then velocity.
type spherical struct{ length, mass, gravity float64 }

// tension is the pull by mass and distance from the hang point. Two terms that
// are zero on a line of the right length bring small errors of it back, as a
// critically damped spring would (Baumgarte, Comput. Methods Appl. Mech. Eng. 1
// (1972) 1-16, from memory).
func (s *spherical) tension(y []float64) float64 {
	square := y[0]*y[0] + y[1]*y[1] + y[2]*y[2]
	speed := y[3]*y[3] + y[4]*y[4] + y[5]*y[5]
	along := y[0]*y[3] + y[1]*y[4] + y[2]*y[5]
	recall := 3 * math.Sqrt(s.gravity/s.length)
	return (speed - s.gravity*y[2] + 2*recall*along + recall*recall*(square-s.length*s.length)/2) / square
}

// Rates implements numeric.System.
func (s *spherical) Rates(_ float64, y, rates []float64) {
	tension := s.tension(y)
	rates[0], rates[1], rates[2] = y[3], y[4], y[5]
	rates[3], rates[4], rates[5] = -tension*y[0], -tension*y[1], -tension*y[2]-s.gravity
}
