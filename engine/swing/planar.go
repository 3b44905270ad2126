package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// PlanarSwing is a rider on a rigid line swinging in one plane against air
// drag that goes with the square of the speed.
type PlanarSwing struct {
	Length     quantity.Length
	Mass       quantity.Mass
	DragArea   quantity.Area // drag coefficient times frontal area; 0.3 to 0.6 m2 for a seated rider (from memory)
	AirDensity quantity.Density
	Amplitude  quantity.Angle  // from which the rider starts at rest
	Raise      quantity.Length // by which standing up at the bottom lifts the centre of mass; 0 for no pumping
	Gravity    Acceleration
}

// HalfSwing is the motion from one turning point to the next.
type HalfSwing struct {
	Amplitude   quantity.Angle // reached at its end
	End         quantity.Time
	Bottom      quantity.Time
	BottomSpeed quantity.Speed // just after standing up where the rider pumps
	PeakPull    Extreme[quantity.Force]
}

// HalfSwings returns the next n half swings from the start. A pumping rider
// squats at each end and stands up at once at the bottom, which keeps the
// angular momentum. It fails on inputs out of range, and with the half swings
// before it where pumping brings a half swing to 90 deg and the line goes
// slack.
// Source: Newton's second law with drag rho CdA v^2/2; pumping as Pumped.
func (s PlanarSwing) HalfSwings(n int) ([]HalfSwing, error) {
	if err := s.check(); err != nil {
		return nil, fmt.Errorf("planar swing: %w", err)
	}
	run := newPlanarRun(s)
	m, err := begin(&run.planar, []float64{float64(s.Amplitude), 0}, run.observer, nil, run.events()...)
	if err != nil {
		return nil, fmt.Errorf("planar swing: %w", err)
	}
	halves := make([]HalfSwing, 0, n)
	for len(halves) < n {
		half, err := run.half(m)
		if err != nil {
			return halves, fmt.Errorf("planar swing: half swing %d: %w", len(halves)+1, err)
		}
		halves = append(halves, half)
	}
	return halves, nil
}

func (s PlanarSwing) check() error {
	if err := requireTaut(s.Amplitude); err != nil {
		return err
	}
	if err := requirePositive(field{"length", float64(s.Length), "m"}, field{"mass", float64(s.Mass), "kg"},
		field{"gravity", s.Gravity.orStandard(), "m/s2"}, field{"length less the raise", float64(s.Length - s.Raise), "m"}); err != nil {
		return err
	}
	return requireNotNegative(field{"drag area", float64(s.DragArea), "m2"}, field{"air density", float64(s.AirDensity), "kg/m3"},
		field{"raise", float64(s.Raise), "m"})
}

// planar is the system: angle and angular speed.
type planar struct {
	length, drag, mass, gravity float64 // drag is rho CdA / (2 m), per metre
}

// Rates implements numeric.System.
func (p *planar) Rates(_ float64, y, rates []float64) {
	rates[0] = y[1]
	rates[1] = -p.gravity/p.length*math.Sin(y[0]) - p.drag*p.length*math.Abs(y[1])*y[1]
}

func (p *planar) pull(y []float64) float64 {
	return p.mass * (p.gravity*math.Cos(y[0]) + p.length*y[1]*y[1])
}

func (p *planar) pullRate(y []float64) float64 {
	return p.mass * y[1] * (-3*p.gravity*math.Sin(y[0]) - 2*p.drag*p.length*p.length*math.Abs(y[1])*y[1])
}
