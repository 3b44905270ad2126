package gear

import (
	"math"
	"testing"

	"boughline/quantity"
)

// Pull in each of two legs for a load of 1: 1/(2 sin); the angle factor of the
// tables of OSHA 1910.184 and ASME B30.9 is the sine.
func TestLegPull(t *testing.T) {
	for _, row := range []struct{ angle, pull, factor float64 }{
		{75, 0.5176, 0.9659}, {60, 0.5774, 0.8660}, {45, 0.7071, 0.7071}, {30, 1, 0.5}, {15, 1.932, math.NaN()},
	} {
		got, err := LegPull(2, quantity.Angle(row.angle)*quantity.Degree)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pull", got, row.pull, 2e-4)
		if !math.IsNaN(row.factor) {
			near(t, "angle factor", 1/(2*got), row.factor, 5e-5)
		}
	}
	if _, err := LegPull(2, 0); err == nil {
		t.Error("level legs have a pull")
	}
}

// Web sling sheets of two makers, after ASME B30.9.
func TestChokeShare(t *testing.T) {
	for angle, want := range map[float64]float64{
		180: 1, 135: 1, 121: 1, 119: 0.87, 90: 0.87, 89: 0.74, 60: 0.74, 59: 0.62, 30: 0.62, 29: 0.49, 0: 0.49,
	} {
		got, err := ChokeShare(quantity.Angle(angle)*quantity.Degree, factors.ChokeAngles)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "share", float64(got), want, 1e-12)
	}
}

// Rows of wire rope handbooks, from memory.
func TestBendShare(t *testing.T) {
	for ratio, want := range map[float64]float64{1: 0.5, 4: 0.75, 16: 0.875, 25: 0.9} {
		got, err := BendShare(quantity.Length(ratio*0.012), 0.012)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "share", float64(got), want, 1e-12)
	}
}

// Closed form, to four places.
func TestCapstanRatio(t *testing.T) {
	for friction, want := range map[float64][2]float64{
		0.1: {1.3691, 1.8745}, 0.2: {1.8745, 3.5136}, 0.3: {2.5663, 6.5861}, 0.4: {3.5136, 12.3453}, 0.5: {4.8105, 23.1407},
	} {
		for i, wrap := range []quantity.Angle{math.Pi, 2 * math.Pi} {
			got, err := CapstanRatio(friction, wrap)
			if err != nil {
				t.Fatal(err)
			}
			near(t, "ratio", got, want[i], 5e-5)
		}
	}
	// Friction 0.25, three turns: about 111 (a worked answer in a text on rope work).
	got, err := CapstanRatio(0.25, 6*math.Pi)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "three turns", got, 111.3, 0.05)
	// The wrap that holds is the inverse of the ratio.
	wrap, err := WrapToHold(111.3178, 1, 0.25)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "wrap", float64(wrap), 6*math.Pi, 1e-5)
}

// tan(11.31 deg) = 0.2.
func TestAnchorsCreepBeyondTheAngleOfFriction(t *testing.T) {
	got, err := CreepAngle(0.2)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "angle", got.Degrees(), 11.31, 5e-3)
}

// EN 1891: at most 5 % from 50 to 150 kg, so EA is at least 19.6 kN; 32.7 kN
// at 3 %, 49.0 kN at 2 %.
func TestAxialStiffnessFromTheRopeStandard(t *testing.T) {
	for elongation, want := range map[quantity.Proportion]float64{0.05: 19613.3, 0.03: 32688.8, 0.02: 49033.25} {
		got, err := AxialStiffnessFrom(quantity.Mass(100).Weight(), elongation)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "EA", float64(got), want, 0.05)
	}
}

// Springs in a row and side by side: a rope of 5 m and 20 kN stretches 0.25 m
// under 1 kN; two plumb parts of 1 m share the pull, 0.025 m.
func TestStretch(t *testing.T) {
	chain := Chain{
		{Name: "sling", Parts: 2, PartPull: 0.5, Length: 1, AxialStiffness: 20000},
		{Name: "ring", Material: Metal, Length: 0.1},
		{Name: "rope", Length: 5, AxialStiffness: 20000},
	}
	each, total, err := chain.Stretch(1000)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []float64{0.025, 0, 0.25} {
		near(t, chain[i].Name, float64(each[i]), want, 1e-12)
	}
	near(t, "total", float64(total), 0.275, 1e-12)
	stiffness, err := chain.Stiffness()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "stiffness", float64(stiffness), 1000/0.275, 1e-8)
	if _, err := (Chain{{Name: "rope", Length: 5}}).Stiffness(); err == nil {
		t.Error("a rope without a stiffness does not stretch")
	}
}

// A plumb basket is rated 2.0 of one leg, a choker 0.75: web sling tables of the USA, from
// memory. So a basket bears a load that needs twice its strength in one leg.
func TestHitchRatings(t *testing.T) {
	plumb, err := LegPull(2, 90*quantity.Degree)
	if err != nil {
		t.Fatal(err)
	}
	got := check(t, 0, 1000,
		Link{Name: "vertical", Mark: Mark{Breaking, 10000}},
		Link{Name: "basket", Mark: Mark{Breaking, 10000}, Hitch: Basket, Parts: 2, PartPull: plumb},
		Link{Name: "choker", Mark: Mark{Breaking, 10000}, Hitch: Choker, ChokeAngle: 135 * quantity.Degree},
	)
	for i, rating := range []float64{1, 2, 0.75} {
		near(t, got.Links[i].Name, got.Links[i].Bearing.Margin, rating*10000/5000, 1e-9)
	}
}

// Cordage Institute: rope that grows 6 % at a tenth of its strength has EA of
// 1.67 times it, at 10 % once its strength.
func TestStiffnessOfLowStretchRope(t *testing.T) {
	for elongation, want := range map[quantity.Proportion]float64{0.06: 1.6667, 0.10: 1} {
		got, err := AxialStiffnessFrom(0.1*22000, elongation)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "EA over strength", float64(got)/22000, want, 5e-5)
	}
}
