package swing

import (
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// Extreme is the greatest or the least value of a quantity within a window of
// time, and when it came.
type Extreme[Q ~float64] struct {
	Value Q
	At    quantity.Time
}

// moment is a value of an observed quantity with the state that went with it.
type moment struct {
	value, t float64
	state    [6]float64
}

func extreme[Q ~float64](m moment) Extreme[Q] { return Extreme[Q]{Q(m.value), quantity.Time(m.t)} }

// observed is a quantity whose extremes are wanted. They come where its rate
// crosses zero, or where a window or a phase of the motion ends.
type observed struct {
	value, rate func(y []float64) float64
	least, most moment
}

func observe(value, rate func(y []float64) float64) observed {
	o := observed{value: value, rate: rate}
	o.forget()
	return o
}

// forget starts a new window.
func (o *observed) forget() {
	o.least, o.most = moment{value: math.Inf(1)}, moment{value: math.Inf(-1)}
}

func (o *observed) note(t float64, y []float64) {
	value := o.value(y)
	if value < o.least.value {
		o.least.value, o.least.t = value, t
		copy(o.least.state[:], y)
	}
	if value > o.most.value {
		o.most.value, o.most.t = value, t
		copy(o.most.state[:], y)
	}
}

// observer keeps the extremes of several quantities.
type observer []observed

// events are the crossings of the rates, one for each quantity and in the same
// order.
func (o observer) events() []numeric.Event {
	events := make([]numeric.Event, len(o))
	for i := range o {
		rate := o[i].rate
		events[i] = numeric.Event{Value: func(_ float64, y []float64) float64 { return rate(y) }}
	}
	return events
}

// hit takes an event; those that are none of the observer's it leaves alone.
func (o observer) hit(h numeric.Hit) {
	if h.Event < len(o) {
		o[h.Event].note(h.T, h.Y)
	}
}

// all notes every quantity, as at the ends of windows and phases.
func (o observer) all(t float64, y []float64) {
	for i := range o {
		o[i].note(t, y)
	}
}
