package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/engine/wood"
	"boughline/knowledge"
	"boughline/quantity"
)

// bend is a corner of a limb's axis, taken as an arc.
type bend struct {
	cut    cut
	normal quantity.Vec3 // of the plane of the bend
	radius quantity.Length
}

// bends lists the corners of a limb between its foot and where the load comes
// in. The arc touches both straights one diameter from the corner, or nearer
// where the next corner is: how far apart a surveyor sets the corners of an
// elbow must not make it gentle.
func (r *rig) bends(part *limbPart) []bend {
	var list []bend
	s := part.on
	for i := 1; i < len(s.points)-1; i++ {
		before, after := s.points[i].Sub(s.points[i-1]), s.points[i+1].Sub(s.points[i])
		normal := before.Unit().Cross(after.Unit())
		turn := math.Atan2(normal.Norm(), before.Unit().Dot(after.Unit()))
		if s.along[i] > part.until || turn < leastTurn {
			continue
		}
		reach := math.Min(math.Min(before.Norm(), after.Norm())/2, 2*radius(s, s.along[i]))
		list = append(list, bend{r.cutAt(r.bough, s, s.along[i]), normal.Unit(), quantity.Length(reach / math.Tan(turn/2))})
	}
	return list
}

// leastTurn is the turn below which a limb counts as straight, rad.
const leastTurn = 0.02

// acrossGrainChecker compares tension across the grain in the bends of a limb
// with what wood bears. A pull that straightens a bend splits it; sideways
// swinging does so in one of its two directions.
func (r *rig) acrossGrainChecker(part *limbPart, bends []bend) checker {
	factor := r.k.Parameter(knowledge.AcrossGrainFactor)
	limit := r.k.Parameter(r.byGroup(knowledge.AcrossGrainLimitBroadleaf, knowledge.AcrossGrainLimitConifer))
	try := func(u trial, side scenario) figure {
		f := figure{capacity: limit.Value}
		swings := r.swings(u, angle(r.rules.designAmplitude), r.rules.rideFactor.Value, 0)
		for i := range bends {
			b := &bends[i]
			p := swings.greatest(func(l loads) float64 { return -b.cut.moment(l, side).Dot(b.normal) }, 0)
			if tension := factor.Value * b.tension(p.value, side); tension >= f.demand {
				f.demand, f.where = tension, place(&b.cut, p.at, LimbAcrossGrain)
			}
		}
		return f
	}
	return checker{code: LimbAcrossGrain, unit: "Pa", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		list := r.pullTerms(u)
		for i := range bends {
			if quantity.Length(bends[i].cut.along) == f.where.Along {
				list = append(list, Term{Symbol: "R", Name: "radius of the bend", Value: float64(bends[i].radius), Unit: "m", Path: part.on.path + ".path"})
			}
		}
		return append(list, factTerm("k_90", "tests over theory", factor), factTerm("f_t90", "tension across the grain", limit))
	}}
}

// tension is the stress across the grain from a moment that straightens, by
// theory.
func (b *bend) tension(straightening float64, side scenario) float64 {
	return b.tensionIn(b.cut.outline(side).Outer, straightening)
}

// tensionIn is the same in a given outline.
func (b *bend) tensionIn(outline frame.Ellipse, straightening float64) float64 {
	moment := quantity.Moment(straightening)
	across, err := wood.AcrossGrainOfRound(wood.MomentExtremes{First: moment, Second: moment}, min(outline.Upright, outline.Across), b.radius)
	if err != nil { // radius and diameter are positive by construction
		return math.Inf(1)
	}
	return float64(across.Tension())
}
