package assess

import (
	"fmt"
	"math"

	"boughline/engine/rootplate"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// stood is the moment at the ground of the strongest gust that a tree is known
// to have stood and that still speaks for it.
type stood struct {
	gust   *survey.Gust
	path   string
	moment quantity.Moment
}

// strongestStood works the gusts of the survey out on the low side: a small
// crown, the gust at its low value, the leaves of that day, half the terrain's
// doubt left to the surveyor's own statement of the gust in the open.
func (r *rig) strongestStood() stood {
	var best stood
	for i := range r.s.Stood {
		g := &r.s.Stood[i]
		evidence := rootplate.StoodGust{Moment: r.momentStood(g), Void: !r.counts(g)}
		if m := evidence.Resistance(); best.gust == nil || m > best.moment {
			best = stood{g, element(r.path+".stood", i), m}
		}
	}
	return best
}

// counts reports whether a gust still speaks for the tree: measured, not
// declared void, and not so long ago that the crown was another.
func (r *rig) counts(g *survey.Gust) bool {
	lapsed := r.survey.Day.After(g.On.AddMonths(12 * gustYears))
	return g.Void == "" && !g.On.After(r.survey.Day) && !lapsed && (!guessed(g.Speed.How) || g.Speed.SdStated)
}

// gustYears is for how long a stood gust speaks for the crown of today (house).
const gustYears = 10

// momentStood is the moment of a past gust on the low side: the drag measured
// on crowns that streamline most, and the small crown.
func (r *rig) momentStood(g *survey.Gust) quantity.Moment {
	tree := r.air.small
	drag := r.k.Parameter(r.byGroup(knowledge.CrownDragBroadleaf, knowledge.CrownDragConifer))
	tree.Crown.Drag *= drag.Low / drag.Value
	if r.species.Group != knowledge.Conifer {
		leafless := r.k.Parameter(knowledge.LeaflessShare).Value
		now := r.survey.Wind.InLeaf == nil || *r.survey.Wind.InLeaf
		if now && !g.InLeaf {
			tree.Crown.Drag *= leafless
		} else if !now && g.InLeaf {
			tree.Crown.Drag /= leafless
		}
	}
	speed := resolve(r.k, g.Speed).Low()
	load, err := tree.GustLoad(speed)
	if err != nil { // the crown was checked when it was built
		return 0
	}
	return load.Moment
}

// byStemMass is the low estimate of the overturning resistance from the mass
// of the stem, with the weakest of the slopes read.
func (r *rig) byStemMass() quantity.Moment {
	slope, scatter := r.slopeOfRoots()
	low, err := rootplate.MassResistance{
		StemMass: r.stemMass(), PerMassNewtonMetrePerKg: slope.Value, Scatter: scatter.Value,
	}.Low()
	if err != nil { // a stem without mass was refused when the survey was read
		return 0
	}
	return low
}

// slopeOfRoots is the overturning moment for each kilogram of stem, the weakest
// read, with its scatter.
func (r *rig) slopeOfRoots() (slope, scatter source.Fact) {
	return r.k.Parameter(knowledge.RootPlateHemlock), r.k.Parameter(knowledge.RootPlateVariation)
}

// readSlopesOfRoots lists the same of every species read.
func (r *rig) readSlopesOfRoots() (slopes []source.Fact, scatter source.Fact) {
	for _, key := range []string{knowledge.RootPlateHemlock, knowledge.RootPlateRedcedar, knowledge.RootPlateSpruce, knowledge.RootPlateLodgepole} {
		slopes = append(slopes, r.k.Parameter(key))
	}
	_, scatter = r.slopeOfRoots()
	return slopes, scatter
}

// stemMass is the green mass of the stem as surveyed, at its low length and
// diameters, nowhere thicker than at its foot.
func (r *rig) stemMass() quantity.Mass {
	const pieces = 16
	stem := r.on.stem()
	length := stem.length()
	if l := stem.member.Length; l != nil {
		length = math.Min(length, float64(resolve(r.k, *l).Low()))
	}
	step := length / pieces
	foot := stem.diameter(0).across.Low()
	volume := 0.0
	for i := range pieces {
		for _, g := range gaussPair {
			d := min(foot, stem.diameter((float64(i)+g)*step).across.Low())
			volume += math.Pi / 4 * float64(d*d) * step / 2
		}
	}
	return quantity.Mass(volume * r.species.wood.GreenDensity.Low)
}

func (r *rig) rootPlateBears() quantity.Moment {
	return max(r.strongestStood().moment, r.byStemMass())
}

// toldAsGust words a moment at the ground as the gust that makes the same on
// this tree.
func (r *rig) toldAsGust(moment float64) string {
	gust, err := rootplate.EquivalentGust(quantity.Moment(moment), func(u quantity.Speed) (quantity.Moment, error) {
		load, err := r.air.large.GustLoad(u)
		return load.Moment, err
	}, greatestGust)
	if err != nil {
		return "more than any gust"
	}
	return fmt.Sprintf("as much as a gust of %.0f m/s at 10 m in the open", float64(gust))
}

// greatestGust bounds the search for an equivalent gust.
const greatestGust quantity.Speed = 100

func (r *rig) rootPlateTerms() []Term {
	list := []Term{
		{Symbol: "m_stem", Name: "green mass of the stem, low value", Value: float64(r.stemMass()), Unit: "kg"},
		factTerm("k_r", "overturning moment for each kilogram of stem, conifers", r.k.Parameter(knowledge.RootPlateHemlock)),
		factTerm("s_ln", "scatter of that", r.k.Parameter(knowledge.RootPlateVariation)),
		{Symbol: "M_mass", Name: "resistance by the mass of the stem, low value", Value: float64(r.byStemMass()), Unit: "N m"},
	}
	if best := r.strongestStood(); best.gust != nil {
		list = append(list, Term{Symbol: "U_0", Name: "gust that the tree has stood", Value: float64(best.gust.Speed.Value), Unit: "m/s",
			How: best.gust.Speed.How, Path: best.path, Note: best.gust.Source, Refs: []source.Ref{r.dragTerm().Refs[0]}},
			Term{Symbol: "M_0", Name: "moment of that gust, low value", Value: float64(best.moment), Unit: "N m"})
	}
	return list
}
