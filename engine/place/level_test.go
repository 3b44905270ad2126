package place

import (
	"testing"

	"boughline/quantity"
)

// On level ground the limits are straight lines in closed form: feet clear for
// L <= H - f - c, the fall within its limit for L >= (H - F)/cos a, the stem
// far enough for s >= 0.2 L + 0.2. With H = 5, f = 0.45, c = 0.35, F = 3 and
// a = 60 degrees: 4 <= L <= 4.2. Every edge is met exactly by pairs of the grid.
func TestLevelGroundInClosedForm(t *testing.T) {
	for name, run := range map[string]func(Problem) (Result, error){"search": Search, "refine": Refine} {
		t.Run(name, func(t *testing.T) {
			got := must(run(level().problem(t)))(t)
			if *got.Line != (Range{4, 4.2}) || got.Along.From != 1 {
				t.Errorf("feasible lines %v, hang points %v; want 4 to 4.2 m, from 1 m", *got.Line, *got.Along)
			}
			// Each row from the room it needs, rounded up to a centimetre, to 4.8 m.
			stem := 0
			for line := 100; line <= 500; line++ {
				stem += 480 - max(30, (20*line+2000+99)/100) + 1
			}
			if got.Passed[2] != stem {
				t.Errorf("%d pairs clear the stem, want %d", got.Passed[2], stem)
			}
			if want := 451 * (420 - 100 + 1); got.Passed[1] != want {
				t.Errorf("%d pairs clear the feet, want %d", got.Passed[1], want)
			}
			if want := 451 * (500 - 400 + 1); got.Passed[3] != want {
				t.Errorf("%d pairs keep the fall, want %d", got.Passed[3], want)
			}
			if best := got.Bests[0]; best.Along != 1.04 || best.Line != 4.2 || best.Binding != "foot" {
				t.Errorf("longest line %+v, want 4.2 m at 1.04 m, bound by the feet", best)
			}
		})
	}
}

// With these sizes the stress allows hang points up to 3.65 m.
func TestBandAtTheEndOfTheGrid(t *testing.T) {
	for to, want := range map[quantity.Length]string{3.65: "", 3.66: "stress", 3.67: "stress"} {
		s := level()
		s.grid.Along.To = to
		for name, run := range map[string]func(Problem) (Result, error){"search": Search, "refine": Refine} {
			band := must(run(s.problem(t)))(t).Bands[4]
			got := ""
			if band.BeyondHigh != nil {
				got = band.BeyondHigh.Binding
			}
			if *band.Feasible != (Range{1, 3.65}) || got != want || band.BeyondLow.Along != 0.99 {
				t.Errorf("%s to %v m: band %v, beyond it %q at the far and %+v at the near end", name, to, *band.Feasible, got, *band.BeyondLow)
			}
		}
	}
}
