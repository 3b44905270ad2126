package swing

import (
	"fmt"
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// The quantity observed on a planar swing, then its other events.
const (
	planarPull = iota
	turnEvent
	bottomEvent
	slackEvent
)

// patience is for how many small periods a turning point is waited for: far
// longer than any swing takes that drag lets swing.
const patience = 100

// planarRun is one motion of a planar swing.
type planarRun struct {
	planar
	observer     observer
	ends, bottom float64 // length at the ends and just after the bottom
}

func newPlanarRun(s PlanarSwing) *planarRun {
	run := &planarRun{
		planar: planar{
			length: float64(s.Length), drag: float64(s.AirDensity) * float64(s.DragArea) / (2 * float64(s.Mass)),
			mass: float64(s.Mass), gravity: s.Gravity.orStandard()},
		ends: float64(s.Length), bottom: float64(s.Length - s.Raise),
	}
	run.observer = observer{planarPull: observe(run.pull, run.pullRate)}
	return run
}

// events are those besides the peak of the pull.
func (run *planarRun) events() []numeric.Event {
	return []numeric.Event{
		{Value: func(_ float64, y []float64) float64 { return y[1] }, Stops: true},
		{Value: func(_ float64, y []float64) float64 { return y[0] }, Stops: true},
		{Value: func(_ float64, y []float64) float64 { return run.pull(y) }, Direction: numeric.Falling, Stops: true},
	}
}

// half follows the swing to its next turning point.
func (run *planarRun) half(m *motion) (HalfSwing, error) {
	var half HalfSwing
	pull := &run.observer[planarPull]
	pull.forget()
	until := m.Time() + patience*2*math.Pi*math.Sqrt(run.ends/run.gravity)
	for {
		stop, err := m.Run(until)
		if err != nil {
			return half, err
		}
		y := m.State()
		switch pull.note(m.Time(), y); stop {
		case bottomEvent:
			run.stand(y)
			pull.note(m.Time(), y)
			half.Bottom, half.BottomSpeed = quantity.Time(m.Time()), quantity.Speed(run.length*math.Abs(y[1]))
		case turnEvent:
			run.length = run.ends
			half.End, half.Amplitude = quantity.Time(m.Time()), quantity.Angle(math.Abs(y[0]))
			half.PeakPull = extreme[quantity.Force](pull.most)
			return half, m.Restart(y)
		case slackEvent:
			return half, fmt.Errorf("the line goes slack at %.4g deg", quantity.Angle(math.Abs(y[0])).Degrees())
		default:
			return half, fmt.Errorf("no turning point within %g s", until)
		}
		if err := m.Restart(y); err != nil {
			return half, err
		}
	}
}

// stand lifts the rider's centre of mass at the bottom; angular momentum stays.
func (run *planarRun) stand(y []float64) {
	ratio := run.length / run.bottom
	y[1] *= ratio * ratio
	run.length = run.bottom
}
