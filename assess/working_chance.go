package assess

import (
	"boughline/engine/chance"
	"boughline/engine/swing"
	"boughline/quantity"
)

// workChance states the laws of a section. The chance itself is an integral
// over five variables, which no pocket calculator does: it goes in as found.
func (r *rig) workChance(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	limb, mean := r.limbCase(u, at, unfavourable), r.meanOf(u)
	perNewton, dynamic := r.momentPerNewton(at), r.dynamicFactor(u.mass+r.riders.seat, u.line)
	peak := swing.PeakPull(mean.mass, angle(r.rules.designAmplitude))
	r.workMean(w)
	strength := "f_mean"
	if at.along == 0 {
		r.workForm(w, at.on)
		strength = "f_mean*k_form"
	}
	w.follows("R", "strength of the limb, mean", strength, float64(limb.Strength.Mean), "Pa")
	w.input("V_R", "variation of it", limb.Strength.CoV, "1", r.rules.modelCoV.Ref)
	w.input("W", "least section modulus inside bark, mean", float64(limb.SectionModulus.Mean), "m3")
	w.input("V_W", "variation of it", limb.SectionModulus.CoV, "1")
	w.input("S", "moment of own weight, mean, by the space frame of the limb", float64(limb.SelfMoment.Mean), "N m")
	w.input("V_S", "variation of it", limb.SelfMoment.CoV, "1")
	w.input("l_v", "moment for 1 N straight down at the hang point, by the space frame", perNewton, "N m/N")
	w.input("m_m", "riders, seat and line, mean", float64(mean.mass), "kg")
	w.input("a", "amplitude that strength is checked at", angle(r.rules.designAmplitude).Degrees(), "deg", r.rules.designAmplitude.Ref)
	w.input("D", "dynamic factor of the limb that gives way, by integrating the motion of swing and limb", dynamic, "1")
	w.follows("T_m", "greatest pull of riders of that mass", "m_m*9.80665*(3 - 2*cos(a))", float64(peak), "N")
	w.follows("Q", "moment of the season's hardest ride, mean", "l_v*D*T_m", float64(limb.RideMoment.Mean), "N m")
	w.input("V_Q", "variation of it", limb.RideMoment.CoV, "1")
	r.workTestMoment(w, u, limb.TestMoment)
	w.given(factTerm("V_K", "variation of what a test tells of the next ride", r.rules.lastingCoV))
	w.given(Term{Symbol: "beta", Name: "reliability index, by integrating the laws above; the least for these riders and all lighter ones", Value: c.Capacity, Unit: "1"})
	w.follows("p", "chance of failure in a year", "Phi(-beta)", chance.Probability(c.Capacity), "1")
	w.given(factTerm("beta_t", "target reliability index for a year of outings", r.rules.targetBeta))
	w.asked(c, "beta_t")
	w.borne(c, "beta")
}

// workTestMoment works out the moment of the planned load test.
func (r *rig) workTestMoment(w *workbook, u trial, moment quantity.Moment) {
	r.workPeak(w, u, swing.PeakPull(u.mass+r.riders.seat, angle(r.rules.designAmplitude)))
	w.given(factTerm("k_T", "load test over greatest pull", r.rules.testFactor))
	w.follows("M_T", "moment of the load test", "l_v*k_T*D*T", float64(moment), "N m")
}
