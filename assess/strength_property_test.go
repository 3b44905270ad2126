package assess_test

import (
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/survey"
)

// The checks that wood, union, gear, stem and roots can fail under riders.
var (
	ofWood   = []assess.Code{assess.LimbBending, assess.UnionBending, assess.LimbRepeated, assess.LimbJerk, assess.LimbAcrossGrain}
	ofShear  = []assess.Code{assess.LimbShear}
	ofWind   = []assess.Code{assess.LimbInWind, assess.UnionInWind, assess.StemBending, assess.RootPlate}
	ofChance = []assess.Code{assess.LimbChance, assess.UnionChance}
	ofGear   = []assess.Code{assess.GearLink}
)

func codes(lists ...[]assess.Code) (all []assess.Code) {
	for _, list := range lists {
		all = append(all, list...)
	}
	return all
}

// Heavier riders never make anything better.
func TestHeavierRider(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) { heavier(s, d.between(1.1, 2)) }),
		both(noBetter(codes(ofWood, ofShear, ofWind, ofChance, ofGear)...), noBetterOutcome))
}

// A thinner limb never bears more.
func TestThinnerLimb(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) { scaleLimb(s, hang(s).Member, d.between(0.6, 0.95)) }),
		noBetter(codes(ofWood, ofShear, ofChance)...))
}

// A hang farther out never finds more strength.
func TestLongerArm(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) { fartherOut(s, d.between(1.1, 2)) }),
		noBetter(codes(ofWood, ofShear, ofChance)...))
}

func fartherOut(s *survey.Survey, factor float64) {
	h := hang(s)
	h.At.Value = min(h.At.Value*quantity.Length(factor), 5.5)
}
