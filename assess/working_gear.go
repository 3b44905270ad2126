package assess

import (
	"fmt"

	"boughline/engine/gear"
	"boughline/engine/swing"
	"boughline/knowledge"
)

func (r *rig) workGear(w *workbook, c *Check, u trial) {
	mass := u.mass + r.riders.seat
	r.workPeak(w, u, swing.PeakPull(mass, angle(r.rules.designAmplitude)))
	w.follows("W", "resting weight", "m*9.80665", float64(mass.Weight()), "N")
	chain := r.links()
	result, err := chain.Check(mass.Weight(), swing.PeakPull(mass, angle(r.rules.designAmplitude)), r.factors())
	if err != nil || result.Weakest < 0 { // there is no such check then
		return
	}
	link, checked := chain[result.Weakest], result.Links[result.Weakest]
	w.given(Term{Symbol: "F_0", Name: "strength marked on " + link.Name, Value: float64(link.Mark.Value), Unit: "N", Path: element(r.gearAt+".parts", result.Weakest)})
	strength := "F_0"
	for i, reduction := range checked.Reductions {
		symbol := fmt.Sprintf("c_%d", i+1)
		w.input(symbol, "share that is kept: "+reduction.Cause, float64(reduction.Share), "1")
		strength += "*" + symbol
	}
	w.borne(c, strength)
	w.input("p", "share of the pull in one leg", legShare(link), "1")
	w.asked(c, r.workGearDemand(w, link))
}

// legShare is the pull in one part for each unit on the chain.
func legShare(l gear.Link) float64 {
	if l.PartPull == 0 {
		return 1
	}
	return l.PartPull
}

// workGearDemand adds the factors of a material and kind of mark and returns
// what they ask.
func (r *rig) workGearDemand(w *workbook, l gear.Link) string {
	working := l.Mark.Kind == gear.WorkingLimit
	if l.Material == gear.Metal {
		w.given(factTerm("k_M", "metal: times the greatest pull", r.k.Parameter(knowledge.MetalFactor)))
		if working {
			w.input("k_0", "factor that makers of steel gear have taken off a working limit", makersSteelFactor, "1")
			return "p*k_M/k_0*T"
		}
		return "p*k_M*T"
	}
	w.given(factTerm("k_W", "textile: times the resting weight", r.k.Parameter(knowledge.TextileFactorResting)))
	if working {
		w.input("k_0", "factor that makers of textile gear have taken off a working limit", makersTextileFactor, "1")
		return "p*max(k_W/k_0*W, T)"
	}
	w.given(factTerm("k_T", "textile: times the greatest pull", r.k.Parameter(knowledge.TextileFactorPull)))
	return "p*max(k_W*W, k_T*T)"
}

func (r *rig) workLoadTest(w *workbook, c *Check, u trial) {
	r.workPeak(w, u, swing.PeakPull(u.mass+r.riders.seat, angle(r.rules.designAmplitude)))
	w.given(factTerm("k_T", "load test over greatest pull", r.rules.testFactor))
	w.input("D", "dynamic factor of the limb that gives way, by integrating the motion of swing and limb", r.dynamicFactor(u.mass+r.riders.seat, u.line), "1")
	w.asked(c, "k_T*D*T")
	if test, path := r.testOfTheDay(); test != nil {
		w.given(Term{Symbol: "F_T", Name: "load that hung, low value", Value: float64(r.borneIn(test)), Unit: "N", Path: path})
	}
	w.borne(c, fmt.Sprintf("F_T*(1 + %g)", testTolerance))
}
