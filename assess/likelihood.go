package assess

import (
	"math"

	"boughline/engine/chance"
	"boughline/engine/swing"
	"boughline/quantity"
	"boughline/source"
)

// chanceCheckers lists the checks of the reliability index over a year of
// outings, at the union and at the worst section beyond it, with the load
// test of the day counted as passed.
func (r *rig) chanceCheckers() []checker {
	var list []checker
	for i := range r.limbs {
		part := &r.limbs[i]
		list = append(list, r.chanceChecker(UnionChance, part, func(trial) *cut { return &part.cuts[0] }))
		if len(part.cuts) > 1 {
			list = append(list, r.chanceChecker(LimbChance, part, func(u trial) *cut { return r.mostStressed(part, u) }))
		}
	}
	return list
}

func (r *rig) chanceChecker(code Code, part *limbPart, at func(trial) *cut) checker {
	target := r.rules.targetBeta.Value
	known := betas{}
	try := func(u trial, side scenario) figure {
		c := at(u)
		return figure{demand: target, capacity: r.leastBeta(known, u, c, side), where: place(c, 0, code)}
	}
	return checker{code: code, unit: "1", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return r.chanceTerms(u, at(u))
	}}
}

// leastBeta is the least reliability index of these riders and all lighter
// ones. The load test grows with the riders: beside a heavy limb a light one
// proves so little that lighter riders can come out a trace worse, and a
// heavier rider must never look better.
func (r *rig) leastBeta(known betas, u trial, c *cut, side scenario) float64 {
	beta := r.beta(known, u, c, side)
	for mass := r.lightest(); mass < u.mass; mass *= massStep {
		lighter := u
		lighter.mass = mass
		beta = math.Min(beta, r.beta(known, lighter, c, side))
	}
	return beta
}

// limbChances is the likeliest failure among the chance checks of a hang.
func limbChances(checks []Check) *LimbChances {
	var least *LimbChances
	for _, c := range checks {
		isChance := c.Code == UnionChance || c.Code == LimbChance
		if isChance && (least == nil || c.Capacity < least.Index) {
			least = &LimbChances{Probability: chance.Probability(c.Capacity), Index: c.Capacity, Target: c.Demand, LeftOut: append(leftOut(), OtherWays)}
		}
	}
	return least
}

// betas remembers the indices of one check by all that they depend on.
type betas map[betaKey]float64

type betaKey struct {
	mass quantity.Mass
	line quantity.Length
	at   float64
	side scenario
}

// massStep is the ratio of the lighter masses that are tried.
const massStep = 1.6

// beta is the reliability index with the planned load test passed, 0 where the
// laws say that the limb could not have passed it.
func (r *rig) beta(known betas, u trial, c *cut, side scenario) float64 {
	key := betaKey{u.mass, u.line, c.along, side}
	if beta, ok := known[key]; ok {
		return beta
	}
	figures, err := r.limbCase(u, c, side).Chance()
	beta := 0.0
	if err == nil && figures.GivenLoadTest != nil {
		beta = math.Max(0, math.Min(figures.GivenLoadTest.Beta, greatestBeta))
	}
	known[key] = beta
	return beta
}

// greatestBeta stands for any reliability index above it; beyond it the laws
// say nothing.
const greatestBeta = 8

// mostStressed is the section beyond the union with the greatest stress in a
// swing in still air.
func (r *rig) mostStressed(part *limbPart, u trial) *cut {
	swings := r.swings(u, angle(r.rules.designAmplitude), 1, 0)
	worst, greatest := &part.cuts[1], 0.0
	for i := range part.cuts[1:] {
		c := &part.cuts[1+i]
		if s := c.stress(loads{pull: swings.pull(0)}, unfavourable); s > greatest {
			worst, greatest = c, s
		}
	}
	return worst
}

// limbCase states the laws of one section (model error and member factor in
// its strength, the season's largest ride once at the design amplitude).
//
// The favourable scenario asks what better measuring could show: the section
// at its favourable 5 % value, known as well as a tape knows it.
func (r *rig) limbCase(u trial, c *cut, side scenario) chance.LimbCase {
	strength := r.species.strength
	outline, cov := c.section.mean, c.section.cov
	if side == favourable {
		outline, cov = c.section.thick, math.Min(cov, 3*r.tapeSd())
	}
	form := 1.0
	if c.along == 0 {
		form = r.formFactor(c.on, side)
	}
	mean := r.meanOf(u)
	ride := r.momentPerNewton(c) * float64(swing.PeakPull(mean.mass, angle(r.rules.designAmplitude))) * r.dynamicFactor(u.mass+r.riders.seat, u.line)
	planned := r.momentPerNewton(c) * float64(r.testPull(u))
	upright, across := outline.SectionModulus()
	return chance.LimbCase{
		Strength: chance.Variable[quantity.Stress]{
			Mean: strength.Mean * quantity.Stress(form), CoV: math.Hypot(strength.CoV, r.rules.modelCoV.Value)},
		SectionModulus: chance.Variable[quantity.Volume]{Mean: quantity.Volume(math.Min(upright, across)), CoV: cov},
		SelfMoment:     chance.Variable[quantity.Moment]{Mean: quantity.Moment(momentOf(c.self)), CoV: r.ownMassCoV()},
		RideMoment:     chance.Variable[quantity.Moment]{Mean: quantity.Moment(ride), CoV: mean.cov},
		TestMoment:     quantity.Moment(planned),
		LastingCoV:     r.rules.lastingCoV.Value,
	}
}

// tapeSd is the relative standard deviation of a taped diameter.
func (r *rig) tapeSd() float64 {
	sd, _ := r.k.Method(quantity.Taped, quantity.Length(0).Name())
	return sd.Value
}

// meanMass is the mean mass of riders and seat with its variation.
type meanMass struct {
	mass quantity.Mass
	cov  float64
}

// meanOf scales the mean mass of the group with the trial, whose mass stands
// for the group's design mass.
func (r *rig) meanOf(u trial) meanMass {
	riders := u.mass * r.riders.mean / r.riders.design
	total := riders + r.riders.seat
	return meanMass{total, r.riders.cov * float64(riders/total)}
}

// momentPerNewton is the bending moment at a cut for 1 N straight down at the
// hang point as measured.
func (r *rig) momentPerNewton(c *cut) float64 { return (momentOf(c.far[2]) + momentOf(c.near[2])) / 2 }

// testPull is the total of the load test: a multiple of the greatest riding
// pull at the design mass, the limb giving way.
func (r *rig) testPull(u trial) quantity.Force {
	pull := swing.PeakPull(u.mass+r.riders.seat, angle(r.rules.designAmplitude))
	return pull * quantity.Force(r.rules.testFactor.Value*r.dynamicFactor(u.mass+r.riders.seat, u.line))
}

// ownMassCoV is the scatter of the limb's own mass: by its girths, or much
// wider by the diameter at its base alone.
func (r *rig) ownMassCoV() float64 {
	if r.girthsAlong() {
		return r.rules.ownMassCoV.Value
	}
	ln := r.rules.ownMassLogError.Value
	return math.Sqrt(math.Expm1(ln * ln))
}

// girthsAlong reports whether the limb was measured at more than its base.
func (r *rig) girthsAlong() bool {
	return len(r.on.member.Stations) > 1 || r.on.member.Tip != nil
}

func (r *rig) chanceTerms(u trial, c *cut) []Term {
	limb := r.limbCase(u, c, unfavourable)
	list := []Term{
		factTerm("beta_t", "target reliability index for a year of outings", r.rules.targetBeta),
		{Symbol: "R", Name: "strength of the limb, mean", Value: float64(limb.Strength.Mean), Unit: "Pa", Note: percent("variation", limb.Strength.CoV),
			Refs: []source.Ref{r.species.wood.MOR.Ref, r.rules.memberFactor.Ref, r.rules.modelCoV.Ref}},
		{Symbol: "W", Name: "section modulus inside bark, mean", Value: float64(limb.SectionModulus.Mean), Unit: "m3", Note: percent("variation", limb.SectionModulus.CoV)},
		{Symbol: "S", Name: "moment of own weight, mean", Value: float64(limb.SelfMoment.Mean), Unit: "N m", Note: percent("variation", limb.SelfMoment.CoV)},
		{Symbol: "Q", Name: "moment of the season's hardest ride, mean", Value: float64(limb.RideMoment.Mean), Unit: "N m", Note: percent("variation", limb.RideMoment.CoV)},
		{Symbol: "M_T", Name: "moment of the load test", Value: float64(limb.TestMoment), Unit: "N m", Refs: []source.Ref{r.rules.testFactor.Ref}},
		factTerm("V_K", "variation of what a test tells of the next ride", r.rules.lastingCoV),
	}
	figures, err := limb.Chance()
	if err != nil {
		return append(list, Term{Symbol: "-", Name: "no chance can be given", Note: err.Error()})
	}
	list = append(list, Term{Symbol: "p_0", Name: "chance of failure in a year, own weight carried", Value: figures.GivenOwnWeight.Probability, Unit: "1"})
	if g := figures.GivenLoadTest; g != nil {
		list = append(list, Term{Symbol: "p", Name: "chance of failure in a year, load test passed", Value: g.Probability, Unit: "1",
			Note: chanceCovers})
	}
	return list
}
