package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Support is one way in which the limb gives at the hang point: a spring and a
// damper to the tree.
type Support struct {
	Stiffness quantity.Stiffness
	Damping   Damping
}

// SupportBy returns the support of a moving mass from its stiffness and damping
// ratio: c = 2 zeta sqrt(k M).
func SupportBy(mass quantity.Mass, stiffness quantity.Stiffness, ratio quantity.Proportion) Support {
	return Support{stiffness, Damping(2 * float64(ratio) * math.Sqrt(float64(stiffness)*float64(mass)))}
}

// SupportOf returns the support of a moving mass from its natural frequency
// and damping ratio: k = (2 pi f)^2 M.
func SupportOf(mass quantity.Mass, frequency quantity.Frequency, ratio quantity.Proportion) Support {
	omega := 2 * math.Pi * float64(frequency)
	return SupportBy(mass, quantity.Stiffness(omega*omega*float64(mass)), ratio)
}

// YieldingSwing is a rider on a rigid line swinging in one plane from a limb
// that gives way up and down, and along the swing too where Horizontal is
// given. The limb is a mass at the hang point that already carries its own
// weight. No drag.
type YieldingSwing struct {
	Length     quantity.Length
	Mass       quantity.Mass
	LimbMass   quantity.Mass // that moves with the hang point
	Vertical   Support
	Horizontal *Support // nil: the limb does not give that way
	Gravity    Acceleration
}

// YieldingState is a swing at rest: the angle of the line and how far the hang
// point is from its place without riders, X in the sense of a positive angle
// and Y upward.
type YieldingState struct {
	Angle quantity.Angle
	X, Y  quantity.Length
}

// YieldingSpan is what happened from the start to the end of one window.
// Forces on the limb are those of spring and damper together, which is what it
// bears; vertical ones count downward.
type YieldingSpan struct {
	PeakPull       Extreme[quantity.Force]
	LeastPull      Extreme[quantity.Force] // below 0 the line would have gone slack, and what follows does not hold
	PeakVertical   Extreme[quantity.Force]
	PeakHorizontal Extreme[quantity.Force] // either way, as a size; 0 where the limb does not give that way
	PeakSpring     Extreme[quantity.Force] // vertical, without the damper
	GreatestSag    Extreme[quantity.Length]
}

// Held returns the state of a rider held at the angle by the line alone, the
// limb bent at rest by the pull of the moment of release, m g cos q.
func (s YieldingSwing) Held(angle quantity.Angle) YieldingState {
	pull := float64(s.Mass) * s.Gravity.orStandard() * angle.Cos()
	state := YieldingState{Angle: angle, Y: quantity.Length(-pull * angle.Cos() / float64(s.Vertical.Stiffness))}
	if s.Horizontal != nil {
		state.X = quantity.Length(pull * angle.Sin() / float64(s.Horizontal.Stiffness))
	}
	return state
}

// Move follows the swing from the start, at rest, and returns what happened up
// to the end of each window; windows count from the start and rise. Extremes
// are the zeros of the rate of each quantity, so nothing is sampled. It fails
// on inputs out of range.
// Source: Newton's second law for limb and rider, the pull taken from the
// length of the line staying the same.
func (s YieldingSwing) Move(start YieldingState, windows ...quantity.Time) ([]YieldingSpan, error) {
	if err := s.check(start, windows); err != nil {
		return nil, fmt.Errorf("yielding swing: %w", err)
	}
	run := newYieldingRun(s)
	y := []float64{float64(start.X), float64(start.Y), float64(start.Angle), 0, 0, 0}
	m, err := begin(&run.yielding, y, run.observer, nil)
	if err != nil {
		return nil, fmt.Errorf("yielding swing: %w", err)
	}
	spans := make([]YieldingSpan, len(windows))
	for i, window := range windows {
		if err := m.until(window, func() {}); err != nil {
			return nil, fmt.Errorf("yielding swing: %w", err)
		}
		spans[i] = run.span()
	}
	return spans, nil
}

func (s YieldingSwing) check(start YieldingState, windows []quantity.Time) error {
	if err := requirePositive(field{"length", float64(s.Length), "m"}, field{"mass", float64(s.Mass), "kg"},
		field{"limb mass", float64(s.LimbMass), "kg"}, field{"gravity", s.Gravity.orStandard(), "m/s2"},
		field{"vertical stiffness", float64(s.Vertical.Stiffness), "N/m"}); err != nil {
		return err
	}
	if err := requireNotNegative(field{"vertical damping", float64(s.Vertical.Damping), "N s/m"}); err != nil {
		return err
	}
	if h := s.Horizontal; h != nil {
		if err := requirePositive(field{"horizontal stiffness", float64(h.Stiffness), "N/m"}); err != nil {
			return err
		}
		if err := requireNotNegative(field{"horizontal damping", float64(h.Damping), "N s/m"}); err != nil {
			return err
		}
	}
	if a := math.Abs(start.Angle.Degrees()); !(a < 90) {
		return fmt.Errorf("angle is %.4g deg; expected less than 90, for beyond it the line is slack", a)
	}
	return requireRising(windows)
}
