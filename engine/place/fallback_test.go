package place

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"boughline/quantity"
)

// A margin with two humps whose promise of being monotone is false: the answer
// is that of Search nevertheless.
func TestRefineFallsBackWhereAPromiseIsBroken(t *testing.T) {
	for seed := range uint64(50) {
		r := rand.New(rand.NewPCG(seed, 3))
		phase, wave := 6*r.Float64(), 1+3*r.Float64()
		p := level().problem(t)
		p.Grid.Along.Step, p.Grid.Line.Step = 0.1, 0.1
		p.Constraints = append(p.Constraints, Constraint{"humps", Field{
			Both: func(along, line quantity.Length) float64 {
				return math.Sin(wave*float64(along)+phase) * math.Cos(wave*float64(line))
			},
			Shape: &Shape{},
		}})
		same(t, seed, refine(t, p), search(t, p))
	}
}

// A costly margin of two arguments is worked out at few pairs, each once.
func TestRefineWorksFewPairsOut(t *testing.T) {
	p := level().problem(t)
	p.Bands = nil
	calls := map[[2]quantity.Length]int{}
	margin := p.Constraints[0].Margin
	p.Constraints[0].Margin = Field{Shape: &Shape{}, Both: func(along, line quantity.Length) float64 {
		calls[[2]quantity.Length{along, line}]++
		return margin.At(along, line)
	}}
	result := refine(t, p)
	if len(calls) == 0 || len(calls) > result.Cells/20 {
		t.Errorf("%d of %d pairs were worked out, want some, at most a twentieth", len(calls), result.Cells)
	}
	for pair, n := range calls {
		if n != 1 {
			t.Fatalf("%v was worked out %d times", pair, n)
		}
	}
}

func TestErrorsNameWhatIsOutOfRange(t *testing.T) {
	for want, spoil := range map[string]func(*site){
		"limb.tip":                          func(s *site) { s.limb.Tip = 0 },
		"limb.density":                      func(s *site) { s.limb.Density = quantity.Density(math.NaN()) },
		"stress: pull":                      func(s *site) { s.allowed = 0 },
		"foot clearance: a limit of 0 m":    func(s *site) { s.foot = 0 },
		"fall height: a limit of":           func(s *site) { s.fall = -1 },
		"swing.amplitude":                   func(s *site) { s.room.Amplitude = 2 },
		"ground.stations":                   func(s *site) { s.room.Ground.Stations = nil },
		"rise_along":                        func(s *site) { s.room.RiseAlong = quantity.Proportion(math.Inf(1)) },
		"grid.along: 0 to":                  func(s *site) { s.grid.Along.From = 0 },
		"grid.line: 1 to 0.5":               func(s *site) { s.grid.Line.To = 0.5 },
		"grid.line.step: 0 m":               func(s *site) { s.grid.Line.Step = 0 },
		"grid.along.step: 1e-09 m":          func(s *site) { s.grid.Along.Step = 1e-9 },
		"bands: a line of 2.005 m":          func(s *site) { s.bands = []quantity.Length{2.005} },
		"constraint stress: NaN at along 5": func(s *site) { s.grid.Along.To = 6 },
	} {
		s := level()
		spoil(&s)
		for _, run := range []func(Problem) (Result, error){Search, Refine} {
			if err := s.tryWith(run); err == nil || !strings.Contains(err.Error(), want) {
				t.Errorf("got error %v, want one about %q", err, want)
			}
		}
	}
}

// tryWith defines the problem of a site and runs it, up to the first error.
func (s site) tryWith(run func(Problem) (Result, error)) error {
	stress, err := s.limb.StressConstraint(2000, s.allowed)
	if err != nil {
		return err
	}
	foot, err := s.room.FootConstraint(s.foot)
	if err != nil {
		return err
	}
	fall, err := s.room.FallConstraint(s.fall)
	if err != nil {
		return err
	}
	_, err = run(Problem{Grid: s.grid, Constraints: []Constraint{stress, foot, fall}, Bands: s.bands})
	return err
}

func TestNoConstraintsAreRefused(t *testing.T) {
	p := level().problem(t)
	p.Constraints = nil
	if _, err := Search(p); err == nil {
		t.Error("a search without constraints gave no error")
	}
}

// A margin that gives no number is an error that says where, never a verdict.
func TestNoNumberIsAnError(t *testing.T) {
	p := level().problem(t)
	p.Constraints[0].Margin = Field{Shape: &Shape{}, Both: func(along, line quantity.Length) float64 { return math.Log(float64(line) - 2) }}
	for _, run := range []func(Problem) (Result, error){Search, Refine} {
		if _, err := run(p); err == nil || !strings.Contains(err.Error(), "constraint stress: NaN at along 0.3 m, line 1 m") {
			t.Errorf("got error %v, want one that names the pair", err)
		}
	}
	if _, err := p.Runs(1); err == nil {
		t.Error("Runs: no error")
	}
}
