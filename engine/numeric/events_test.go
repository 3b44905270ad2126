package numeric

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

var oscillator = problems[0] // cos t, -sin t

func watching(t *testing.T, events []Event, seen func(Hit)) *Integrator {
	t.Helper()
	in, err := NewIntegrator(oscillator, 0, oscillator.exact(0), Tolerance{1e-12, 1e-12})
	if err != nil {
		t.Fatal(err)
	}
	in.Watch(events, seen)
	return in
}

func position(_ float64, y []float64) float64 { return y[0] }
func speed(_ float64, y []float64) float64    { return y[1] }

// The zeros of the cosine are the odd multiples of a right angle.
func TestCrossingsOfEachDirection(t *testing.T) {
	for _, c := range []struct {
		direction   Direction
		first, step float64
	}{{Either, math.Pi / 2, math.Pi}, {Falling, math.Pi / 2, 2 * math.Pi}, {Rising, 3 * math.Pi / 2, 2 * math.Pi}} {
		want := c.first
		in := watching(t, []Event{{Value: position, Direction: c.direction}}, func(h Hit) {
			if math.Abs(h.T-want) > 1e-10 || math.Abs(h.Y[0]) > 1e-14 {
				t.Errorf("direction %d: met at %v with %v, want %v", c.direction, h.T, h.Y[0], want)
			}
			want += c.step
		})
		if _, err := in.Run(20); err != nil {
			t.Fatal(err)
		}
		if want < 20 {
			t.Errorf("direction %d: missed the crossing at %v", c.direction, want)
		}
	}
}

// The speed is zero at the start, which is no crossing; then the turning
// points come at the multiples of half a turn, each stopping the run once.
func TestStopsAtEachTurningPointOnce(t *testing.T) {
	in := watching(t, []Event{{Value: speed, Stops: true}}, nil)
	for turn := 1; turn <= 5; turn++ {
		stop, err := in.Run(100)
		if err != nil || stop != 0 {
			t.Fatalf("stop %d, %v", stop, err)
		}
		if want := float64(turn) * math.Pi; math.Abs(in.Time()-want) > 1e-10 {
			t.Errorf("turn %d at %v, want %v", turn, in.Time(), want)
		}
		if turn%2 == 0 { // with and without a restart
			if err := in.Restart(in.State()); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// Events in one step come in the order of time, and none after the one that
// stops.
func TestOrderOfEvents(t *testing.T) {
	at := func(level float64) func(float64, []float64) float64 {
		return func(_ float64, y []float64) float64 { return y[0] - level }
	}
	var met []int
	in := watching(t, []Event{{Value: at(0.2)}, {Value: at(0.3), Stops: true}, {Value: at(0.4)}}, func(h Hit) { met = append(met, h.Event) })
	if stop, err := in.Run(10); stop != 1 || err != nil {
		t.Fatalf("stop %d, %v", stop, err)
	}
	if len(met) != 2 || met[0] != 2 || met[1] != 1 {
		t.Errorf("met %v, want [2 1]", met)
	}
	if _, err := in.Run(1.5); err != nil {
		t.Fatal(err)
	}
	if len(met) != 3 || met[2] != 0 {
		t.Errorf("met %v, want [2 1 0]", met)
	}
}

// A crossing there and back within a small share of a swing is seen.
func TestBriefCrossing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		level := rapid.Float64Range(0.9, 0.98).Draw(rt, "level")
		count := 0
		in := watching(t, []Event{{Value: func(_ float64, y []float64) float64 { return y[0] - level }}}, func(h Hit) {
			count++
			if math.Abs(math.Abs(math.Cos(h.T))-level) > 1e-10 {
				rt.Errorf("met at %v where the cosine is %v, want %v", h.T, math.Cos(h.T), level)
			}
		})
		if _, err := in.Run(6 * math.Pi); err != nil {
			rt.Fatal(err)
		}
		if count != 6 {
			rt.Errorf("%d crossings in three turns, want 6 (the last is the end)", count)
		}
	})
}
