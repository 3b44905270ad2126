package assess

import (
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
	if r.lie == nil {
		return nil
	}
	list := []checker{r.seatChecker(), r.footChecker(), r.stemClearanceChecker(), r.fallChecker()}
	if c, any := r.limbClearanceChecker(); any {
		list = append(list, c)
	}
	for _, o := range r.obstacles() {
		list = append(list, r.obstacleChecker(o))
	}
	return list
}

// hangHeight is the height of the limb's underside above the ground at the
// plumb line: as measured there, or by the shape of the tree over the spot
// heights about it. Where neither is known it is that of the shape over level
// ground, and a reason asks for it.
func (r *rig) hangHeight() (height quantity.Measured[quantity.Length], measured bool) {
	if r.height == nil {
		value, measured := r.findHangHeight()
		r.height = &hangHeight{value, measured}
	}
	return r.height.value, r.height.measured
}

// hangHeight is that of the limb above the ground, worked out once.
type hangHeight struct {
	value    quantity.Measured[quantity.Length]
	measured bool
}

func (r *rig) findHangHeight() (height quantity.Measured[quantity.Length], measured bool) {
	if r.h.Height != nil {
		return resolve(r.k, *r.h.Height), true
	}
	z := quantity.Length(r.hangPoint().Z) - r.on.diameter(float64(r.arm.Value)).upright.Value/2
	if r.lie == nil || r.lie.foot == nil || r.risesByGuess() {
		return resolve(r.k, quantity.Measured[quantity.Length]{Value: z, How: quantity.ByEye}), false
	}
	// As sure as a height by clinometer, and as the ground below.
	shape := resolve(r.k, quantity.Measured[quantity.Length]{Value: z, How: quantity.Clinometer})
	sd := math.Hypot(float64(shape.Sd), float64(r.lie.foot.Sd))
	return quantity.Measured[quantity.Length]{Value: z - r.lie.foot.Height, Sd: quantity.Length(sd), SdStated: true, How: quantity.Clinometer}, true
}

// risesByGuess reports whether the height at which a limb of the load path
// rises was guessed.
func (r *rig) risesByGuess() bool {
	return slices.ContainsFunc(chain(r.on), func(s *shape) bool {
		return s.parent != nil && (!s.measured() || guessed(s.member.RisesAt.How))
	})
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
		return r.leastClearance(u, side, f, func(c space.Clearance) space.Nearest { return c.Seat })
	}
	return checker{code: SeatClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("c_min", "clearance under a seat on one line", r.rules.seatClearance))
	}}
}

func (r *rig) footChecker() checker {
	try := func(u trial, side scenario) figure {
		f := figure{demand: r.rules.footClearance.Value, where: Where{Part: "feet", Case: string(FootClearance)}}
		return r.leastClearance(u, side, f, func(c space.Clearance) space.Nearest { return c.Foot })
	}
	return checker{code: FootClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u),
			Term{Symbol: "f", Name: "feet below the seat in the riding posture", Value: float64(r.riders.reach), Unit: "m",
				Refs: []source.Ref{r.k.Parameter(knowledge.LegDropSeated).Ref}},
			factTerm("c_f", "clearance under the feet", r.rules.footClearance))
	}}
}

// leastClearance fills in the least clearance over all profiles that the swing
// may take; none is left where it can't be worked out.
func (r *rig) leastClearance(u trial, side scenario, f figure, of func(space.Clearance) space.Nearest) figure {
	for i, c := range r.clearances(u, side) {
		if low := of(c); i == 0 || float64(low.Clearance) < f.capacity {
			f.capacity, f.where.AtRad, f.where.Along = float64(low.Clearance), low.Angle, low.Along
		}
	}
	return f
}

// clearances are those over each profile, none where they can't be worked out.
// Seat and feet ask for the same ones one after the other.
func (r *rig) clearances(u trial, side scenario) []space.Clearance {
	if r.clear.known && r.clear.trial == u && r.clear.side == side {
		return r.clear.list
	}
	swing := r.swingAt(u, r.lowHeight(side), true)
	r.clear = clearances{known: true, trial: u, side: side}
	for _, ground := range r.lie.grounds(worst(side)) {
		c, err := space.Clearances(ground, swing)
		if err != nil {
			r.clear.list = nil
			break
		}
		r.clear.list = append(r.clear.list, c)
		if r.hasty && float64(c.Seat.Clearance) < r.rules.seatClearance.Value {
			break // that one falls short is all that is asked for
		}
	}
	return r.clear.list
}

// onTheLine looks at the swing line alone, off which most lines that do not fit
// need not be tried.
func (r *rig) onTheLine(u trial) (short Short, falls bool) {
	if r.lie == nil {
		return Short{}, false
	}
	c, err := space.Clearances(r.lie.grounds(worst(unfavourable))[0], r.swingAt(u, r.lowHeight(unfavourable), true))
	if err != nil {
		return Short{}, false
	}
	for _, s := range []Short{
		{SeatClearance, "seat", float64(c.Seat.Clearance) / r.rules.seatClearance.Value},
		{FootClearance, "feet", float64(c.Foot.Clearance) / r.rules.footClearance.Value},
	} {
		if !s.Holds() {
			s.Margin = math.Max(0, s.Margin)
			return s, true
		}
	}
	high, err := space.FallHeight(r.lie.grounds(-worst(unfavourable))[0], r.swingAt(u, r.highHeight(unfavourable), false))
	if limit := r.rules.fallLimit.Value; err == nil && !holds(limit/float64(high)) {
		return Short{FallHeight, "seat", limit / float64(high)}, true
	}
	return Short{}, false
}

// clearances are those worked out last.
type clearances struct {
	known bool
	trial trial
	side  scenario
	list  []space.Clearance
}

// stemClearanceChecker compares the room between the swing line and the stem
// with the standard's, and the room that a launch off the line leaves with the
// outline of a body.
func (r *rig) stemClearanceChecker() checker {
	body := r.rules.bodyOutline.Value
	try := func(u trial, side scenario) figure {
		where := Where{Part: r.on.stem().member.ID, Case: string(StemClearance)}
		rule := space.LinearRule{PerLine: r.rules.sideShare.Value, Constant: quantity.Length(r.rules.sideConstant.Value)}
		return worse(
			figure{math.Max(float64(rule.For(u.line)), body), r.stemDistance(r.seatLine(u, side), u), where},
			figure{body, r.stemDistance(r.seatReach(u, side), u), where})
	}
	return checker{code: StemClearance, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("k", "room to the stem for each metre of line", r.rules.sideShare),
			factTerm("c_0", "and a constant", r.rules.sideConstant), factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline),
			factTerm("psi", "by how much a launch may leave the swing line", r.rules.sidewaysLaunch),
			Term{Symbol: "y", Name: "how far such a launch drifts to the side of the plumb line", Value: float64(r.drift(u)), Unit: "m"})
	}}
}

// stemDistance is the least distance in plan from where the seat goes to the
// face of the stem.
func (r *rig) stemDistance(seat space.Reach, u trial) float64 {
	stem := r.on.stem()
	height := math.Min(math.Max(0, seat.Hang.Z-float64(u.line)), stem.length())
	return math.Max(0, float64(seat.Polygon(0, 0).Distance(stem.position(height)))-radius(stem, height))
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
		for _, ground := range r.lie.grounds(-worst(side)) {
			high, err := space.Fall(ground, swing)
			if err != nil {
				return figure{demand: 1}
			}
			if float64(high.Height) > f.demand {
				f.demand, f.where.AtRad, f.where.Along = float64(high.Height), high.Angle, high.Along
			}
		}
		if r.hasty && !holds(f.margin()) {
			return f
		}
		f.demand = r.flightFall(swing, f.demand)
		return f
	}
	return checker{code: FallHeight, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		return append(r.spaceTerms(u), factTerm("h_max", "greatest height of fall", r.rules.fallLimit))
	}}
}

// flightFall is the greatest height above ground of a rider who lets go, over
// all profiles that the swing may take, at least that of the seat. It is worked
// out only where it can be the greater.
func (r *rig) flightFall(s space.Swing, seat float64) float64 {
	greatest := seat
	for _, ground := range r.lie.grounds(-1) {
		enough := greatest
		if r.hasty {
			enough = math.Max(enough, r.rules.fallLimit.Value)
		}
		most, err := space.FlightFallAtMost(ground, s, quantity.Length(enough))
		if err == nil && float64(most) <= enough {
			continue
		}
		height, err := space.FlightFall(ground, s)
		if err != nil { // Fall has refused the same swing
			return math.Inf(1)
		}
		greatest = math.Max(greatest, float64(height))
	}
	return greatest
}

func (r *rig) spaceTerms(u trial) []Term {
	h, measured := r.hangHeight()
	height := Term{Symbol: "H", Name: "limb's underside above the ground", Value: float64(h.Value), Unit: "m", Sd: float64(h.Sd), How: h.How, Path: r.at + ".height"}
	switch {
	case !measured:
		height.Path, height.Note = "", "worked out from the stem as if the ground were level"
	case r.h.Height == nil:
		height.Path, height.Note = r.path+".ground", "by the shape of the tree over the spot heights about it"
	}
	return []Term{
		height,
		{Symbol: "L", Name: "line from the limb to the seat", Value: float64(u.line), Unit: "m", Path: r.at + ".line"},
		{Symbol: "a", Name: "amplitude that space is checked at", Value: u.amplitude.Degrees(), Unit: "deg",
			Refs: []source.Ref{r.rules.spaceAmplitude.Ref, r.rules.allowance.Ref}},
	}
}
