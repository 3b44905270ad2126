package swing

import (
	"boughline/engine/numeric"
	"boughline/quantity"
)

// The quantities observed on an elastic swing, then its other events.
const (
	elasticPull = iota
	elasticDepth
	elasticRadius
	gripEvent
	groundEvent
)

// elasticRun is one motion of an elastic swing with what is kept of it.
type elasticRun struct {
	elastic
	start        [4]float64
	observer     observer
	taut, ground PlanarContact
}

func newElasticRun(s ElasticSwing, start PlanarState) *elasticRun {
	run := &elasticRun{
		elastic: elastic{float64(s.Length), float64(s.Stiffness), float64(s.Damping), float64(s.Mass), s.Gravity.orStandard(), false},
		start:   [4]float64{float64(start.X), float64(start.Depth), float64(start.VX), float64(start.VDepth)},
	}
	if run.tight(run.start[:]) {
		run.elastic.taut = true
		run.taut = PlanarContact{Met: true, State: start}
	}
	e := &run.elastic
	run.observer = observer{
		elasticPull:  observe(e.pull, e.pullRate),
		elasticDepth: observe(func(y []float64) float64 { return y[1] }, func(y []float64) float64 { return y[3] }),
		elasticRadius: observe(
			func(y []float64) float64 { radius, _ := e.stretch(y); return radius },
			func(y []float64) float64 { _, rate := e.stretch(y); return rate }),
	}
	return run
}

// tight tells whether the line pulls from the first moment on. At exactly its
// own length it does if the rider moves outward, or rests below the hang point.
func (run *elasticRun) tight(y []float64) bool {
	if grip := run.grip(y); grip != 0 {
		return grip > 0
	}
	if _, rate := run.stretch(y); rate != 0 {
		return rate > 0
	}
	return y[2]*y[2]+y[3]*y[3]+run.gravity*y[1] > 0
}

// events are those besides the extremes.
func (run *elasticRun) events(ground func(quantity.Length) quantity.Length) []numeric.Event {
	events := []numeric.Event{{Value: func(_ float64, y []float64) float64 { return run.grip(y) }, Stops: true}}
	if ground == nil {
		return events
	}
	return append(events, numeric.Event{Direction: numeric.Falling, Value: func(_ float64, y []float64) float64 {
		return float64(ground(quantity.Length(y[0]))) - y[1]
	}})
}

func (run *elasticRun) see(h numeric.Hit) {
	if h.Event == groundEvent && !run.ground.Met {
		run.ground = contact(h.T, h.Y)
	}
}

// change goes over from tight to slack or back.
func (run *elasticRun) change(t float64, y []float64) {
	run.elastic.taut = !run.elastic.taut
	if run.elastic.taut && !run.taut.Met {
		run.taut = contact(t, y)
	}
}

func contact(t float64, y []float64) PlanarContact {
	return PlanarContact{true, quantity.Time(t), PlanarState{
		quantity.Length(y[0]), quantity.Length(y[1]), quantity.Speed(y[2]), quantity.Speed(y[3])}}
}

func (run *elasticRun) span() ElasticSpan {
	pull, depth := run.observer[elasticPull], run.observer[elasticDepth]
	return ElasticSpan{
		PeakPull: extreme[quantity.Force](pull.most), LeastPull: extreme[quantity.Force](pull.least),
		LowestDepth: extreme[quantity.Length](depth.most), LowestX: quantity.Length(depth.most.state[0]),
		GreatestRadius: extreme[quantity.Length](run.observer[elasticRadius].most),
		Taut:           run.taut, Ground: run.ground,
	}
}
