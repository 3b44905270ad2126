package numeric

import (
	"math"
	"testing"
)

// Conditions of Hairer, Norsett & Wanner, Solving Ordinary Differential
// Equations I (1993), II.1: every row of the tableau adds up to its node, and
// a step of order p integrates powers of time below p exactly.
func TestOrderConditions(t *testing.T) {
	for stage, row := range inner {
		sum := 0.0
		for _, w := range row {
			sum += w.share
		}
		if math.Abs(sum-nodes[stage]) > 1e-14 {
			t.Errorf("stage %d: shares add up to %v, want the node %v", stage, sum, nodes[stage])
		}
	}
	for name, c := range map[string]struct {
		weights []weight
		order   int
		zero    bool
	}{"step": {inner[endStage], 8, false}, "third": {third, 3, false}, "fifth": {fifth, 5, true}} {
		for power := range c.order {
			sum := 0.0
			for _, w := range c.weights {
				sum += w.share * math.Pow(nodes[w.stage], float64(power))
			}
			want := 1 / float64(power+1)
			if c.zero {
				want = 0
			}
			if math.Abs(sum-want) > 1e-14 {
				t.Errorf("%s: power %d integrates to %v, want %v", name, power, sum, want)
			}
		}
	}
}

// The inner rows meet the simplifying condition sum a_ij c_j = c_i^2/2 from the
// third stage on (same source, equation II.5.3).
func TestInnerRowsAreSecondOrder(t *testing.T) {
	for stage := 2; stage < allStages; stage++ {
		sum := 0.0
		for _, w := range inner[stage] {
			sum += w.share * nodes[w.stage]
		}
		if want := nodes[stage] * nodes[stage] / 2; math.Abs(sum-want) > 1e-14 {
			t.Errorf("stage %d: %v, want %v", stage, sum, want)
		}
	}
}

// single takes steps of fixed length over the problem.
func single(t *testing.T, p problem, steps int) *Integrator {
	t.Helper()
	in, err := NewIntegrator(p, 0, p.exact(0), Tolerance{1e300, 1e300})
	if err != nil {
		t.Fatal(err)
	}
	h := p.end / float64(steps)
	for range steps {
		in.try(h)
		in.extend(h)
		in.accept(h, false, p.end)
	}
	return in
}

// The error at the end falls as the eighth power of the step.
func TestStepIsOfOrderEight(t *testing.T) {
	for _, p := range problems {
		coarse := distance(single(t, p, p.steps).State(), p.exact(p.end))
		fine := distance(single(t, p, 2*p.steps).State(), p.exact(p.end))
		if order := math.Log2(coarse / fine); order < 7.5 {
			t.Errorf("%s: errors %g and %g, order %.2f, want 8", p.name, coarse, fine, order)
		}
	}
}

// The error within a step falls as the eighth power of the step too: the
// extension is of order 7, and one step of it off by the eighth power.
func TestExtensionIsOfOrderSeven(t *testing.T) {
	for _, p := range problems {
		worst := func(h float64) (worst float64) {
			in, err := NewIntegrator(p, 0, p.exact(0), Tolerance{1e300, 1e300})
			if err != nil {
				t.Fatal(err)
			}
			in.try(h)
			in.extend(h)
			in.accept(h, false, p.end)
			y := make([]float64, len(in.y))
			for _, share := range []float64{0.1, 0.3, 0.5, 0.7, 0.9} {
				in.at(share*h, y)
				worst = math.Max(worst, distance(y, p.exact(share*h)))
			}
			return worst
		}
		coarse, fine := worst(p.width), worst(p.width/2)
		if order := math.Log2(coarse / fine); order < 7.5 {
			t.Errorf("%s: errors %g and %g, order %.2f, want 8", p.name, coarse, fine, order)
		}
	}
}
