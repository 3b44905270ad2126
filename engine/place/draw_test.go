package place

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/quantity"
)

// site is a limb over a ground with the limits of a search.
type site struct {
	limb    Limb
	room    Room
	rider   quantity.Mass
	allowed quantity.Stress
	foot    quantity.Length
	fall    quantity.Length
	grid    Grid
	from    quantity.Length // shortest line of the lowest fall
	bands   []quantity.Length
}

// level is a limb 5 m above level ground.
func level() site {
	return site{
		limb: Limb{Length: 5, Base: 0.22, Tip: 0.07, Density: 950},
		room: Room{
			Ground: space.Ground{Stations: []space.Point{{Along: -20}, {Along: 20}}}, HangHeight: 5,
			Amplitude: 60 * quantity.Degree, FootReach: 0.45,
		},
		rider: 75, allowed: 9e6, foot: 0.35, fall: 3,
		grid:  Grid{Axis{0.3, 4.8, 0.01}, Axis{1, 5, 0.01}},
		from:  3,
		bands: []quantity.Length{2, 2.5, 3, 3.5, 4, 4.1, 4.2, 4.5},
	}
}

func (s site) problem(t testing.TB) Problem {
	t.Helper()
	pull := swing.PeakPull(s.rider, 80*quantity.Degree)
	return Problem{
		Grid: s.grid,
		Constraints: []Constraint{
			must(s.limb.StressConstraint(pull, s.allowed))(t), must(s.room.FootConstraint(s.foot))(t),
			must(StemConstraint(space.SeatToFrame))(t), must(s.room.FallConstraint(s.fall))(t),
		},
		Aims:   []Aim{LongestLine(), s.room.LowestFall(s.from), MostInHand()},
		Bands:  s.bands,
		Counts: true,
	}
}

func must[T any](v T, err error) func(testing.TB) T {
	return func(t testing.TB) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func search(t testing.TB, p Problem) Result { return must(Search(p))(t) }
func refine(t testing.TB, p Problem) Result { return must(Refine(p))(t) }

// randomSite draws limbs and grounds of many kinds, some without any place.
func randomSite(r *rand.Rand) site {
	between := func(low, high float64) float64 { return low + (high-low)*r.Float64() }
	length := func(low, high float64) quantity.Length {
		return quantity.Length(math.Round(100*between(low, high)) / 100)
	}
	s := level()
	s.room.HangHeight = length(2, 6)
	s.room.RiseAlong = quantity.Proportion([]float64{0, between(-0.12, 0.12)}[r.IntN(2)])
	s.room.Ground = randomGround(r)
	s.limb = Limb{Length: length(2.5, 6), Base: length(0.1, 0.28), Tip: length(0.03, 0.1), Density: 900}
	s.rider = quantity.Mass(between(25, 90))
	s.allowed = quantity.Stress(between(4e6, 20e6))
	s.fall = []quantity.Length{1.5, 2, 3}[r.IntN(3)]
	step := []quantity.Length{0.02, 0.05}[r.IntN(2)]
	s.grid = Grid{Axis{0.3, s.limb.Length - 0.1, step}, Axis{0.6, s.room.HangHeight, step}}
	s.from = length(0.6, 3)
	for _, line := range s.grid.Line.Values() {
		if r.IntN(8) == 0 {
			s.bands = append(s.bands, line)
		}
	}
	s.bands = slices.DeleteFunc(s.bands, func(l quantity.Length) bool { _, ok := s.grid.Line.index(l); return !ok })
	return s
}

// randomGround is a slope with up to six corners, steps among them.
func randomGround(r *rand.Rand) space.Ground {
	g := space.Ground{Stations: []space.Point{{Along: -20, Height: quantity.Length(2*r.Float64() - 1)}}}
	x := -4 * r.Float64()
	for range r.IntN(6) {
		g.Stations = append(g.Stations, space.Point{Along: quantity.Length(x), Height: quantity.Length(r.Float64() - 0.5)})
		x += []float64{0.05, 0.3, 2}[r.IntN(3)] * (0.1 + r.Float64())
	}
	return space.Ground{Stations: append(g.Stations, space.Point{Along: 20, Height: quantity.Length(2*r.Float64() - 1)})}
}
