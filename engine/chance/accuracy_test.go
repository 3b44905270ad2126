package chance

import (
	"fmt"
	"testing"

	"boughline/quantity"
)

// designMultiple is the 95 % value over the mean of a ride.
func designMultiple(cov float64) float64 {
	law, _ := LognormalOf(1, cov)
	return law.At(1.645)
}

// Limbs from hopeless to far too strong, from nearly all ride to nearly all own weight.
func TestChanceMatchesTheSlowReference(t *testing.T) {
	for _, margin := range []float64{0.8, 2, 4, 9} {
		for _, selfToRide := range []float64{0.1, 1, 10} {
			for _, cov := range []struct{ strength, modulus, self, ride, test float64 }{
				{0.25, 0.02, 0.2, 0.25, 1.25}, {0.35, 0.15, 0.7, 0.08, 1}, {0.45, 0.5, 0.7, 0.03, 1.25},
			} {
				ride := 37e3 / margin / (1 + selfToRide)
				c := LimbCase{
					Strength:       Variable[quantity.Stress]{Mean: 37e6, CoV: cov.strength},
					SectionModulus: Variable[quantity.Volume]{Mean: 1e-3, CoV: cov.modulus},
					SelfMoment:     Variable[quantity.Moment]{Mean: quantity.Moment(ride * selfToRide), CoV: cov.self},
					RideMoment:     Variable[quantity.Moment]{Mean: quantity.Moment(ride), CoV: cov.ride},
					TestMoment:     quantity.Moment(ride * cov.test * designMultiple(cov.ride)),
					LastingCoV:     0.1,
				}
				got := mustChance(t, c)
				prior, ownWeight, loadTest := reference(c)
				name := fmt.Sprintf("margin %v, own moment %v rides, %+v:", margin, selfToRide, cov)
				near(t, name+" prior", got.Prior.Probability, prior, 1e-9)
				near(t, name+" given own weight", got.GivenOwnWeight.Probability, ownWeight, 1e-9)
				near(t, name+" given load test", got.GivenLoadTest.Probability, loadTest, allowed(loadTest))
			}
		}
	}
}

// allowed is the relative error that Chance claims.
func allowed(probability float64) float64 {
	if probability < 1e-11 {
		return 1e-2
	}
	return 1e-5
}

// A test 1.25 times as heavy as the ride proves more of a limb the more the ride
// outweighs the own moment: a heavier ride with its test can have the lower chance.
func TestHeavierRideWithItsTestCanLowerTheChance(t *testing.T) {
	c := oakLimb()
	c.Strength.Mean, c.SectionModulus.CoV = 21e6, 0.5
	at := func(ride quantity.Moment) float64 {
		c.RideMoment.Mean, c.TestMoment = ride, 1.25*ride*quantity.Moment(designMultiple(c.RideMoment.CoV))
		_, _, loadTest := reference(c)
		got := mustChance(t, c).GivenLoadTest.Probability
		near(t, "given load test", got, loadTest, 1e-5)
		return got
	}
	if light, heavy := at(800), at(11000); !(heavy < light/2) {
		t.Errorf("chance %v with a ride of 800 N m, %v with 11000", light, heavy)
	}
}
