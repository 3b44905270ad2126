package hangsearch

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/survey"
)

// drawn is an invented tree: the oak with limbs of other thicknesses, heights
// and directions over sloping ground, on some a fence or a stump beside it.
func drawn(t testing.TB, number int) *survey.Survey {
	d := rand.New(rand.NewPCG(7, uint64(number)))
	between := func(low, high float64) float64 { return low + (high-low)*d.Float64() }
	s := oak(t)
	tree := &s.Trees[0]
	tree.Members, tree.Unions = tree.Members[:3], tree.Unions[:1]
	tree.Ground = sloping(between(-0.15, 0.15), between(-0.15, 0.15))
	for i := range tree.Ground.Spots {
		tree.Ground.Spots[i].Height.Value += quantity.Length(between(-0.2, 0.2))
	}
	for i := 1; i < 3; i++ {
		limb := &tree.Members[i]
		azimuth, rises := *limb.Azimuth, *limb.RisesAt
		azimuth.Value = quantity.Angle(between(0, 360)) * quantity.Degree
		rises.Value = quantity.Length(between(3.2, 5.2))
		limb.Azimuth, limb.RisesAt = &azimuth, &rises
		limb.Stations = append([]survey.Station(nil), limb.Stations...)
		thicker := quantity.Length(between(0.7, 1.3))
		for j := range limb.Stations {
			if girth := limb.Stations[j].Girth; girth != nil {
				scaled := *girth
				scaled.Value *= thicker
				limb.Stations[j].Girth = &scaled
			}
		}
	}
	if d.IntN(3) == 0 {
		tree.Obstacles = []survey.Obstacle{{What: "stump",
			Azimuth:  survey.MeasuredAngle{Value: quantity.Angle(between(0, 360)) * quantity.Degree, How: quantity.Compass},
			Distance: measured(between(2, 8)), Radius: measured(0.3)}}
	}
	return s
}

func search(t testing.TB, s *survey.Survey, o Options) Result {
	t.Helper()
	r, err := Search(context.Background(), s, tables(), o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// with asks for one hang alone.
func with(s *survey.Survey, h survey.Hang) assess.Hang {
	asking := *s
	asking.Trees = append([]survey.Tree(nil), s.Trees...)
	asking.Trees[0].Hangs = []survey.Hang{h}
	a, err := assess.Assess(&asking, tables())
	if err != nil {
		panic(err)
	}
	return a.Hangs[0]
}

// What a search returns is what Assess says of the same hang, and every
// neighbour beyond a reported edge fails the check that is named there.
func TestFoundHangsAndTheirEdges(t *testing.T) {
	found, edges := 0, 0
	for n := range 25 {
		s := drawn(t, n)
		aim := Aims()[n%3]
		for _, place := range search(t, s, Options{Aim: aim, Groups: []string{"small", "two-small"}}).Trees[0].Places {
			if place.Best == nil {
				continue
			}
			found++
			checkSame(t, n, place, with(s, place.Best.Hang))
			for name, edge := range map[string]*Edge{"nearer": place.Best.Nearer, "farther": place.Best.Farther, "shorter": place.Best.Shorter, "longer": place.Best.Longer} {
				if edge != nil {
					edges++
					checkEdge(t, fmt.Sprintf("tree %d, %s, %s", n, place.Limb, name), s, place.Best.Hang, name, edge)
				}
			}
		}
	}
	t.Logf("%d hangs with %d edges", found, edges)
	if found < 20 || edges < 60 {
		t.Errorf("%d hangs with %d edges, want at least 20 and 60", found, edges)
	}
}

func checkSame(t *testing.T, n int, place Place, again assess.Hang) {
	t.Helper()
	if again.Outcome != place.Best.Outcome || len(again.Checks) != len(place.Best.Judged.Checks) {
		t.Errorf("tree %d, %s for %s: found as %v, assessed as %v", n, place.Limb, place.Riders, place.Best.Outcome, again.Outcome)
		return
	}
	for i, c := range again.Checks {
		if was := place.Best.Judged.Checks[i]; c.Code != was.Code || math.Abs(c.Margin/was.Margin-1) > 1e-9 {
			t.Errorf("tree %d, %s: %s of margin %v was found as %s of %v", n, place.Limb, c.Code, c.Margin, was.Code, was.Margin)
		}
	}
	if again.Limits != nil && (again.Limits.Mass < again.Asked.Mass || again.Limits.Line != again.Asked.Line || again.Limits.Amplitude < again.Asked.Amplitude) {
		t.Errorf("tree %d, %s: the limits %+v are less than was found", n, place.Limb, again.Limits.Use)
	}
}

func checkEdge(t *testing.T, what string, s *survey.Survey, h survey.Hang, name string, edge *Edge) {
	t.Helper()
	if name == "nearer" || name == "farther" {
		h.At.Value = edge.At
	} else {
		h.Line.Value = edge.At
	}
	for _, c := range with(s, h).Checks {
		if c.Code == edge.Bind.Code && c.Margin < 1 {
			return
		}
	}
	t.Errorf("%s at %v m: %s does not fail there", what, edge.At, edge.Bind.Code)
}

// All lines that serve at a spot, found from a few, are those of a full scan
// in steps of 1 cm, at 200 spots of drawn trees.
func TestRunsMatchAFullScan(t *testing.T) {
	spots, served, lost := 0, 0, 0
	for n := 0; spots < 200; n++ {
		s := drawn(t, n)
		prospects, err := assess.Prospects(s, tables())
		if err != nil {
			t.Fatal(err)
		}
		o := Options{}.filled(s)
		f := finderFor(pointsOn(prospects[0], prospects[0].Limbs()[0]), o, "small", chainFor(s))
		f.amplitude = 40 * quantity.Degree
		for along := centimetres(100); along < f.last(); along += 150 {
			heading, _ := f.square(along)
			at := spot{along, turned(heading, degrees(10*(n%9)-40))}
			w, err := f.swing(at)
			if err != nil {
				t.Fatal(err)
			}
			l := f.linesAt(at, w)
			want := fullScan(l)
			spots++
			served += len(want)
			lost += compareRuns(t, n, at, l, want)
		}
	}
	t.Logf("%d spots, %d lines serve, %d of them lost", spots, served, lost)
	if served < 500 {
		t.Errorf("only %d lines serve", served)
	}
}

// fullScan tries every line.
func fullScan(l lines) map[centimetres]bool {
	serve := map[centimetres]bool{}
	for line := l.shortest; line <= l.longest; line++ {
		if l.try(line).Holds() {
			serve[line] = true
		}
	}
	return serve
}

func compareRuns(t *testing.T, n int, at spot, l lines, want map[centimetres]bool) (lost int) {
	t.Helper()
	runs, _, _ := l.runs()
	got := map[centimetres]bool{}
	for _, r := range runs {
		for line := r.from; line <= r.to; line++ {
			got[line] = true
		}
	}
	for line := l.shortest; line <= l.longest; line++ {
		if got[line] != want[line] {
			t.Errorf("tree %d, %d cm along, %d deg: a line of %d cm serves %v, found %v", n, at.along, at.heading, line, want[line], got[line])
			return 1
		}
	}
	return 0
}
