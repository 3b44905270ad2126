package swing

import (
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// The quantities observed on a drifting swing, then its other event.
const (
	driftX = iota
	driftY
	driftGap
	touchEvent
)

// driftRun is one motion of a drifting swing.
type driftRun struct {
	spherical
	x, y, radius float64 // of the stem
	observer     observer
	touched      SpatialContact
}

func newDriftRun(s DriftingSwing, stem StemAt) *driftRun {
	run := &driftRun{
		spherical: spherical{float64(s.Length), float64(s.Mass), s.Gravity.orStandard()},
		x:         float64(stem.X), y: float64(stem.Y), radius: float64(stem.Radius),
	}
	run.observer = observer{
		driftX: observe(func(y []float64) float64 { return y[0] }, func(y []float64) float64 { return y[3] }),
		driftY: observe(func(y []float64) float64 { return y[1] }, func(y []float64) float64 { return y[4] }),
		driftGap: observe(
			func(y []float64) float64 { return run.gap(0, y) },
			func(y []float64) float64 { return (y[0]-run.x)*y[3] + (y[1]-run.y)*y[4] }),
	}
	return run
}

// gap is the horizontal distance from the rider to the surface of the stem.
func (run *driftRun) gap(_ float64, y []float64) float64 {
	return math.Hypot(y[0]-run.x, y[1]-run.y) - run.radius
}

func (run *driftRun) see(h numeric.Hit) {
	if h.Event == touchEvent && !run.touched.Met {
		y := h.Y
		run.touched = SpatialContact{true, quantity.Time(h.T), SpatialState{
			quantity.Vec3{X: y[0], Y: y[1], Z: y[2]}, quantity.Vec3{X: y[3], Y: y[4], Z: y[5]}}}
	}
}

func (run *driftRun) span() DriftSpan {
	x, y, gap := run.observer[driftX], run.observer[driftY], run.observer[driftGap]
	return DriftSpan{
		LeastX: extreme[quantity.Length](x.least), GreatestX: extreme[quantity.Length](x.most),
		LeastY: extreme[quantity.Length](y.least), GreatestY: extreme[quantity.Length](y.most),
		Closest: extreme[quantity.Length](gap.least), Touched: run.touched,
	}
}
