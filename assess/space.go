package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// spaceAngle is the amplitude that space is checked at for a declared one
// within limits: the declared plus an allowance, and never a small one.
func (r *rig) spaceAngle(declared quantity.Angle) quantity.Angle {
	return min(rightAngle, max(declared+angle(r.rules.allowance), angle(r.rules.leastSpace)))
}

// fullSpaceAngle is the amplitude at which space must hold for a hang without
// limits.
func (r *rig) fullSpaceAngle(declared quantity.Angle) quantity.Angle {
	return max(angle(r.rules.spaceAmplitude), r.spaceAngle(declared))
}

// rightAngle is where a line goes slack; space is never checked beyond it.
const rightAngle = 89.9 * quantity.Degree

// spaceCheckers lists the checks of ground, stem and fall. The amplitude of a
// trial is the angle of space itself here.
func (r *rig) spaceCheckers() []checker {
	if r.h.Ground == nil {
		return nil
	}
	list := []checker{r.seatChecker(), r.footChecker(), r.stemClearanceChecker(), r.fallChecker()}
	if c, any := r.limbClearanceChecker(); any {
		list = append(list, c)
	}
	for i := range r.h.Obstacles {
		list = append(list, r.obstacleChecker(i))
	}
	return list
}

// ground is the profile along the swing line: as measured for a doubt of 0,
// its height at the high 5 % value for +1 and at the low one for -1.
func (r *rig) ground(doubt quantity.Length) space.Ground {
	var g space.Ground
	for _, p := range r.h.Ground.Along {
		height := resolve(r.k, p.Height)
		if p.At.Value == 0 { // all heights count from here
			height.Sd = 0
		}
		g.Stations = append(g.Stations, space.Point{Along: p.At.Value, Height: height.Value + doubt*quantity.Tail*height.Sd})
	}
	if !slices.ContainsFunc(g.Stations, func(p space.Point) bool { return p.Along == 0 }) && len(g.Stations) > 0 {
		g.Stations = append(g.Stations, space.Point{Height: r.groundAtPlumb()})
	}
	slices.SortFunc(g.Stations, func(a, b space.Point) int { return cmp.Compare(a.Along, b.Along) })
	if len(g.Stations) == 0 {
		g.Stations = []space.Point{{}}
	}
	return g
}

// groundAtPlumb is the height of the profile as measured at the plumb line.
func (r *rig) groundAtPlumb() quantity.Length {
	var g space.Ground
	for _, p := range r.h.Ground.Along {
		g.Stations = append(g.Stations, space.Point{Along: p.At.Value, Height: p.Height.Value})
	}
	slices.SortFunc(g.Stations, func(a, b space.Point) int { return cmp.Compare(a.Along, b.Along) })
	return g.At(0)
}

// hangHeight is the height of the limb's underside above the ground at the
// plumb line.
func (r *rig) hangHeight() (height quantity.Measured[quantity.Length], measured bool) {
	if r.h.Height != nil {
		return resolve(r.k, *r.h.Height), true
	}
	d := r.on.diameter(float64(r.arm.Value))
	z := quantity.Length(r.hangPoint().Z) - d.upright.Value/2
	return resolve(r.k, quantity.Measured[quantity.Length]{Value: z, How: quantity.ByEye}), false
}

// swingAt is the swing at a trial: lowered is with limb and line under load.
func (r *rig) swingAt(u trial, height quantity.Length, lowered bool) space.Swing {
	s := space.Swing{HangHeight: height, Line: u.line, FootReach: r.riders.reach, Amplitude: u.amplitude}
	if lowered {
		pull := swing.PeakPull(u.mass+r.riders.seat, min(u.amplitude, angle(r.rules.designAmplitude)))
		sag := quantity.Length(float64(pull) / float64(r.springs.vertical))
		stretch := quantity.Length(float64(pull) / float64(r.lineStiffness(u.line, softest)))
		s = s.Lowered(sag, stretch)
	}
	return s
}

// worst is +1 where a scenario takes the unfavourable end, -1 for the other.
func worst(side scenario) quantity.Length {
	if side == favourable {
		return -1
	}
	return 1
}

// lowHeight is the height of the hang that a scenario takes where less is worse.
func (r *rig) lowHeight(side scenario) quantity.Length {
	h, _ := r.hangHeight()
	if side == favourable {
		return h.High()
	}
	return h.Low()
}

func (r *rig) highHeight(side scenario) quantity.Length {
	h, _ := r.hangHeight()
	if side == favourable {
		return h.Low()
	}
	return h.High()
}

func (r *rig) seatChecker() checker {
	try := func(u trial, side scenario) figure {
		f := figure{demand: r.rules.seatClearance.Value, where: Where{Part: "seat", Case: string(SeatClearance)}}
		c, err := space.Clearances(r.ground(worst(side)), r.swingAt(u, r.lowHeight(side), true))
		if err == nil {
			f.capacity, f.where.AtRad, f.where.Along = float64(c.Seat.Clearance), c.Seat.Angle, c.Seat.Along
		}
		return f
	}
	return checker{code: SeatClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("c_min", "clearance under a seat on one line", r.rules.seatClearance))
	}}
}

func (r *rig) footChecker() checker {
	try := func(u trial, side scenario) figure {
		f := figure{demand: r.rules.footClearance.Value, where: Where{Part: "feet", Case: string(FootClearance)}}
		c, err := space.Clearances(r.ground(worst(side)), r.swingAt(u, r.lowHeight(side), true))
		if err == nil {
			f.capacity, f.where.AtRad, f.where.Along = float64(c.Foot.Clearance), c.Foot.Angle, c.Foot.Along
		}
		return f
	}
	return checker{code: FootClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u),
			Term{Symbol: "f", Name: "feet below the seat in the riding posture", Value: float64(r.riders.reach), Unit: "m",
				Refs: []source.Ref{r.k.Parameter(knowledge.LegDropSeated).Ref}},
			factTerm("c_f", "clearance under the feet", r.rules.footClearance))
	}}
}

// stemClearanceChecker compares the room between the swing line and the stem
// with the standard's, and with the outline of a body about the seat.
func (r *rig) stemClearanceChecker() checker {
	try := func(u trial, side scenario) figure {
		rule := space.LinearRule{PerLine: r.rules.sideShare.Value, Constant: quantity.Length(r.rules.sideConstant.Value)}
		required := math.Max(float64(rule.For(u.line)), r.rules.bodyOutline.Value)
		return figure{required, r.stemDistance(u, side), Where{Part: r.on.stem().member.ID, Case: string(StemClearance)}}
	}
	return checker{code: StemClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("k", "room to the stem for each metre of line", r.rules.sideShare),
			factTerm("c_0", "and a constant", r.rules.sideConstant), factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline))
	}}
}

// stemDistance is the least distance in plan from the path of the seat to the
// face of the stem.
func (r *rig) stemDistance(u trial, side scenario) float64 {
	hang := r.on.position(float64(r.armNear(side)))
	stem := r.on.stem()
	seatHeight := math.Max(0, hang.Z-float64(u.line))
	axis := stem.position(math.Min(seatHeight, stem.length()))
	half := float64(u.line) * u.amplitude.Sin()
	people := space.People{Hang: hang, SwingAzimuth: r.azimuth, Ahead: quantity.Length(half), Behind: quantity.Length(half)}
	return math.Max(0, float64(people.Distance(axis))-radius(stem, math.Min(seatHeight, stem.length())))
}

// armNear is the arm where a nearer hang is worse.
func (r *rig) armNear(side scenario) quantity.Length {
	if side == favourable {
		return r.arm.High()
	}
	return r.arm.Low()
}

func (r *rig) fallChecker() checker {
	try := func(u trial, side scenario) figure {
		f := figure{capacity: r.rules.fallLimit.Value, where: Where{Part: "seat", Case: string(FallHeight)}}
		swing := r.swingAt(u, r.highHeight(side), false)
		high, err := space.Fall(r.ground(-worst(side)), swing)
		if err != nil {
			return figure{demand: 1}
		}
		f.demand, f.where.AtRad, f.where.Along = float64(high.Height), high.Angle, high.Along
		f.demand = math.Max(f.demand, r.flightFall(u, swing))
		return f
	}
	return checker{code: FallHeight, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("h_max", "greatest height of fall", r.rules.fallLimit))
	}}
}

// flightFall is the greatest height above ground of a rider who lets go. Only
// where the ground beyond the reach of the line lies lower than all within can
// it pass that of the seat; elsewhere it is not worked out.
func (r *rig) flightFall(u trial, s space.Swing) float64 {
	ground := r.ground(-1)
	reach := quantity.Length(float64(u.line) * u.amplitude.Sin())
	within := min(ground.At(-reach), ground.At(reach))
	beyond := within
	for _, station := range ground.Stations {
		if station.Along < -reach || station.Along > reach {
			beyond = min(beyond, station.Height)
		}
	}
	if beyond >= within {
		return 0
	}
	height, err := space.FlightFall(ground, s)
	if err != nil { // Fall has refused the same swing
		return math.Inf(1)
	}
	return float64(height)
}

// obstacleChecker compares the room between a thing on the ground and the line
// along which seat and let-go flights go with the outline of a body.
func (r *rig) obstacleChecker(index int) checker {
	o := &r.h.Obstacles[index]
	distance, size := resolve(r.k, o.Distance), resolve(r.k, o.Radius)
	at := quantity.Heading(o.Azimuth.Value, 0).Scale(float64(distance.Value))
	try := func(u trial, side scenario) figure {
		ahead, behind := r.keptClear(u)
		people := space.People{Hang: r.hangPoint(), SwingAzimuth: r.azimuth, Ahead: ahead, Behind: behind}
		doubt := quantity.Length(quantity.Tail * float64(distance.Sd))
		room := people.Distance(at) - size.High() - doubt
		if side == favourable {
			room = people.Distance(at) - size.Low() + doubt
		}
		return figure{r.rules.bodyOutline.Value, math.Max(0, float64(room)), Where{Part: o.What, Case: string(Obstructed)}}
	}
	return checker{code: Obstructed, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u),
			Term{Symbol: "d", Name: "distance from the stem to " + o.What, Value: float64(distance.Value), Unit: "m", Sd: float64(distance.Sd), How: distance.How,
				Path: element(r.at+".obstacles", index)},
			factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline))
	}}
}

func (r *rig) spaceTerms(u trial) []Term {
	h, measured := r.hangHeight()
	height := Term{Symbol: "H", Name: "limb's underside above the ground", Value: float64(h.Value), Unit: "m", Sd: float64(h.Sd), How: h.How, Path: r.at + ".height"}
	if !measured {
		height.Path, height.Note = "", "worked out from the stem as if the ground were level"
	}
	return []Term{
		height,
		{Symbol: "L", Name: "line from the limb to the seat", Value: float64(u.line), Unit: "m", Path: r.at + ".line"},
		{Symbol: "a", Name: "amplitude that space is checked at", Value: u.amplitude.Degrees(), Unit: "deg",
			Refs: []source.Ref{r.rules.spaceAmplitude.Ref, r.rules.allowance.Ref}},
	}
}
