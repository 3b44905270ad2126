package figure_test

import (
	"math"
	"strings"
	"testing"

	"boughline/engine/section"
	"boughline/quantity"
	"boughline/sheet/figure"
)

// hollow is an invented section with a closed decay and one that reaches the
// edge.
func hollow() figure.SectionInput {
	return figure.SectionInput{
		Key: "hollow", Title: "Limb cut 0.4 m from its foot",
		Outline:  section.Ellipse(section.Point{}, 0.16, 0.14, 0),
		Wood:     section.Ellipse(section.Point{}, 0.15, 0.13, 0),
		Cavities: []section.Ring{section.Circle(section.Point{X: 0.03, Y: 0.02}, 0.05), section.Circle(section.Point{X: -0.11, Y: -0.03}, 0.025)},
		Notes:    []string{"Sounded at eight angles."},
	}
}

// normal is a bell about a mean, for shape alone.
func normal(mean, sd float64) []figure.DensityPoint {
	var list []figure.DensityPoint
	for i := -40; i <= 40; i++ {
		z := float64(i) / 10
		list = append(list, figure.DensityPoint{Value: mean + z*sd, Density: math.Exp(-z*z/2) / sd})
	}
	return list
}

func chanceInput() figure.ChanceInput {
	return figure.ChanceInput{
		Key: "invented", Title: "Chance that the limb fails in a year of outings",
		Load: normal(11, 2), Strength: normal(32, 5), Quantity: "fibre stress, MPa",
		Beta: 3.9, Low: 3.4, High: 4.5, Target: 4.3,
	}
}

func bandInput() figure.BandInput {
	in := figure.BandInput{Key: "invented", Title: "Where the limb serves, and with which line", Limb: 8, Longest: 5, At: 2.6, Line: 3.4, Marked: true}
	for i := range 32 {
		from, to := quantity.Length(i)/4, quantity.Length(i+1)/4
		run := func(a, b quantity.Length, code, words string) {
			in.Runs = append(in.Runs, figure.BandRun{From: from, To: to, Shortest: a, Longer: b, Binding: code, Words: words})
		}
		switch {
		case i < 5:
			run(0.5, 5, "stem-clearance", "room between swing and stem")
		case i < 14:
			run(0.5, 1.5, "limb-jerk", "jerk of a slack line")
			run(1.5, 3.6, "", "")
			run(3.6, 5, "foot-clearance", "room under the feet")
		default:
			run(0.5, 5, "limb-bending", "bending of the limb")
		}
	}
	return in
}

func TestChanceSaysOnWhichSideOfItsLimit(t *testing.T) {
	in := chanceInput()
	if says := strings.Join(figure.Chance(in).Says, " "); !strings.Contains(says, "falls short") || !strings.Contains(says, "3.90") {
		t.Errorf("below the target it says %q", says)
	}
	in.Beta, in.Load = 4.3, nil // exactly met, and no densities known
	if says := strings.Join(figure.Chance(in).Says, " "); !strings.Contains(says, "which meets it") {
		t.Errorf("at the target it says %q", says)
	}
	in.Beta = 4.299 // rounding must not lift it over its limit
	if says := strings.Join(figure.Chance(in).Says, " "); !strings.Contains(says, "4.29,") || !strings.Contains(says, "falls short") {
		t.Errorf("just below the target it says %q", says)
	}
}

func TestBandSaysWhereNothingHolds(t *testing.T) {
	in := bandInput()
	if says := strings.Join(figure.Band(in).Says, " "); !strings.Contains(says, "between 1.25\u00a0m and 3.5\u00a0m") {
		t.Errorf("it says %q", says)
	}
	if says := strings.Join(figure.Band(in).Says, " "); !strings.Contains(says, "farther off others may fail") {
		t.Errorf("it names a check for all that is hatched: %q", says)
	}
	for i := range in.Runs {
		in.Runs[i].Binding = "limb-bending"
	}
	if says := strings.Join(figure.Band(in).Says, " "); !strings.Contains(says, "Nowhere") {
		t.Errorf("without any feasible place it says %q", says)
	}
}
