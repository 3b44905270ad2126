package assess_test

import (
	"fmt"
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
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) { heavier(s, d.between(1.4, 3.4)) }),
		both(noBetter(codes(ofWood, ofShear, ofWind, ofGear)...), unlessOfChance(noBetterOutcome), noBetterChance))
}

// unlessOfChance leaves out groups by age where a check of chance governs:
// groups of other ages differ in their scatter as well as in their weight.
func unlessOfChance(property func(pair) []string) func(pair) []string {
	return func(p pair) []string {
		if p.site.Riders[0].Each == nil && contains(ofChance, firstCode(p.before)) {
			return nil
		}
		return property(p)
	}
}

// noBetterChance holds the least of the checks of chance. The load test of the
// day grows with the pull and then proves more: for limbs far below the target
// that may raise the margin, never the outcome. Groups by age are left out.
func noBetterChance(p pair) []string {
	if p.site.Riders[0].Each == nil || len(p.after.Checks) == 0 {
		return nil
	}
	before, after := leastOf(p.before, ofChance), leastOf(p.after, ofChance)
	if after.Margin > before.Margin*(1+rounding) && after.Margin >= 1 || worstAlone(p.after, ofChance) < worstAlone(p.before, ofChance) {
		return []string{fmt.Sprintf("%s from %.6g, %v, to %s %.6g, %v", key(before), before.Margin, before.Alone, key(after), after.Margin, after.Alone)}
	}
	return nil
}

// worstAlone is the worst outcome that checks of some codes lead to.
func worstAlone(h assess.Hang, codes []assess.Code) assess.Outcome {
	worst := assess.MayHang
	for _, c := range h.Checks {
		if contains(codes, c.Code) {
			worst = max(worst, c.Alone)
		}
	}
	return worst
}

// leastOf is the check of the least margin among those of some codes; the
// checks of a hang stand in that order.
func leastOf(h assess.Hang, codes []assess.Code) assess.Check {
	for _, c := range h.Checks {
		if contains(codes, c.Code) {
			return c
		}
	}
	return assess.Check{}
}

// Thinner limbs never bear more: all limbs of the load path are scaled, for a
// lighter fork alone relieves the limb that it grows from.
func TestThinnerLimb(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) {
		factor := d.between(0.6, 0.95)
		for id := hang(s).Member; id != "stem"; id = member(s, id).Parent {
			scaleLimb(s, id, factor)
		}
	}), noBetter(codes(ofWood, ofShear, ofChance)...))
}

// A hang farther out never finds more strength.
func TestLongerArm(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) { fartherOut(s, d.between(1.4, 2.6)) }),
		both(noBetter(codes(ofWood, ofShear)...), noBetterChance))
}

// fartherOut moves the hang out by a factor, as far as the limb goes.
func fartherOut(s *survey.Survey, factor float64) {
	h := hang(s)
	h.At.Value = min(h.At.Value*quantity.Length(factor), 0.93*lengthOf(member(s, h.Member)))
}
