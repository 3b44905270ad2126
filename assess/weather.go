package assess

import (
	"math"
	"slices"

	"boughline/engine/frame"
	"boughline/knowledge"
	"boughline/quantity"
)

// windCheckers lists the checks of a swing in a gust, on a limb that gives way
// below it. Without a crown there is none, and the reasons say what to measure.
func (r *rig) windCheckers() []checker {
	if r.air == nil {
		return nil
	}
	if len(r.limbs) == 0 { // an anchor on the stem itself
		return []checker{r.stemChecker(), r.rootPlateChecker()}
	}
	share := r.shareOfCrown()
	height := quantity.Length(r.on.position(r.on.length() / 2).Z)
	limb := actions{
		wind: func(u trial, side scenario) float64 {
			return r.rules.windFactor.Value * float64(r.air.onLimb(u.gust, share, height, side))
		},
		dynamic: func(u trial) float64 { return r.dynamicFactor(u.mass+r.riders.seat, u.line) },
	}
	var list []checker
	for i := range r.limbs {
		part := &r.limbs[i]
		list = append(list, r.withGust(r.unionChecker(UnionInWind, part, limb, byCalm), limb))
		if len(part.cuts) > 1 {
			list = append(list, r.withGust(r.bendingChecker(LimbInWind, part, limb, byCalm), limb))
		}
	}
	return append(list, r.stemChecker(), r.rootPlateChecker())
}

// withGust adds the terms of wind and motion to a check of the limb.
func (r *rig) withGust(c checker, limb actions) checker {
	terms := c.terms
	c.terms = func(u trial, f figure) []Term {
		list := append(terms(u, f), r.dynamicTerms(u)...)
		return append(list, r.gustTerm(u), r.dragTerm(),
			Term{Symbol: "F_w", Name: "wind on the limb, factored", Value: limb.wind(u, unfavourable), Unit: "N"})
	}
	return c
}

func (r *rig) gustTerm(u trial) Term {
	return Term{Symbol: "U", Name: "gust (3 s) at 10 m in the open", Value: float64(u.gust), Unit: "m/s"}
}

func (r *rig) dragTerm() Term {
	return factTerm("C_d", "drag of the crown on its still-air area", r.k.Parameter(r.byGroup(knowledge.CrownDragBroadleaf, knowledge.CrownDragConifer)))
}

// stemCut is one section of the stem that is checked: the base, every station
// and finding below the union, and the union.
type stemCut struct {
	height  float64
	section section
}

func (r *rig) cutStem() {
	stem := r.on.stem()
	top := r.top()
	heights := append(stem.breaks(), 0, top)
	for i := range r.s.Findings {
		f := &r.s.Findings[i]
		if f.Member == stem.member.ID && f.At != nil {
			heights = append(heights, float64(f.At.Value))
		}
	}
	slices.Sort(heights)
	for _, h := range slices.Compact(heights) {
		if h <= top {
			r.stemCut = append(r.stemCut, stemCut{h, r.section(stem, h)})
		}
	}
}

// stemMoment is the bending moment on the stem at a height: from the pull at
// the hang point, the weight of all that is surveyed above and the gust, the
// wind blowing in the worst direction.
func (r *rig) stemMoment(u trial, height float64, side scenario, rideFactor, windFactor float64) (moment float64, at quantity.Angle) {
	key := pullKey{u.mass, u.line, height, side}
	p, known := r.pulls[key]
	if !known {
		p = r.pullMoment(u, height, side, rideFactor*r.swayFactor(u.line), r.ownWeightAbout(height))
		r.pulls[key] = p
	}
	return p.value + windFactor*r.windMoment(u, height, side), p.at
}

// pullKey is all that the moment of the factored pull on the stem depends on.
type pullKey struct {
	mass   quantity.Mass
	line   quantity.Length
	height float64
	side   scenario
}

// pullMoment is the greatest moment about a point of the stem from the pull at
// the hang point, with a steady moment added. What the steady moment relieves
// is not counted: a heavier rider must never look like a lesser load.
func (r *rig) pullMoment(u trial, height float64, side scenario, rideFactor float64, steady quantity.Vec3) peak {
	point := r.on.stem().position(height)
	lever := r.on.position(float64(r.armOf(side))).Sub(point)
	swings := r.swings(u, angle(r.rules.designAmplitude), rideFactor, 0)
	return swings.greatest(func(l loads) float64 {
		return together(lever.Cross(l.pull), steady)
	}, 0)
}

// together is the size of two bending moments in plan; of the second, the part
// that opposes the first is left out.
func together(ride, steady quantity.Vec3) float64 {
	size := math.Hypot(ride.X, ride.Y)
	if size == 0 {
		return math.Hypot(steady.X, steady.Y)
	}
	along := (ride.X*steady.X + ride.Y*steady.Y) / size
	beside := (ride.X*steady.Y - ride.Y*steady.X) / size
	return math.Hypot(size+math.Max(0, along), beside)
}

// ownWeightAbout is the moment of the tree's own weight about a point of the
// stem: of a lean, and of limbs that stand out to one side.
func (r *rig) ownWeightAbout(height float64) quantity.Vec3 {
	stem := r.on.stem()
	return r.sway.self.At(frame.Place{Member: r.sway.index[stem], Along: quantity.Length(math.Min(height, stem.length()))}, frame.TipSide).Moment
}

// overturning is the moment at the ground that swing and gust add to a tree
// that stands under its own weight.
func (r *rig) overturning(u trial, side scenario) (moment float64, at quantity.Angle) {
	p := r.pullMoment(u, 0, side, r.rules.rideFactor.Value*r.swayFactor(u.line), quantity.Vec3{})
	return p.value + r.rules.windFactor.Value*r.windMoment(u, 0, side), p.at
}

func (r *rig) armOf(side scenario) quantity.Length {
	if side == favourable {
		return r.arm.Low()
	}
	return r.arm.High()
}

// windMoment is the moment of the gust at a height of the stem, the drag of
// the stem itself below that height counted as if above it.
func (r *rig) windMoment(u trial, height float64, side scenario) float64 {
	load := r.air.load(u.gust, side)
	return math.Max(0, float64(load.Moment)-float64(load.Force)*height)
}

// stemChecker compares bending of the stem with its strength at the base and
// at every finding below the union.
func (r *rig) stemChecker() checker {
	stem := r.on.stem()
	try := func(u trial, side scenario) figure {
		var f figure
		for i, c := range r.stemCut {
			moment, at := r.stemMoment(u, c.height, side, r.rules.rideFactor.Value, r.rules.windFactor.Value)
			outline := c.section.thin
			if side == favourable {
				outline = c.section.thick
			}
			upright, across := outline.SectionModulus()
			g := figure{moment / math.Min(upright, across), float64(r.species.design),
				Where{Part: stem.member.ID, Along: quantity.Length(c.height), Case: string(StemBending), AtRad: at}}
			if i == 0 || g.margin() < f.margin() {
				f = g
			}
		}
		return f
	}
	return checker{code: StemBending, unit: "Pa", cure: byCalm, try: try, terms: func(u trial, f figure) []Term {
		d := stem.diameter(float64(f.where.Along))
		return append(append(r.pullTerms(u), r.swayTerms(u)...), r.gustTerm(u), r.dragTerm(),
			Term{Symbol: "M_w", Name: "moment of the gust there, unfactored", Value: r.windMoment(u, float64(f.where.Along), unfavourable), Unit: "N m"},
			Term{Symbol: "D_p", Name: "diameter of the stem over bark", Value: float64(d.upright.Value), Unit: "m", Sd: float64(d.upright.Sd), How: d.upright.How, Path: d.path},
			r.designTerm(), r.morTerm())
	}}
}

// rootPlateChecker compares the overturning moment with what the root plate
// is known to bear: the moment of a gust that the tree has stood, or the low
// estimate from the mass of its stem, whichever proves more.
func (r *rig) rootPlateChecker() checker {
	try := func(u trial, side scenario) figure {
		moment, at := r.overturning(u, side)
		return figure{moment, float64(r.rootPlateBears()), Where{Part: "root plate", Case: string(RootPlate), AtRad: at}}
	}
	return checker{code: RootPlate, unit: "N m", cure: byCalm, try: try, terms: func(u trial, f figure) []Term {
		alone := r.pullMoment(u, 0, unfavourable, 1, quantity.Vec3{}).value
		list := append(append(r.pullTerms(u), r.swayTerms(u)...), r.gustTerm(u), r.dragTerm(),
			Term{Symbol: "M_s", Name: "overturning moment of the swing alone", Value: alone, Unit: "N m", Note: r.toldAsGust(alone)},
			Term{Symbol: "M_w", Name: "overturning moment of the gust alone", Value: r.windMoment(u, 0, unfavourable), Unit: "N m"})
		return append(list, r.rootPlateTerms()...)
	}}
}
