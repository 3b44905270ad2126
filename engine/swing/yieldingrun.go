package swing

import "boughline/quantity"

// The quantities observed on a yielding swing.
const (
	yieldingPull = iota
	yieldingVertical
	yieldingHorizontal
	yieldingSag
)

// yieldingRun is one motion of a yielding swing.
type yieldingRun struct {
	yielding
	observer observer
}

func newYieldingRun(s YieldingSwing) *yieldingRun {
	run := &yieldingRun{yielding: yielding{
		length: float64(s.Length), mass: float64(s.Mass), limb: float64(s.LimbMass), gravity: s.Gravity.orStandard(),
		y: spring{float64(s.Vertical.Stiffness), float64(s.Vertical.Damping)},
	}}
	if h := s.Horizontal; h != nil {
		run.x, run.bothWays = spring{float64(h.Stiffness), float64(h.Damping)}, true
	}
	run.observer = observer{
		yieldingPull:       observe(run.pull, run.pullRate),
		yieldingVertical:   observe(run.vertical, run.verticalRate),
		yieldingHorizontal: observe(run.horizontal, run.horizontalRate),
		yieldingSag:        observe(func(y []float64) float64 { return -y[1] }, func(y []float64) float64 { return -y[4] }),
	}
	return run
}

func (run *yieldingRun) span() YieldingSpan {
	pull, sag := run.observer[yieldingPull], extreme[quantity.Length](run.observer[yieldingSag].most)
	sideways := run.observer[yieldingHorizontal]
	peak := extreme[quantity.Force](sideways.most)
	if -sideways.least.value > sideways.most.value {
		peak = extreme[quantity.Force](sideways.least)
		peak.Value = -peak.Value
	}
	return YieldingSpan{
		PeakPull: extreme[quantity.Force](pull.most), LeastPull: extreme[quantity.Force](pull.least),
		PeakVertical:   extreme[quantity.Force](run.observer[yieldingVertical].most),
		PeakHorizontal: peak,
		PeakSpring:     Extreme[quantity.Force]{quantity.Force(run.y.stiffness) * quantity.Force(sag.Value), sag.At},
		GreatestSag:    sag,
	}
}
