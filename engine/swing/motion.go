package swing

import (
	"fmt"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// precision of all motions; the energy of a swing without drag then stays the
// same to 1e-9 of itself over 100 periods.
var precision = numeric.Tolerance{Relative: 1e-12, Absolute: 1e-13}

// motion is a run of a system with the quantities observed on the way.
type motion struct {
	*numeric.Integrator
	observer observer
}

// begin starts a motion from state y. The events of the observer come first,
// then those given; seen is told of all of them.
func begin(system numeric.System, y []float64, observer observer, seen func(numeric.Hit), events ...numeric.Event) (*motion, error) {
	in, err := numeric.NewIntegrator(system, 0, y, precision)
	if err != nil {
		return nil, fmt.Errorf("start of the motion: %w", err)
	}
	in.Watch(append(observer.events(), events...), func(h numeric.Hit) {
		observer.hit(h)
		if seen != nil {
			seen(h)
		}
	})
	observer.all(0, y)
	return &motion{in, observer}, nil
}

// until follows the motion to the end of a window; change is called at every
// event that stops the run and puts the system into its next phase.
func (m *motion) until(window quantity.Time, change func()) error {
	for {
		stop, err := m.Run(float64(window))
		if err != nil {
			return fmt.Errorf("motion: %w", err)
		}
		m.observer.all(m.Time(), m.State())
		if stop == numeric.NoEvent {
			return nil
		}
		change()
		m.observer.all(m.Time(), m.State())
		if err := m.Restart(m.State()); err != nil {
			return fmt.Errorf("motion: %w", err)
		}
	}
}
