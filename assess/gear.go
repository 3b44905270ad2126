package assess

import (
	"math"
	"slices"

	"boughline/engine/gear"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// Conditions of a part.
const (
	conditionGood    = "good"
	conditionRetired = "retired"
)

// links is the chain of the survey as the engine checks it. Parts that are
// retired or of unknown strength are dealt with by gearReasons.
func (r *rig) links() gear.Chain {
	var c gear.Chain
	for i := range r.gear.Parts {
		c = append(c, r.link(&r.gear.Parts[i]))
	}
	return c
}

func (r *rig) link(p *survey.Part) gear.Link {
	l := gear.Link{Name: p.Name, Material: materialOf(p), Mark: r.markOf(p)}
	switch p.Hitch {
	case "basket":
		l.Hitch, l.Parts, l.PartPull = gear.Basket, 2, basketPull(p)
	case "choker":
		l.Hitch = gear.Choker
		if p.ChokeAngle != nil {
			l.ChokeAngle = p.ChokeAngle.Value
		}
	case "girth":
		l.Hitch = gear.Girth
	case "":
		if p.Kind == "sling" { // not stated: the one that keeps least
			l.Hitch = gear.Girth
		}
	}
	l.Knots = r.unstatedKnots(p)
	for _, end := range p.Ends {
		if k, ok := r.k.Knot(end); ok {
			l.Knots = append(l.Knots, gear.Knot{Name: k.Name, Share: quantity.Proportion(k.Share.Low), Tested: k.Share.Ref.Source.Kind == source.Read && isSplice(k.Name)})
		}
	}
	if p.BendOver != nil && p.Thickness != nil {
		l.BendOver, l.Thickness = resolve(r.k, *p.BendOver).Low(), resolve(r.k, *p.Thickness).High()
	}
	return l
}

// unstatedKnots is the knot of the table that keeps least, for a rope whose
// ends nobody has stated.
func (r *rig) unstatedKnots(p *survey.Part) []gear.Knot {
	if p.Kind != "rope" || len(p.Ends) > 0 {
		return nil
	}
	least := gear.Knot{Name: "ends not stated", Share: 1}
	for _, k := range r.k.Knots() {
		least.Share = min(least.Share, quantity.Proportion(k.Share.Low))
	}
	return []gear.Knot{least}
}

// isSplice tells splices, which keep more than any knot, from knots.
func isSplice(name string) bool { return name == "eye splice" || name == "short splice" }

func materialOf(p *survey.Part) gear.Material {
	if p.Material == "metal" {
		return gear.Metal
	}
	return gear.Textile
}

// markOf is the strength on the part, or the least that its standard asks.
func (r *rig) markOf(p *survey.Part) gear.Mark {
	if p.Mark != nil {
		switch p.Mark.Kind {
		case survey.MarkBreaking:
			return gear.Mark{Kind: gear.Breaking, Value: p.Mark.Strength.Value}
		case survey.MarkWorking:
			return gear.Mark{Kind: gear.WorkingLimit, Value: p.Mark.Strength.Value}
		}
		return gear.Mark{}
	}
	if g, ok := r.k.Gear(p.Standard); ok {
		return gear.Mark{Kind: gear.Breaking, Value: quantity.Force(g.Least.Value)}
	}
	return gear.Mark{}
}

// basketPull is the pull in each leg of a basket for each unit on the chain:
// half for legs straight down, more the flatter they lie. Legs whose angle is
// not stated count as lying at 30 degrees, the flattest that is allowed.
func basketPull(p *survey.Part) float64 {
	angle := 30 * quantity.Degree
	if p.LegAngle != nil {
		angle = p.LegAngle.Value
	}
	pull, err := gear.LegPull(2, angle)
	if err != nil { // flatter than a line can lie: no strength is left
		return math.Inf(1)
	}
	return pull
}

// factors are the demands and shares of the model.
func (r *rig) factors() gear.Factors {
	p := r.k.Parameter
	resting, pull, metal := p(knowledge.TextileFactorResting).Value, p(knowledge.TextileFactorPull).Value, p(knowledge.MetalFactor).Value
	choker, _ := r.k.Hitch("choker")
	girth, _ := r.k.Hitch("girth hitch")
	f := gear.Factors{
		TextileBreaking:     gear.Demand{OnResting: resting, OnPeak: pull},
		TextileWorkingLimit: gear.Demand{OnResting: resting / makersTextileFactor, OnPeak: 1},
		MetalBreaking:       gear.Demand{OnPeak: metal},
		MetalWorkingLimit:   gear.Demand{OnPeak: metal / makersSteelFactor},
		UntestedKnot:        quantity.Proportion(p(knowledge.KnotShare).Value),
		Choker:              quantity.Proportion(choker.Share.Low), Girth: quantity.Proportion(girth.Share.Low),
	}
	for _, from := range []quantity.Angle{120, 90, 60, 30, 0} {
		// The share between two rows of the table is that of the lower one.
		share, _ := r.k.ChokeAngle((from + 1) * quantity.Degree)
		f.ChokeAngles = append(f.ChokeAngles, gear.ChokeStep{From: from * quantity.Degree, Share: quantity.Proportion(share.Value)})
	}
	return f
}

// The factors by which makers divide the strength of slings before they print
// a working limit: 7 for textile (EN 1492) and 4 for steel (EN 818), both from
// memory.
const (
	makersTextileFactor = 7
	makersSteelFactor   = 4
)

// gearCheckers is the check of the weakest link. It is left out while the
// strength of a link is not known: the reasons say which.
func (r *rig) gearCheckers() []checker {
	chain, factors := r.links(), r.factors()
	if len(chain) == 0 {
		return nil
	}
	run := func(u trial) (gear.Result, bool) {
		result, err := chain.Check((u.mass + r.riders.seat).Weight(), r.peakPull(u), factors)
		return result, err == nil && result.Weakest >= 0
	}
	if _, ok := run(r.asked); !ok {
		return nil
	}
	try := func(u trial, side scenario) figure {
		result, ok := run(u)
		if !ok {
			return figure{demand: 1}
		}
		weakest := result.Links[result.Weakest]
		return figure{float64(weakest.Bearing.Required), float64(weakest.Bearing.Strength),
			Where{Part: weakest.Name, Case: string(GearLink), Detail: string(weakest.Bearing.Rule)}}
	}
	return []checker{{code: GearLink, unit: "N", cure: byLighter, try: try, terms: r.gearTerms(run)}}
}

func (r *rig) gearTerms(run func(trial) (gear.Result, bool)) func(trial, figure) []Term {
	return func(u trial, f figure) []Term {
		mass := u.mass + r.riders.seat
		list := append([]Term{}, r.riders.terms...)
		list = append(list,
			Term{Symbol: "W", Name: "resting weight of riders, seat and line", Value: float64(mass.Weight()), Unit: "N"},
			r.peakTerm(u),
			factTerm("k_W", "textile: times the resting weight", r.k.Parameter(knowledge.TextileFactorResting)),
			factTerm("k_T", "textile: times the greatest pull", r.k.Parameter(knowledge.TextileFactorPull)),
			factTerm("k_M", "metal: times the greatest pull", r.k.Parameter(knowledge.MetalFactor)))
		result, ok := run(u)
		if !ok {
			return list
		}
		for i, link := range result.Links {
			if link.Bearing == nil {
				continue
			}
			term := Term{Symbol: "F_" + link.Name, Name: "strength of " + link.Name + " as used", Value: float64(link.Bearing.Strength), Unit: "N",
				Path: element(r.gearAt+".parts", i)}
			for _, reduction := range link.Reductions {
				term.Note += percent(reduction.Cause+" keeps", float64(reduction.Share)) + "; "
			}
			list = append(list, term)
		}
		return list
	}
}

// gearReasons names the parts that can't be reckoned with.
func (r *rig) gearReasons() []Reason {
	var list []Reason
	for i := range r.gear.Parts {
		p, path := &r.gear.Parts[i], element(r.gearAt+".parts", i)
		switch {
		case p.Condition == conditionRetired:
			list = append(list, Reason{Code: GearRetired, Outcome: Leave, Path: path, Text: p.Name, Change: Change{Code: ChangeGear}})
		case r.markOf(p).Kind == gear.Unknown:
			list = append(list, Reason{Code: GearUnmarked, Outcome: Unfinished, Path: path, Text: p.Name, Change: Change{Code: ChangeMark}})
		case p.Condition != conditionGood:
			list = append(list, Reason{Code: GearCondition, Outcome: Unfinished, Path: path, Text: p.Name, Change: Change{Code: ChangeLookGear}})
		}
	}
	list = append(list, r.despiteReasons()...)
	if !r.chainComplete() {
		list = append(list, Reason{Code: ChainIncomplete, Outcome: Unfinished, Path: r.gearAt, Change: Change{Code: ChangeDescribe}})
	}
	if r.creeps() {
		list = append(list, Reason{Code: AnchorCreeps, Outcome: Unfinished, Path: r.gearAt, Change: Change{Code: ChangeChoke},
			Terms: []Term{factTerm("mu", "friction of a sling on the limb", r.k.Parameter(knowledge.AnchorFriction)),
				r.slopeTerm()}})
	}
	return list
}

// despiteReasons tells the parts that are used for a stated reason although
// something stands against them. That is a departure to be signed for; whatever
// else is said of the part stands beside it unchanged.
func (r *rig) despiteReasons() []Reason {
	var list []Reason
	for i := range r.gear.Parts {
		if p := &r.gear.Parts[i]; p.Despite != "" {
			list = append(list, Reason{Code: GearDespite, Outcome: WithinLimits, Path: element(r.gearAt+".parts", i) + ".despite",
				Text: p.Name + ", " + p.Despite, Change: Change{Code: ChangeOtherGear}})
		}
	}
	return list
}

// peakPull is the greatest pull on the gear.
func (r *rig) peakPull(u trial) quantity.Force {
	if r.anchor != nil {
		return r.anchor.line.peakPull(u)
	}
	return swing.PeakPull(u.mass+r.riders.seat, angle(r.rules.designAmplitude))
}

func (r *rig) peakTerm(u trial) Term {
	name := "greatest pull, m g (3 - 2 cos a)"
	if r.anchor != nil {
		name = "greatest pull of the line on any part, let go onto it"
	}
	return Term{Symbol: "T", Name: name, Value: float64(r.peakPull(u)), Unit: "N"}
}

// chainComplete reports whether the chain names all that a swing, or a line of
// its kind, hangs by.
func (r *rig) chainComplete() bool {
	rope, seat := true, true
	if r.anchor != nil {
		rope, seat = r.anchor.line.s.Kind != survey.HammockLine, r.anchor.line.s.Kind == survey.HammockLine
	}
	return (r.hasKind("rope") || !rope) && (r.hasKind("seat") || !seat) && r.holdsLimb()
}

func (r *rig) hasKind(kind string) bool {
	return slices.ContainsFunc(r.gear.Parts, func(p survey.Part) bool { return p.Kind == kind })
}

// holdsLimb reports whether some part goes round the limb.
func (r *rig) holdsLimb() bool { return r.holdingPart() != nil }

// inclination is how steeply the limb lies at the hang point.
func (r *rig) inclination() quantity.Angle {
	return quantity.Angle(math.Asin(r.on.direction(float64(r.arm.Value)).Z))
}

func (r *rig) slopeTerm() Term {
	if r.anchor != nil {
		return Term{Symbol: "i", Name: "slope of the pull along the wood", Value: r.pullAlong().Degrees(), Unit: "deg"}
	}
	return Term{Symbol: "i", Name: "inclination of the limb at the hang point", Value: r.inclination().Degrees(), Unit: "deg"}
}

// creeps reports whether a sling that does not choke would slide along the
// limb under a pull straight down.
func (r *rig) creeps() bool {
	if r.anchor != nil {
		return r.anchorCreeps()
	}
	for i := range r.gear.Parts {
		if h := r.gear.Parts[i].Hitch; h == "choker" || h == "girth" {
			return false
		}
	}
	least, err := gear.CreepAngle(r.k.Parameter(knowledge.AnchorFriction).Value)
	return err == nil && math.Abs(float64(r.inclination())) > float64(least)
}

// end says which end of the range of a line's stiffness a figure takes.
type end int

const (
	softest end = iota
	stiffest
)

// lineStiffness is the pull for each metre of stretch of the rope in the
// chain, over the line asked for.
func (r *rig) lineStiffness(line quantity.Length, e end) quantity.Stiffness {
	return quantity.Stiffness(r.axial(e) / float64(line))
}

// axial is the pull on the rope of the chain for a stretch of its own length.
func (r *rig) axial(e end) float64 {
	assumed := r.k.Parameter(knowledge.RopeAxialStiffness)
	axial := assumed.Low
	if e == stiffest {
		axial = assumed.High
	}
	for i := range r.gear.Parts {
		if p := &r.gear.Parts[i]; p.Kind == "rope" && p.AxialStiffness != nil {
			axial = float64(p.AxialStiffness.Value)
		}
	}
	return axial
}
