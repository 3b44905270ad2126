package assess

import (
	"cmp"
	"math"

	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// conditionReasons lists what is missing or remarkable about the hang beyond
// signs and looks: measurements, ground, wind, wood.
func (r *rig) conditionReasons(u trial) []Reason {
	var list []Reason
	list = append(list, r.guessReasons()...)
	list = append(list, r.groundReasons(u)...)
	list = append(list, r.airReasons()...)
	list = append(list, r.woodReasons()...)
	list = append(list, r.swayReasons()...)
	if !r.riders.known() {
		list = append(list, Reason{Code: RidersNotKnown, Outcome: Unfinished, Path: r.riders.path, Change: Change{Code: ChangeDescribe}, Terms: r.riders.terms})
	}
	if !r.girthsAlong() {
		list = append(list, Reason{Code: OwnMassFromBase, Remark: true, Path: r.on.path + ".stations", Terms: []Term{factTerm("s_ln", "scatter of the mass by the base diameter alone", r.rules.ownMassLogError)}})
	}
	if r.h.Amplitude.Value >= 90*quantity.Degree {
		list = append(list, Reason{Code: LineGoesSlack, Outcome: WithinLimits, Path: r.at + ".amplitude", Change: Change{Code: ChangeLower, Value: 90, Unit: "deg"}})
	}
	return list
}

// guessReasons names the diameters on the load path that nobody measured. A
// diameter by eye never leads to a hang.
func (r *rig) guessReasons() []Reason {
	var list []Reason
	for _, s := range chain(r.on) {
		if !s.measured() {
			list = append(list, Reason{Code: ShapeNotMeasured, Outcome: Unfinished, Path: s.path, Text: s.member.ID, Change: Change{Code: ChangeMeasure}})
		}
	}
	for _, part := range r.limbs {
		list = append(list, guessesOn(part)...)
		list = append(list, r.parentGuess(part.on)...)
	}
	if g := r.on.stem().girths[0]; guessed(g.across.How) {
		list = append(list, guess(g))
	}
	return list
}

// guessesOn names the stations of a limb that were guessed, and asks for a
// measured one near where the load comes in.
func guessesOn(part limbPart) []Reason {
	var list []Reason
	last := math.Inf(-1)
	for _, g := range part.on.girths {
		known := !guessed(g.upright.How) && !guessed(g.across.How)
		switch {
		case known:
			last = g.at
		case g.at <= part.until:
			list = append(list, guess(g))
		}
	}
	if len(list) == 0 && last < part.until-stationReach {
		list = append(list, guess(part.on.diameter(part.until)))
	}
	return list
}

// stationReach is how far beyond the last measured station a load may come
// in, m (house).
const stationReach = 0.5

// parentGuess asks for the diameter of what a limb grows from.
func (r *rig) parentGuess(s *shape) []Reason {
	u, path := r.unionOf(s)
	if u == nil || u.Parent != nil && !guessed(u.Parent.How) {
		return nil
	}
	d := r.parentDiameter(s)
	return []Reason{guess(thickness{upright: d, across: d, path: path + ".parent"})}
}

func guess(g thickness) Reason {
	return Reason{Code: DiameterGuessed, Outcome: Unfinished, Path: g.path, Change: Change{Code: ChangeMeasure},
		Terms: []Term{{Symbol: "d", Name: "diameter", Value: float64(g.across.Value), Unit: "m", Sd: float64(g.across.Sd), How: g.across.How, Path: g.path}}}
}

// guessed reports whether a value was got without measuring.
func guessed(how quantity.How) bool {
	switch how {
	case quantity.ByEye, quantity.NotStated, quantity.Assumed, quantity.FromTable:
		return true
	}
	return false
}

// groundReasons asks for the ground below the swing as far as riders and
// let-go flights reach, and compares the fall with what the surface is rated
// for.
func (r *rig) groundReasons(u trial) []Reason {
	if r.lie == nil {
		return []Reason{{Code: GroundNotSurveyed, Outcome: Unfinished, Path: r.at + ".ground", Change: Change{Code: ChangeMeasure}}}
	}
	var list []Reason
	if r.lie.guess != "" {
		list = append(list, Reason{Code: GroundGuessed, Outcome: Unfinished, Path: r.lie.guess, Change: Change{Code: ChangeMeasure}})
	}
	stations := r.lie.ground(0).Stations
	ahead, behind := r.keptClear(u)
	if first, last := stations[0].Along, stations[len(stations)-1].Along; -first < behind-profileSlack || last < ahead-profileSlack {
		list = append(list, Reason{Code: GroundTooShort, Outcome: Unfinished, Path: r.lie.path, Change: Change{Code: ChangeMeasure},
			Terms: []Term{{Symbol: "x_1", Name: "profile needed ahead of the plumb line", Value: float64(ahead), Unit: "m"},
				{Symbol: "x_2", Name: "and behind it", Value: float64(behind), Unit: "m"}}})
	}
	list = append(list, r.heightReasons()...)
	list = append(list, r.surfaceReasons(u)...)
	list = append(list, r.stepReasons(u)...)
	return append(list, r.waitingReasons(u)...)
}

// stepReasons names a step or a wall where riders may come down.
func (r *rig) stepReasons(u trial) []Reason {
	ahead, behind := r.keptClear(u)
	stations := r.lie.ground(0).Stations
	for i := 1; i < len(stations); i++ {
		a, b := stations[i-1], stations[i]
		rise, run := math.Abs(float64(b.Height-a.Height)), float64(b.Along-a.Along)
		if rise > stepHeight && rise > run && b.Along > -behind && a.Along < ahead {
			return []Reason{{Code: GroundStep, Outcome: Unfinished, Path: r.lie.path, Change: Change{Code: ChangeLine},
				Terms: []Term{{Symbol: "h", Name: "height of the step", Value: rise, Unit: "m"}, {Symbol: "x", Name: "from the plumb line", Value: float64(a.Along), Unit: "m"}}}}
		}
	}
	return nil
}

// stepHeight is the height from which a steep rise of the ground counts as a
// step, m (house).
const stepHeight = 0.5

// waitingReasons names the places where people wait or walk within the length
// that is to be kept clear.
func (r *rig) waitingReasons(u trial) []Reason {
	if len(r.h.Waiting) == 0 {
		return []Reason{{Code: WaitingNotStated, Outcome: Unfinished, Path: r.at + ".waiting", Change: Change{Code: ChangeDescribe}}}
	}
	var list []Reason
	area := r.keptClearArea(u)
	near := func(spots []survey.Spot, path string, room quantity.Length) {
		for i, spot := range spots {
			distance := area.Distance(spotPosition(spot.Azimuth.Value, spot.Distance.Value))
			if distance >= room {
				continue
			}
			list = append(list, Reason{Code: WaitingTooNear, Outcome: Unfinished, Path: element(path, i), Change: Change{Code: ChangeMovePeople},
				Terms: []Term{{Symbol: "d", Name: "distance to the ground that is kept clear", Value: float64(distance), Unit: "m"}}})
		}
	}
	near(r.h.Waiting, r.at+".waiting", quantity.Length(r.rules.waitingRadius.Value))
	way, wayPath := r.wayIn()
	near(way, wayPath, quantity.Length(r.rules.wayHalfWidth.Value))
	if len(way) == 0 {
		list = append(list, Reason{Code: WayInNotStated, Remark: true, Path: r.at + ".way_in"})
	}
	return list
}

// heightReasons asks for a measured height, and for one that agrees with the
// shape of tree and limb.
func (r *rig) heightReasons() []Reason {
	h, measured := r.hangHeight()
	if !measured {
		return []Reason{{Code: HeightAssumed, Outcome: Unfinished, Path: r.at + ".height", Change: Change{Code: ChangeMeasure}}}
	}
	hang := r.hangPoint()
	shape := quantity.Length(hang.Z) - r.on.diameter(float64(r.arm.Value)).upright.Value/2
	apart := math.Abs(float64(h.Value - shape))
	if apart <= heightDoubt+steepestGround*math.Hypot(hang.X, hang.Y) {
		return nil
	}
	return []Reason{{Code: HeightsDisagree, Outcome: Unfinished, Path: r.at + ".height", Change: Change{Code: ChangeMeasure},
		Terms: []Term{{Symbol: "H", Name: "height of the limb as measured", Value: float64(h.Value), Unit: "m", How: h.How, Path: r.at + ".height"},
			{Symbol: "z", Name: "height of the limb by the shape of the tree", Value: float64(shape), Unit: "m", Path: r.on.path}}}}
}

// A measured height may differ from that of the shape by heightDoubt, m, and by
// ground as steep as steepestGround between stem and plumb line (house).
const (
	heightDoubt    = 0.7
	steepestGround = 0.25
)

// profileSlack is how much of the kept-clear length the profile may miss, m.
const profileSlack = 0.5

// surfaceReasons states a fall above what the surface is rated for.
func (r *rig) surfaceReasons(u trial) []Reason {
	surface, ok := r.k.Surface(r.lie.surface)
	if !ok { // Problems has refused it
		return nil
	}
	return r.fallOnto(surface, r.fallAt(u))
}

// fallOnto compares a fall with what the surface is rated for.
func (r *rig) fallOnto(surface knowledge.Surface, fall quantity.Length) []Reason {
	if float64(fall) <= surface.RatedFall.Value {
		return r.depthReasons(surface)
	}
	outcome := WithinLimits
	if surface.RatedFall.Value == 0 { // no fall at all may end on it
		outcome = Leave
	}
	return []Reason{{Code: SurfaceRating, Outcome: outcome, Path: r.lie.path + ".surface", Text: surface.Name, Change: Change{Code: ChangeDeeperFill},
		Terms: []Term{{Symbol: "h", Name: "greatest height of fall", Value: float64(fall), Unit: "m"}, factTerm("h_s", "fall that the surface is rated for", surface.RatedFall)}}}
}

// depthReasons asks for loose fill as deep as its rating supposes.
func (r *rig) depthReasons(surface knowledge.Surface) []Reason {
	if surface.LooseDepth == nil {
		return nil
	}
	path := r.lie.path + ".depth_loose"
	needed := factTerm("d_0", "depth of loose fill that the rating asks for", *surface.LooseDepth)
	depth := r.lie.depth
	switch {
	case depth == nil || guessed(depth.How):
		return []Reason{{Code: DepthNotMeasured, Outcome: Unfinished, Path: path, Text: surface.Name, Terms: []Term{needed}, Change: Change{Code: ChangeMeasure}}}
	case float64(resolve(r.k, *depth).Low()) < surface.LooseDepth.Value:
		return []Reason{{Code: SurfaceRating, Outcome: WithinLimits, Path: path, Text: surface.Name + " no deeper than this", Terms: []Term{needed,
			{Symbol: "d", Name: "depth of loose fill", Value: float64(depth.Value), Unit: "m", How: depth.How, Path: path}}, Change: Change{Code: ChangeDeeperFill}}}
	}
	return nil
}

// fallAt is the greatest height of fall at an angle of space.
func (r *rig) fallAt(u trial) quantity.Length {
	swing := r.swingAt(u, r.highHeight(unfavourable), false)
	var fall quantity.Length
	for _, ground := range r.lie.grounds(-1) {
		high, err := space.Fall(ground, swing)
		if err != nil { // out of range: no surface is rated for it
			return greatestMargin
		}
		fall = max(fall, high.Height)
	}
	return quantity.Length(math.Min(greatestMargin, r.flightFall(swing, float64(fall))))
}

func (r *rig) looseSurface() bool {
	surface, ok := r.k.Surface(r.lie.surface)
	return ok && surface.LooseDepth != nil
}

// airReasons asks for what the wind checks need.
func (r *rig) airReasons() []Reason {
	switch {
	case r.survey.Wind == nil:
		return []Reason{{Code: WindNotDescribed, Outcome: Unfinished, Path: "wind", Change: Change{Code: ChangeDescribe}}}
	case r.air == nil:
		return []Reason{{Code: CrownNotMeasured, Outcome: Unfinished, Path: r.path + ".crown", Change: Change{Code: ChangeMeasure}}}
	}
	var list []Reason
	best := r.strongestStood()
	for i := range r.s.Stood {
		if g := &r.s.Stood[i]; !r.counts(g) {
			list = append(list, Reason{Code: GustVoid, Remark: true, Path: element(r.path+".stood", i), Text: cmp.Or(g.Void, "guessed, dated later, or more than ten years ago")})
		}
	}
	if r.byStemMass() >= best.moment {
		list = append(list, Reason{Code: RootsByMass, Remark: true, Path: r.path + ".stood", Terms: r.rootPlateTerms()})
	}
	return list
}

// woodReasons says how well the wood of the species is known.
func (r *rig) woodReasons() []Reason {
	var list []Reason
	w := r.species.wood
	if w.Fallback {
		list = append(list, Reason{Code: WoodFallback, Remark: true, Path: r.path + ".species", Text: w.Note, Terms: []Term{r.morTerm()}})
	}
	if len(w.Others) > 0 {
		terms := []Term{r.morTerm()}
		for _, other := range w.Others {
			terms = append(terms, factTerm("f_clear", "the same by another source", *other.MOR))
		}
		list = append(list, Reason{Code: WoodSourcesDiffer, Remark: true, Path: r.path + ".species", Terms: terms})
	}
	if s := r.species; s.Known && s.Note != "" {
		list = append(list, Reason{Code: SpeciesNote, Remark: true, Path: r.path + ".species", Text: s.Note, Refs: s.Refs})
	}
	return list
}
