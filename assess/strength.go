package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/engine/swing"
	"boughline/engine/union"
	"boughline/engine/wood"
	"boughline/quantity"
	"boughline/source"
)

// strengthCheckers lists the checks of wood under the riders in still air.
func (r *rig) strengthCheckers() []checker {
	still := actions{wind: func(trial, scenario) float64 { return 0 }, dynamic: func(trial) float64 { return 1 }}
	var list []checker
	for i := range r.limbs {
		part := &r.limbs[i]
		list = append(list, r.unionChecker(UnionBending, part, still, byLighter))
		if len(part.cuts) > 1 {
			list = append(list, r.bendingChecker(LimbBending, part, still, byLighter))
		}
		list = append(list, r.shearChecker(part), r.repeatedChecker(part))
		if bends := r.bends(part); len(bends) > 0 {
			list = append(list, r.acrossGrainChecker(part, bends))
		}
	}
	if r.anchor != nil {
		return list
	}
	return append(list, r.jerkChecker())
}

// actions are what acts on the hang's limb at a trial beside the pull on a
// rigid support: the factored wind force, and the dynamic factor on the pull.
type actions struct {
	wind    func(trial, scenario) float64
	dynamic func(trial) float64
}

// bendingChecker compares the greatest fibre stress between union and hang
// point with the design strength of the wood.
func (r *rig) bendingChecker(code Code, part *limbPart, act actions, cured cure) checker {
	amplitude := angle(r.rules.designAmplitude)
	try := func(u trial, side scenario) figure {
		f := figure{capacity: float64(r.species.design)}
		for i := range part.cuts[1:] {
			c := &part.cuts[1+i]
			swings := r.swings(u, amplitude, r.rules.rideFactor.Value*act.dynamic(u), act.wind(u, side))
			if p := swings.greatest(func(l loads) float64 { return c.stress(l, side) }, f.demand); p.value >= f.demand {
				f.demand, f.where = p.value, place(c, p.at, code)
			}
		}
		return f
	}
	return checker{code: code, unit: "Pa", cure: cured, try: try, terms: func(u trial, f figure) []Term {
		return append(r.pullTerms(u), r.sectionTerms(part, f)...)
	}}
}

// stress is the greatest stress along the grain at a cut.
func (c *cut) stress(l loads, side scenario) float64 {
	fibre := c.outline(side).Worst(c.forces(l, side))
	return math.Abs(float64(fibre.Stress))
}

// unionChecker compares the bending moment at the foot of a limb with what
// the union bears.
func (r *rig) unionChecker(code Code, part *limbPart, act actions, cured cure) checker {
	c := &part.cuts[0]
	amplitude := angle(r.rules.designAmplitude)
	try := func(u trial, side scenario) figure {
		swings := r.swings(u, amplitude, r.rules.rideFactor.Value*act.dynamic(u), act.wind(u, side))
		p := swings.greatest(func(l loads) float64 { return c.stress(l, side) }, 0)
		capacity, moment := r.unionCapacity(part, c, p, side)
		return figure{moment, capacity, place(c, p.at, code)}
	}
	return checker{code: code, unit: "N m", cure: cured, try: try, terms: func(u trial, f figure) []Term {
		return append(append(r.pullTerms(u), r.sectionTerms(part, f)...), r.unionTerms(part)...)
	}}
}

// unionCapacity returns capacity and demand as moments: the section modulus is
// that in the direction of bending, with axial stress counted against it.
func (r *rig) unionCapacity(part *limbPart, c *cut, p peak, side scenario) (capacity, demand float64) {
	demand = momentOf(c.forces(p.loads, side))
	if demand == 0 {
		return greatestMargin, 0
	}
	u := union.Union{
		SectionModulus: quantity.Volume(demand / p.value), Strength: r.species.design,
		Aspect: r.aspect(part.on, side), Form: r.rules.form,
		BarkIncluded: r.barkIncluded(part.on), IncludedFactor: r.rules.includedFactor.Value,
	}
	bears, err := u.Capacity()
	if err != nil { // every input was checked when the survey was read
		return 0, demand
	}
	return float64(bears.Moment), demand
}

// shearChecker compares shear along the grain from pull and twist.
func (r *rig) shearChecker(part *limbPart) checker {
	strength, err := r.shearStrength()
	amplitude := angle(r.rules.designAmplitude)
	try := func(u trial, side scenario) figure {
		f := figure{capacity: float64(strength)}
		if err != nil {
			f.capacity = 0
		}
		swings := r.swings(u, amplitude, r.rules.rideFactor.Value, 0)
		for i := range part.cuts {
			c := &part.cuts[i]
			p := swings.greatest(func(l loads) float64 { return float64(c.outline(side).Shear(c.forces(l, side))) }, f.demand)
			if p.value >= f.demand {
				f.demand, f.where = p.value, place(c, p.at, LimbShear)
			}
		}
		return f
	}
	return checker{code: LimbShear, unit: "Pa", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return append(r.pullTerms(u), factTerm("f_v", "shear strength of clear green wood, mean", r.species.wood.Shear))
	}}
}

func (r *rig) shearStrength() (quantity.Stress, error) {
	s, err := wood.MemberStrength(wood.Member{
		Clear: quantity.Stress(r.species.wood.Shear.Value), ClearCoV: r.rules.shearCoV.Value,
		Factor: r.rules.memberFactor.Value, FactorCoV: r.rules.memberCoV.Value,
	})
	if err != nil {
		return 0, err
	}
	return s.Design(r.rules.materialFactor.Value, 1)
}

// repeatedChecker compares the stress of ordinary riding, which comes back
// thousands of times, with what wood bears for ever: a share of its strength
// for bending one way and a lesser one for bending to and fro, added; and its
// proportional limit.
func (r *rig) repeatedChecker(part *limbPart) checker {
	amplitude := angle(r.rules.spaceAmplitude)
	strength := float64(r.species.strength.Mean)
	oneWay, reversing := r.repeatedLimit(false), r.repeatedLimit(true)
	try := func(u trial, side scenario) figure {
		f := figure{capacity: 1}
		swings := r.swings(u, amplitude, 1, 0)
		for i := range part.cuts {
			c := &part.cuts[i]
			p := swings.greatest(func(l loads) float64 {
				up, across := c.bending(l, side)
				return up/oneWay + across/reversing
			}, f.demand)
			if p.value >= f.demand {
				f.demand, f.where = p.value, place(c, p.at, LimbRepeated)
			}
		}
		return f
	}
	return checker{code: LimbRepeated, unit: "1", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return append(r.pullTerms(u), factTerm("k_1", "share of strength for bending one way", r.rules.oneWayShare),
			factTerm("k_2", "share of strength for bending to and fro", r.rules.reversingShare),
			factTerm("f_p", "bending proportional limit of clear green wood", r.species.wood.ProportionalLimit),
			Term{Symbol: "f_mean", Name: "mean strength of a limb", Value: strength, Unit: "Pa"})
	}}
}

// repeatedLimit is the stress that the limb bears again and again.
func (r *rig) repeatedLimit(reversing bool) float64 {
	shares := wood.RepeatedShares{OneWay: r.rules.oneWayShare.Value, Reversing: r.rules.reversingShare.Value}
	limit := quantity.Stress(r.species.wood.ProportionalLimit.Value * r.rules.memberFactor.Value)
	stress, err := shares.Limit(r.species.strength.Mean, limit, reversing)
	if err != nil { // strengths and shares come from tables that a test checks
		return 0
	}
	return float64(stress)
}

// bending splits the stress at a cut into bending in the upright plane, axial
// stress with it, and bending sideways.
func (c *cut) bending(l loads, side scenario) (upright, across float64) {
	section := c.outline(side)
	f := c.forces(l, side)
	u, a := section.SectionModulus()
	axial := math.Abs(float64(f.Axial)) / float64(section.Area())
	return math.Abs(float64(f.MomentAcross))/u + axial, math.Abs(float64(f.MomentUpright)) / a
}

// jerkChecker compares the jerk of a rider who falls into a slack line with
// the design strength at every section and union.
func (r *rig) jerkChecker() checker {
	slack := r.slack()
	try := func(u trial, side scenario) figure {
		weight := (u.mass + r.riders.seat).Weight()
		force := swing.Jerk(weight, swing.InSeries(r.lineStiffness(u.line, stiffest), r.springs.vertical), slack)
		l := loads{pull: quantity.Vec3{Z: -float64(force)}}
		var f figure
		for i := range r.limbs {
			for j := range r.limbs[i].cuts {
				c := &r.limbs[i].cuts[j]
				capacity := float64(r.species.design)
				if j == 0 {
					capacity *= r.formFactor(c.on, side)
				}
				g := figure{c.stress(l, side), capacity, place(c, 0, LimbJerk)}
				if f.capacity == 0 || g.margin() < f.margin() {
					f = g
				}
			}
		}
		return f
	}
	return checker{code: LimbJerk, unit: "Pa", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return []Term{
			{Symbol: "W", Name: "weight of riders and seat", Value: float64((u.mass + r.riders.seat).Weight()), Unit: "N"},
			{Symbol: "s", Name: "slack at mounting", Value: float64(slack), Unit: "m", Refs: []source.Ref{r.rules.slack.Ref}},
			{Symbol: "k_limb", Name: "stiffness of the limb at the hang point", Value: float64(r.springs.vertical), Unit: "N/m"},
			{Symbol: "k_line", Name: "stiffness of the line", Value: float64(r.lineStiffness(u.line, stiffest)), Unit: "N/m"},
			r.designTerm(),
		}
	}}
}

// slack is the greatest of the survey's and the house's slack at mounting.
func (r *rig) slack() quantity.Length {
	slack := quantity.Length(r.rules.slack.Value)
	if r.h.Slack != nil {
		slack = max(slack, min(r.h.Slack.Value, r.h.Line.Value))
	}
	return slack
}

// pullTerms are the terms of every check of the riders' pull.
func (r *rig) pullTerms(u trial) []Term {
	if r.anchor != nil {
		return r.linePullTerms(u)
	}
	mass := u.mass + r.riders.seat
	list := append([]Term{}, r.riders.terms...)
	return append(list,
		Term{Symbol: "m", Name: "riders, seat and line", Value: float64(mass), Unit: "kg"},
		factTerm("a", "amplitude that strength is checked at", r.rules.designAmplitude),
		Term{Symbol: "T", Name: "greatest pull, m g (3 - 2 cos a)", Value: float64(swing.PeakPull(mass, angle(r.rules.designAmplitude))), Unit: "N"},
		factTerm("gamma_Q", "load factor on riders", r.rules.rideFactor),
		Term{Symbol: "l", Name: "arm from the face of the parent to the hang point", Value: float64(r.arm.Value), Unit: "m",
			Sd: float64(r.arm.Sd), How: r.arm.How, Path: r.at + ".at"},
	)
}

// sectionTerms are the terms of the section that governs.
func (r *rig) sectionTerms(part *limbPart, f figure) []Term {
	for i := range part.cuts {
		c := &part.cuts[i]
		if quantity.Length(c.along) != f.where.Along {
			continue
		}
		d := c.on.diameter(c.along)
		bark, row := r.barkOf(c.on, d.upright.Value)
		barkTerm := Term{Symbol: "b", Name: "bark on one side", Value: float64(bark.Value), Unit: "m", Sd: float64(bark.Sd), How: bark.How, Path: c.on.path + ".bark"}
		if c.on.member.Bark == nil {
			barkTerm.Path, barkTerm.Refs, barkTerm.Note = "", []source.Ref{row.Ref}, row.Note
		}
		return []Term{
			{Symbol: "d", Name: "diameter over bark", Value: float64(d.upright.Value), Unit: "m", Sd: float64(d.upright.Sd), How: d.upright.How, Path: d.path},
			barkTerm,
			{Symbol: "d_k", Name: "diameter inside bark, 5 % value", Value: float64(c.section.thin.Upright), Unit: "m"},
			{Symbol: "M_self", Name: "moment of the limb's own weight", Value: momentOf(c.self), Unit: "N m"},
			r.designTerm(), r.morTerm(),
			factTerm("k_m", "strength of a limb by that of clear wood", r.rules.memberFactor),
			factTerm("gamma_M", "material factor", r.rules.materialFactor),
		}
	}
	return nil
}

func momentOf(f frame.SectionForces) float64 {
	return math.Hypot(float64(f.MomentAcross), float64(f.MomentUpright))
}

func (r *rig) designTerm() Term {
	return Term{Symbol: "f_d", Name: "design strength of the limb", Value: float64(r.species.design), Unit: "Pa"}
}

func (r *rig) morTerm() Term {
	return factTerm("f_clear", "bending strength of clear green wood, mean", r.species.wood.MOR)
}
