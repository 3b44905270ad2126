package assess_test

import (
	"fmt"
	"slices"
	"sync"
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/survey"
)

// Signs that leave a mark wherever they count: those that bar, those for an
// arborist, those that want a closer look.
var (
	barring     = []string{"crown-04", "crown-07", "limb-01", "limb-02"}
	forArborist = []string{"crown-10", "limb-11", "limb-13"}
	forALook    = []string{"crown-08", "limb-06", "limb-15"}
	hanging     = []string{"crown-06", "crown-07"} // may be cleared away
)

// worseFindings are pairs of sites, the second with the same finding but worse:
// its closer look less good, its clearing undone, its place moved to the load
// path or above the people. In one pair of five it is a finding more, anything
// anywhere.
var worseFindings = sync.OnceValue(func() []pair {
	worse := []func(draw, *survey.Survey, *survey.Survey){worseLook, unclear, ontoLoadPath, abovePeople}
	list := make([]pair, sites())
	each(sites(), func(n int) {
		d, before, after := drawOf(3, n), siteOf(n), siteOf(n)
		if kind := n % (len(worse) + 1); kind < len(worse) {
			worse[kind](d, before, after)
			list[n] = pair{judge(before), judge(after), after}
			return
		}
		addFinding(d, after, pick(d, slices.Concat(memberSigns, treeSigns)...), pick(d, "", "L1", "L2", "stem"))
		list[n] = pair{baseline()[n], judge(after), after}
	})
	return list
})

// A worse finding never improves an outcome.
func TestWorseFinding(t *testing.T) {
	hold(t, 1.0/3, func(n int) pair { return worseFindings()[n] }, noBetterOutcome)
}

// Nor does one more finding.
func TestOneMoreFinding(t *testing.T) {
	hold(t, 1.0/3, func(n int) pair { p := worseFindings()[n]; p.before = baseline()[n]; return p }, noBetterOutcome)
}

// placeBoth adds the same finding to both sites.
func placeBoth(before, after *survey.Survey, f survey.Finding) (a, b *survey.Finding) {
	f.ID, f.SeenOn = "same", dayOf("2026-05-09")
	for _, s := range []*survey.Survey{before, after} {
		s.Trees[0].Findings = append(s.Trees[0].Findings, f)
	}
	return last(before), last(after)
}

func last(s *survey.Survey) *survey.Finding {
	list := s.Trees[0].Findings
	return &list[len(list)-1]
}

func worseLook(d draw, before, after *survey.Survey) {
	a, b := placeBoth(before, after, survey.Finding{Sign: pick(d, append(forALook, treeSigns...)...), Member: "L1", At: pointer(taped(d.between(0, 1)))})
	results := []string{survey.CloserClear, survey.CloserUnclear, survey.CloserWorse}
	good := d.IntN(2)
	a.Closer = &survey.CloserLook{On: dayOf("2026-05-10"), How: "binoculars", Result: results[good]}
	b.Closer = &survey.CloserLook{On: dayOf("2026-05-10"), How: "binoculars", Result: results[good+1+d.IntN(2-good)]}
	if good == 0 && d.chance(0.3) {
		b.Closer = nil
	}
}

func unclear(d draw, before, after *survey.Survey) {
	a, _ := placeBoth(before, after, survey.Finding{Sign: pick(d, hanging...), Side: pointer(hangSide(before)), Distance: pointer(taped(d.between(0, 3)))})
	a.Cleared = &survey.Cleared{On: dayOf("2026-05-12"), How: "taken down"}
}

// hangSide is the side of the stem on which the hang's limb grows, about.
func hangSide(s *survey.Survey) survey.MeasuredAngle {
	return angleBy(quantity.Compass, hang(s).WayIn[0].Azimuth.Value.Degrees())
}

func ontoLoadPath(d draw, before, after *survey.Survey) {
	_, b := placeBoth(before, after, survey.Finding{Sign: pick(d, slices.Concat(barring, forArborist, forALook)...), Member: "L2", At: pointer(taped(5.5))})
	b.Member, b.At = "L1", pointer(taped(d.between(0, 0.8)))
}

func abovePeople(d draw, before, after *survey.Survey) {
	away := hangSide(before)
	away.Value += 180 * quantity.Degree
	_, b := placeBoth(before, after, survey.Finding{Sign: pick(d, slices.Concat(barring, forArborist, hanging)...), Side: &away, Distance: pointer(taped(30))})
	b.Side, b.Distance = pointer(hangSide(after)), pointer(hang(after).At)
}

// What was not looked at never counts in favour: a look that was not done,
// could not be made, is not there, or could not show a sign.
func TestLookNotDone(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) {
		tree := &s.Trees[0]
		i := d.IntN(len(tree.Looks))
		switch d.IntN(4) {
		case 0:
			tree.Looks[i].State = survey.LookNotDone
		case 1:
			tree.Looks[i].State = survey.LookBlocked
		case 2:
			tree.Looks = slices.Delete(tree.Looks, i, i+1)
		case 3:
			hideSign(d, &tree.Looks[i])
		}
	}), noBetterOutcome)
}

// A diameter by eye never gives a rideable outcome, however thick it says the
// limb is.
func TestDiameterByEyeNeverRides(t *testing.T) {
	hold(t, 1.0/3, changed(func(d draw, s *survey.Survey) {
		m := member(s, pick(d, hang(s).Member, hang(s).Member, "stem"))
		if m.ID != "stem" {
			scaleLimb(s, m.ID, d.between(1, 2))
		}
		m.Stations[0].Girth.How = pick(d, quantity.ByEye, quantity.NotStated, quantity.Assumed, quantity.FromTable)
	}), func(p pair) []string {
		if p.after.Outcome.Rideable() {
			return []string{fmt.Sprint(p.after.Outcome)}
		}
		return nil
	})
}

// Line and declared amplitude belong to space: they leave every margin of
// bending, shear, repeated load and gear as it is, and cure none. (In wind, and
// for the chance, a line counts by how the limb and the tree sway with it.)
func TestLineAndAmplitudeLeaveStrength(t *testing.T) {
	strength := []assess.Code{assess.LimbBending, assess.UnionBending, assess.LimbRepeated, assess.LimbAcrossGrain, assess.LimbShear, assess.GearLink}
	hold(t, 0, changed(func(d draw, s *survey.Survey) {
		hang(s).Line, hang(s).Amplitude = metres(d.between(1, 8)), degrees(d.between(5, 100))
	}), func(p pair) (faults []string) {
		after := checksOf(p.after, strength...)
		for name, c := range checksOf(p.before, strength...) {
			if a := after[name]; a.Margin != c.Margin || a.Alone != c.Alone {
				faults = append(faults, fmt.Sprintf("%s: margin from %v to %v, alone from %v to %v", name, c.Margin, a.Margin, c.Alone, a.Alone))
			}
			if p.after.Outcome < c.Alone {
				faults = append(faults, fmt.Sprintf("%s leads to %v, the hang to %v", name, c.Alone, p.after.Outcome))
			}
		}
		return faults
	})
}
