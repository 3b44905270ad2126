package chance

import (
	"math"
	"testing"

	"boughline/quantity"
)

// mean of a curve by the trapezoidal rule.
func meanOf(list []Density) float64 {
	sum, area := 0.0, 0.0
	for _, d := range list {
		sum += d.Value * d.Density
		area += d.Density
	}
	return sum / area
}

func densityCase() LimbCase {
	return LimbCase{
		Strength:       Variable[quantity.Stress]{Mean: 42e6, CoV: 0.28},
		SectionModulus: Variable[quantity.Volume]{Mean: 1e-3, CoV: 0.1},
		SelfMoment:     Variable[quantity.Moment]{Mean: 4e3, CoV: 0.2},
		RideMoment:     Variable[quantity.Moment]{Mean: 9e3, CoV: 0.15},
		LastingCoV:     0.1,
	}
}

// Means of sums add, whatever the laws; without a test the strength is the
// product of its lognormal factors, cut at the own moment far below it.
func TestDensitiesHaveTheMeansOfTheirLaws(t *testing.T) {
	c := densityCase()
	d, err := c.Densities()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mean of the load", meanOf(d.Load), 13e3, 2e-3)
	near(t, "mean of the strength", meanOf(d.Strength), 42e3, 1e-2)
}

// A test known almost exactly cuts the strength off at its load: the truncated
// lognormal law, whose mean is known in closed form (Johnson, Kotz & Balakrishnan,
// 1994, Continuous Univariate Distributions 1, ch. 14, from memory).
func TestATestCutsTheStrengthOff(t *testing.T) {
	c := densityCase()
	c.SectionModulus.CoV, c.SelfMoment = 0, Variable[quantity.Moment]{Mean: 1, CoV: 0.01}
	c.TestMoment, c.LastingCoV = 40e3, leastLasting
	d, err := c.Densities()
	if err != nil {
		t.Fatal(err)
	}
	law, _ := LognormalOf(42e3, 0.28)
	want, _ := Above{law, 40e3}.Moments()
	near(t, "mean of the strength", meanOf(d.Strength), want, 1e-2)
	for _, point := range d.Strength {
		if point.Value < 36e3 && point.Density > 1e-8 {
			t.Errorf("%.0f N m has the density %g below the test", point.Value, point.Density)
		}
	}
}

func TestDensitiesOfALimbThatCannotBe(t *testing.T) {
	c := densityCase()
	c.Strength.Mean = quantity.Stress(math.NaN())
	if _, err := c.Densities(); err == nil {
		t.Error("a strength that is no number has a density")
	}
}
