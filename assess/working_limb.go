package assess

import (
	"math"

	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
)

// workLoads works out the loads that govern a cut in a check of bending, and
// with them the section forces asked for.
func (r *rig) workLoads(w *workbook, code Code, u trial, c *cut, which int) loads {
	factor, wind, factors := r.rules.rideFactor.Value, 0.0, "gamma_Q*"
	w.given(factTerm("gamma_Q", "load factor on riders", r.rules.rideFactor))
	if code == LimbInWind || code == UnionInWind {
		share, height := r.shareOfCrown(), quantity.Length(r.on.position(r.on.length()/2).Z)
		factor *= r.dynamicFactor(u.mass+r.riders.seat, u.line)
		wind = r.rules.windFactor.Value * float64(r.air.onLimb(u.gust, share, height, unfavourable))
		factors = "gamma_Q*D*"
		w.input("D", "dynamic factor of the limb that gives way, by integrating the motion of swing and limb", r.dynamicFactor(u.mass+r.riders.seat, u.line), "1")
	}
	p := r.swings(u, angle(r.rules.designAmplitude), factor, wind).greatest(func(l loads) float64 { return c.stress(l, unfavourable) }, 0)
	if wind != 0 {
		w.given(r.gustTerm(u), r.dragTerm(), factTerm("gamma_W", "load factor on wind", r.rules.windFactor))
		w.input("F_w0", "wind on the limb, by its share of the crown and the gust at its height", math.Abs(p.loads.wind)/r.rules.windFactor.Value, "N")
		sign := "gamma_W*F_w0"
		if p.loads.wind < 0 {
			sign = "-gamma_W*F_w0"
		}
		w.follows("F_w", "factored, square to the limb in plan, to the side that is worse", sign, p.loads.wind, "N")
	}
	r.workPull(w, u, angle(r.rules.designAmplitude), p.at, p.loads.pull, factors)
	w.workForces(r.unitParts(c, which), p.loads, p.loads.pull.Dot(r.heading))
	return p.loads
}

const stressFormula = "abs(N)/A + sqrt((M_u/W_u)^2 + (M_s/W_s)^2)"

func (r *rig) workBending(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	r.workLoads(w, c.Code, u, at, axialPart|bendingParts)
	r.workOutline(w, at.on, at.along, at.section.thin)
	w.asked(c, stressFormula)
	r.workStrength(w)
	w.borne(c, "f_d")
}

func (r *rig) workUnion(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	l := r.workLoads(w, c.Code, u, at, axialPart|bendingParts)
	r.workOutline(w, at.on, at.along, at.section.thin)
	w.asked(c, "sqrt(M_u^2 + M_s^2)")
	w.follows("sigma", "greatest stress along the grain", stressFormula, at.stress(l, unfavourable), "Pa")
	r.workStrength(w)
	r.workForm(w, at.on)
	w.borne(c, "asked/sigma*f_d*k_form")
}

func (r *rig) workShear(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	p := r.swings(u, angle(r.rules.designAmplitude), r.rules.rideFactor.Value, 0).greatest(func(l loads) float64 {
		return float64(at.outline(unfavourable).Shear(at.forces(l, unfavourable)))
	}, 0)
	w.given(factTerm("gamma_Q", "load factor on riders", r.rules.rideFactor))
	r.workPull(w, u, angle(r.rules.designAmplitude), p.at, p.loads.pull, "gamma_Q*")
	w.workForces(r.unitParts(at, shearParts|twistPart), p.loads, p.loads.pull.Dot(r.heading))
	r.workOutline(w, at.on, at.along, at.section.thin)
	w.asked(c, "4/3*sqrt(V_u^2 + V_s^2)/A + 2*abs(T_t)/(3.14159265*max(d_u, d_s)/2*(min(d_u, d_s)/2)^2)")
	w.given(factTerm("f_v", "shear strength of clear green wood, mean", r.species.wood.Shear), factTerm("V_v", "variation of it", r.rules.shearCoV),
		factTerm("k_m", "strength of a limb by that of clear wood", r.rules.memberFactor), factTerm("V_m", "variation of that share", r.rules.memberCoV),
		factTerm("gamma_M", "material factor", r.rules.materialFactor))
	cov := math.Sqrt((1+r.rules.shearCoV.Value*r.rules.shearCoV.Value)*(1+r.rules.memberCoV.Value*r.rules.memberCoV.Value) - 1)
	w.follows("v_ln", "standard deviation of the logarithm of the two together", "sqrt(ln((1 + V_v^2)*(1 + V_m^2)))", math.Sqrt(math.Log1p(cov*cov)), "1")
	w.borne(c, "f_v*k_m*exp(-v_ln^2/2 - 1.645*v_ln)/gamma_M")
}

func (r *rig) workRepeated(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	oneWay, reversing := r.repeatedLimit(false), r.repeatedLimit(true)
	p := r.swings(u, angle(r.rules.spaceAmplitude), 1, 0).greatest(func(l loads) float64 {
		up, across := at.bending(l, unfavourable)
		return up/oneWay + across/reversing
	}, 0)
	r.workPull(w, u, angle(r.rules.spaceAmplitude), p.at, p.loads.pull, "")
	w.workForces(r.unitParts(at, axialPart|bendingParts), p.loads, p.loads.pull.Dot(r.heading))
	r.workOutline(w, at.on, at.along, at.section.thin)
	r.workMean(w)
	w.given(factTerm("k_1", "share of strength for bending one way", r.rules.oneWayShare), factTerm("k_2", "share of strength for bending to and fro", r.rules.reversingShare),
		factTerm("f_p", "bending proportional limit of clear green wood", r.species.wood.ProportionalLimit))
	w.follows("f_1", "stress borne again and again, one way", "min(k_1*f_mean, k_m*f_p)", oneWay, "Pa")
	w.follows("f_2", "to and fro", "min(k_2*f_mean, k_m*f_p)", reversing, "Pa")
	w.asked(c, "(abs(M_u)/W_u + abs(N)/A)/f_1 + abs(M_s)/W_s/f_2")
	w.borne(c, "1")
}

func (r *rig) workAcrossGrain(w *workbook, c *Check, u trial) {
	part, _ := r.cutOfCheck(c)
	factor := r.k.Parameter(knowledge.AcrossGrainFactor)
	limit := r.k.Parameter(r.byGroup(knowledge.AcrossGrainLimitBroadleaf, knowledge.AcrossGrainLimitConifer))
	for _, b := range r.bends(part) {
		if quantity.Length(b.cut.along) != c.Where.Along {
			continue
		}
		straightening := func(v quantity.Vec3) float64 { return -v.Dot(b.normal) }
		p := r.swings(u, angle(r.rules.designAmplitude), r.rules.rideFactor.Value, 0).greatest(func(l loads) float64 { return straightening(b.cut.moment(l, unfavourable)) }, 0)
		w.given(factTerm("gamma_Q", "load factor on riders", r.rules.rideFactor))
		r.workPull(w, u, angle(r.rules.designAmplitude), p.at, p.loads.pull, "gamma_Q*")
		level := b.cut.far[0].Moment.Scale(r.heading.X).Add(b.cut.far[1].Moment.Scale(r.heading.Y))
		w.workForces([]unitPart{{"M_b", "moment that straightens the bend", "N m", "N m/N", straightening(b.cut.self.Moment),
			straightening(level), -straightening(b.cut.far[2].Moment), straightening(b.cut.wind.Moment)}}, p.loads, p.loads.pull.Dot(r.heading))
		r.workOutline(w, b.cut.on, b.cut.along, b.cut.section.thin)
		w.given(Term{Symbol: "R", Name: "radius of the bend", Value: float64(b.radius), Unit: "m", Path: part.on.path + ".path"}, factTerm("k_90", "tests over theory", factor))
		w.asked(c, "k_90*4*M_b/(3*3.14159265*min(d_u, d_s)^2/4*R)")
	}
	w.given(factTerm("f_t90", "tension across the grain that is borne", limit))
	w.borne(c, "f_t90")
}

func (r *rig) workJerk(w *workbook, c *Check, u trial) {
	_, at := r.cutOfCheck(c)
	r.workMass(w, u)
	weight := (u.mass + r.riders.seat).Weight()
	line := r.lineStiffness(u.line, stiffest)
	w.follows("W", "their weight", "m*9.80665", float64(weight), "N")
	w.input("s_l", "slack at mounting", float64(r.slack()), "m", r.rules.slack.Ref)
	w.input("k_limb", "stiffness of the limb at the hang point, by its space frame", float64(r.springs.vertical), "N/m")
	w.input("k_line", "stiffness of the line", float64(line), "N/m")
	w.follows("k_s", "stiffness of the two in series", "1/(1/k_limb + 1/k_line)", float64(swing.InSeries(line, r.springs.vertical)), "N/m")
	force := float64(swing.Jerk(weight, swing.InSeries(line, r.springs.vertical), r.slack()))
	w.follows("V", "force of the jerk, straight down", "W*(1 + sqrt(1 + 2*k_s*s_l/W))", force, "N")
	l := loads{pull: quantity.Vec3{Z: -force}}
	w.workForces(r.unitParts(at, axialPart|bendingParts), l, 0)
	r.workOutline(w, at.on, at.along, at.section.thin)
	w.asked(c, stressFormula)
	r.workStrength(w)
	if at.along != 0 {
		w.borne(c, "f_d")
		return
	}
	r.workForm(w, at.on)
	w.borne(c, "f_d*k_form")
}
