package numeric

import "math"

// Direction tells which crossings of zero count.
type Direction int

// The directions of a crossing.
const (
	Either Direction = iota
	Rising
	Falling
)

// NoEvent is the index of no event.
const NoEvent = -1

// Event is a moment at which a value that goes with the state crosses zero. A
// peak is the crossing of its rate. A value of exactly zero where a run begins
// is no crossing.
type Event struct {
	Value     func(t float64, y []float64) float64
	Direction Direction
	Stops     bool // the run ends there
}

// Hit is an event that was met. Y is the state at that moment and holds only
// until the receiver returns.
type Hit struct {
	Event int
	T     float64
	Y     []float64
}

// looks is into how many parts a step is cut to see whether a value changes
// sign within it.
const looks = 8

// watch holds what the integrator looks out for.
type watch struct {
	events []Event
	seen   func(Hit)
	signs  []float64 // sign of each value when it was last not zero
	fired  int       // event that stopped the last run
	met    []Hit     // events within one part of a step, in order of time
	state  []float64 // state at an event
	probe  []float64 // state while a root is sought
}

// Watch sets the events to look out for and who is told of them; seen may be
// nil.
func (in *Integrator) Watch(events []Event, seen func(Hit)) {
	n := len(in.y)
	in.watch = watch{
		events: events, seen: seen, fired: NoEvent,
		signs: make([]float64, len(events)), met: make([]Hit, 0, len(events)),
		state: make([]float64, n), probe: make([]float64, n),
	}
	in.watch.reset(in.t, in.y)
}

// reset takes the signs anew. The event that stopped the last run keeps the
// sign it went over to, for its value is zero up to rounding.
func (w *watch) reset(t float64, y []float64) {
	for i, event := range w.events {
		if i != w.fired {
			w.signs[i] = sign(event.Value(t, y))
		}
	}
}

func sign(x float64) float64 {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

// look goes through the last step for events. Where one stops the run, it
// moves the integrator back to that moment.
func (in *Integrator) look() (stoppedBy int) {
	w := &in.watch
	if len(w.events) == 0 {
		return NoEvent
	}
	w.fired = NoEvent
	left := in.from
	for part := 1; part <= looks; part++ {
		right := in.from + in.width*float64(part)/looks
		if part == looks {
			right = in.t
		}
		in.meet(left, right)
		for _, hit := range w.met {
			if in.tell(hit) {
				return hit.Event
			}
		}
		left = right
	}
	return NoEvent
}

// meet lists the events between left and right in order of time.
func (in *Integrator) meet(left, right float64) {
	w := &in.watch
	w.met = w.met[:0]
	in.at(right, w.state)
	for i, event := range w.events {
		after := sign(event.Value(right, w.state))
		if after == 0 || after == w.signs[i] {
			continue
		}
		if w.signs[i] == 0 {
			w.signs[i] = after
			continue
		}
		t := Root(func(t float64) float64 {
			in.at(t, w.probe)
			return event.Value(t, w.probe)
		}, left, right)
		w.met = append(w.met, Hit{Event: i, T: t})
		for j := len(w.met) - 1; j > 0 && w.met[j].T < w.met[j-1].T; j-- {
			w.met[j], w.met[j-1] = w.met[j-1], w.met[j]
		}
	}
}

// tell notes the event, passes it on where its direction counts, and stops
// there if it is to.
func (in *Integrator) tell(hit Hit) (stopped bool) {
	w := &in.watch
	event := w.events[hit.Event]
	w.signs[hit.Event] = -w.signs[hit.Event]
	rising := w.signs[hit.Event] > 0
	if event.Direction == Rising && !rising || event.Direction == Falling && rising {
		return false
	}
	in.at(hit.T, w.state)
	hit.Y = w.state
	if w.seen != nil {
		w.seen(hit)
	}
	if !event.Stops {
		return false
	}
	w.fired = hit.Event
	in.t = hit.T
	copy(in.y, w.state)
	in.rates(in.t, in.y, in.k[0])
	in.step = math.Min(in.step, in.width)
	return true
}
