package numeric

import (
	"errors"
	"math"
	"testing"
)

// The error keeps near the tolerance and falls with it.
func TestErrorFollowsTolerance(t *testing.T) {
	for _, p := range problems {
		for _, tolerance := range []float64{1e-6, 1e-8, 1e-10, 1e-12} {
			in, err := NewIntegrator(p, 0, p.exact(0), Tolerance{tolerance, tolerance})
			if err != nil {
				t.Fatal(err)
			}
			if stop, err := in.Run(p.end); err != nil || stop != NoEvent {
				t.Fatalf("%s: stop %d, %v", p.name, stop, err)
			}
			if in.Time() != p.end {
				t.Errorf("%s: ended at %v, want %v", p.name, in.Time(), p.end)
			}
			if off := distance(in.State(), p.exact(p.end)); off > 100*tolerance {
				t.Errorf("%s: error %g at tolerance %g", p.name, off, tolerance)
			}
		}
	}
}

// Stopping on the way changes the answer no more than the tolerance does.
func TestRunInParts(t *testing.T) {
	for _, p := range problems {
		in, err := NewIntegrator(p, 0, p.exact(0), Tolerance{1e-12, 1e-12})
		if err != nil {
			t.Fatal(err)
		}
		for part := 1; part <= 7; part++ {
			end := p.end * float64(part) / 7
			if _, err := in.Run(end); err != nil {
				t.Fatal(err)
			}
			if off := distance(in.State(), p.exact(end)); off > 1e-10 {
				t.Errorf("%s: error %g at %g", p.name, off, end)
			}
		}
	}
}

func TestRunAllocatesNothing(t *testing.T) {
	p := problems[3]
	in, err := NewIntegrator(p, 0, p.exact(0), Tolerance{1e-10, 1e-10})
	if err != nil {
		t.Fatal(err)
	}
	start := p.exact(0)
	in.Watch([]Event{{Value: func(_ float64, y []float64) float64 { return y[0] }}}, func(Hit) {})
	allocations := testing.AllocsPerRun(10, func() {
		if err := in.StartAt(0, start); err != nil {
			t.Fatal(err)
		}
		if _, err := in.Run(p.end); err != nil {
			t.Fatal(err)
		}
	})
	if allocations != 0 {
		t.Errorf("%v allocations in a run, want none", allocations)
	}
}

// y' = y^2 from 1 runs to infinity at time 1.
func TestRunsToInfinity(t *testing.T) {
	blowUp := problem{rates: func(_ float64, y, r []float64) { r[0] = y[0] * y[0] }}
	in, err := NewIntegrator(blowUp, 0, []float64{1}, Tolerance{1e-9, 1e-9})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := in.Run(2); !errors.Is(err, ErrStep) {
		t.Errorf("got %v at time %v, want %v", err, in.Time(), ErrStep)
	}
}

func TestStartNotFinite(t *testing.T) {
	for _, y := range []float64{math.NaN(), math.Inf(1)} {
		if _, err := NewIntegrator(problems[1], 0, []float64{y}, Tolerance{1e-9, 1e-9}); !errors.Is(err, ErrStart) {
			t.Errorf("start at %v: got %v, want %v", y, err, ErrStart)
		}
	}
}
