package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Impact force of 100 kg falling a share f of the line's length into a rope of
// given EA: m g (1 + sqrt(1 + 2 EA f / (m g))), the usual rope model, computed
// elsewhere. EA = 19613.3 N is 5 % stretch from 50 to 150 kg, the limit of
// EN 1891 (read second-hand).
func TestJerkOfRopeModel(t *testing.T) {
	for _, row := range [][3]float64{{30000, 0.3, 5295.0}, {30000, 1, 8713.8}, {19613.3, 0.3, 4516.5}} {
		for _, length := range []quantity.Length{2, 10} { // the length cancels
			stiffness := quantity.Stiffness(row[0]) / quantity.Stiffness(length)
			force := Jerk(quantity.Mass(100).Weight(), stiffness, quantity.Length(row[1])*length)
			within(t, "force", float64(force), row[2], 0.06)
		}
	}
}

// A load put on at once is borne twice: Timoshenko, Strength of Materials I
// (from memory).
func TestJerkWithoutSlackIsTwiceTheWeight(t *testing.T) {
	within(t, "force", float64(Jerk(700, 5000, 0)), 1400, 1e-9)
	within(t, "nobody", float64(Jerk(0, 5000, 0.3)), 0, 0)
}

// The closed form agrees with the motion of a rider falling into the line.
func TestJerkMatchesMotion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass := quantity.Mass(rapid.Float64Range(15, 150).Draw(t, "mass"))
		s := ElasticSwing{Length: quantity.Length(rapid.Float64Range(1, 12).Draw(t, "length")), Mass: mass,
			Stiffness: quantity.Stiffness(rapid.Float64Range(1000, 60000).Draw(t, "stiffness"))}
		slack := s.Length * quantity.Length(rapid.Float64Range(0.01, 0.5).Draw(t, "slack"))
		spans, err := s.Move(PlanarState{Depth: s.Length - slack}, 3)
		if err != nil {
			t.Fatal(err)
		}
		want := float64(Jerk(mass.Weight(), s.Stiffness, slack))
		if got := float64(spans[0].PeakPull.Value); math.Abs(got-want) > 1e-8*want {
			t.Errorf("motion gives %v N, closed form %v N", got, want)
		}
	})
}

// Short lines are stiffer and jerk harder; more slack and weight do too.
func TestJerkGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight := quantity.Force(rapid.Float64Range(100, 1500).Draw(t, "weight"))
		k := quantity.Stiffness(rapid.Float64Range(500, 50000).Draw(t, "stiffness"))
		slack := quantity.Length(rapid.Float64Range(0.01, 1).Draw(t, "slack"))
		force := Jerk(weight, k, slack)
		if Jerk(weight+1, k, slack) <= force || Jerk(weight, k*1.01, slack) <= force || Jerk(weight, k, slack*1.01) <= force {
			t.Error("the jerk does not grow")
		}
		limb := quantity.Stiffness(rapid.Float64Range(500, 50000).Draw(t, "limb"))
		both := InSeries(k, limb)
		if both >= k || both >= limb || both != InSeries(limb, k) {
			t.Errorf("springs of %v and %v in series give %v N/m", k, limb, both)
		}
	})
}

func TestInSeries(t *testing.T) {
	rigid := quantity.Stiffness(math.Inf(1))
	for _, c := range []struct{ a, b, want quantity.Stiffness }{
		{3000, 6000, 2000}, {3000, rigid, 3000}, {rigid, 3000, 3000}, {0, 3000, 0}, {0, 0, 0}, {rigid, rigid, rigid},
	} {
		if got := InSeries(c.a, c.b); got != c.want {
			t.Errorf("%v and %v: got %v, want %v", c.a, c.b, got, c.want)
		}
	}
}
