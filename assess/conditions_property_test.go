package assess_test

import (
	"testing"

	"boughline/survey"
)

// conditionedSites is the number of drawn sites whose looks say in what they
// were made.
const conditionedSites = 150

// conditioned gives every look of a site leaves and air, and hides a sign or
// two behind a stand-in.
func conditioned(d draw, s *survey.Survey) {
	for i := range s.Trees[0].Looks {
		l := &s.Trees[0].Looks[i]
		l.Leaves, l.Air = pick(d, "in leaf", "in leaf", "bare"), pick(d, "limbs move", "limbs move", "still")
	}
	if d.chance(0.3) {
		look(d, s).InTheWay = []string{pick(d, "snow", "litter", "ivy")}
	}
}

// lessSaid takes one thing away that a look says, or puts one more in its way.
func lessSaid(d draw, s *survey.Survey) {
	l := look(d, s)
	switch d.IntN(5) {
	case 0:
		l.Air = pick(d, "", "twigs move", "still")
	case 1: // the site still says that the crowns are in leaf
		l.Leaves, s.Wind.InLeaf = "", nil
	case 2:
		l.Leaves = "part in leaf"
	case 3:
		l.InTheWay = append(l.InTheWay, pick(d, "snow", "litter", "undergrowth", "ivy", "leaves"))
	case 4:
		l.State = pick(d, survey.LookNotDone, survey.LookBlocked)
	}
}

// What a look leaves unsaid never counts in favour, nor does more in its way.
func TestLessSaidOfALook(t *testing.T) {
	changed := 0
	for n := range conditionedSites {
		before, after := siteOf(n), siteOf(n)
		conditioned(drawOf(31, n), before)
		conditioned(drawOf(31, n), after)
		lessSaid(drawOf(32, n), after)
		p := pair{judge(before), judge(after), after}
		if faults := noBetterOutcome(p); len(faults) > 0 {
			t.Errorf("site %d: %v", n, faults)
		}
		if p.before.Outcome != p.after.Outcome {
			changed++
		}
	}
	if changed < conditionedSites/10 {
		t.Errorf("only %d of %d sites have another outcome", changed, conditionedSites)
	}
}

// One more hazard of the site, or one nearer, never improves an outcome.
func TestAHazardMoreOrNearer(t *testing.T) {
	hazards := tables().Hazards()
	for n := range conditionedSites {
		d := drawOf(33, n)
		before, nearer := siteOf(n), siteOf(n)
		h := survey.Hazard{ID: "H", Hazard: pick(d, hazards...).ID, Tree: "T1", Side: pointer(hangSide(before)), Distance: pointer(taped(d.between(0, 120)))}
		before.Hazards = []survey.Hazard{h}
		near := h
		near.Distance = pointer(hang(nearer).At)
		nearer.Hazards = []survey.Hazard{near}
		without, with, close := baseline()[n], judge(before), judge(nearer)
		if with.Outcome < without.Outcome || close.Outcome < with.Outcome {
			t.Errorf("site %d, %s: without %v, at %.0f m %v, near %v", n, h.Hazard, without.Outcome, float64(h.Distance.Value), with.Outcome, close.Outcome)
		}
	}
}
