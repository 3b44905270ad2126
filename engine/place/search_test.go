package place

import (
	"encoding/json"
	"math/rand/v2"
	"reflect"
	"testing"

	"boughline/quantity"
)

// Two ways that share no step but the margins: every pair by itself, and
// blocks by bounds.
func TestRefineEqualsSearch(t *testing.T) {
	feasible := 0
	for seed := range uint64(200) {
		p := randomSite(rand.New(rand.NewPCG(seed, 1))).problem(t)
		p.Constraints = turned(p.Constraints, int(seed%4))
		full := search(t, p)
		if full.Feasible > 0 {
			feasible++
		}
		same(t, seed, refine(t, p), full)
	}
	if feasible < 50 || feasible > 150 {
		t.Errorf("%d of 200 sites have a place; expected some with and some without", feasible)
	}
}

// turned puts another constraint first, which decides ties.
func turned(list []Constraint, first int) []Constraint {
	return append(list[first:len(list):len(list)], list[:first]...)
}

// The same margins as functions of two arguments, with their turns promised,
// on some sites also without a promise.
func TestRefineEqualsSearchOfFunctions(t *testing.T) {
	for seed := range uint64(200) {
		s := randomSite(rand.New(rand.NewPCG(seed, 2)))
		s.grid.Along.Step, s.grid.Line.Step = 0.1, 0.1
		s.bands = s.grid.Line.Values()
		split := s.problem(t)
		full := search(t, split)
		functions := s.problem(t)
		for k := range functions.Constraints {
			margin := split.Constraints[k].Margin
			functions.Constraints[k].Margin = Field{Both: margin.At, Shape: shapeOf(s, k)}
		}
		same(t, seed, refine(t, functions), full)
		prepared := must(functions.prepare())(t)
		if (report{functions, prepared, newRefined(prepared)}).result(); prepared.broken() {
			t.Errorf("site %d: a promise that holds was taken for broken", seed)
		}
		if seed%20 == 0 {
			functions.Constraints[0].Margin.Shape = nil
			same(t, seed, refine(t, functions), full)
		}
	}
}

// shapeOf gives the turns of a margin. Along the limb none turns. With a longer
// line the feet come nearer throughout and the stem asks for more; the height
// of fall turns where its values on the grid do.
func shapeOf(s site, constraint int) *Shape {
	shape := &Shape{}
	if constraint != 3 {
		return shape
	}
	lines := s.grid.Line.Values()
	height := func(j int) quantity.Length { return s.room.FallHeight(0, lines[j]) }
	for j := 1; j+1 < len(lines); j++ {
		if (height(j)-height(j-1))*(height(j+1)-height(j)) <= 0 {
			shape.LineTurns = append(shape.LineTurns, lines[j])
		}
	}
	return shape
}

func same(t *testing.T, seed uint64, got, want Result) {
	t.Helper()
	if !reflect.DeepEqual(got, want) {
		t.Errorf("site %d:\ngot  %s\nwant %s", seed, text(t, got), text(t, want))
	}
}

func text(t *testing.T, r Result) []byte { return must(json.Marshal(r))(t) }
