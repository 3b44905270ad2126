package assess

import (
	"math"

	"boughline/engine/gear"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// steady is one pull of a line on an anchor: of riders at rest at some place of
// it, or of the same load let go onto it there, which takes no load factor.
type steady struct {
	pull   quantity.Vec3
	sudden bool
}

// anchor is what makes a rig the end of a line.
type anchor struct {
	line  *line
	index int // among the ends of the line
	part  *survey.Part
}

// pulls are those that a mass of riders and gear makes here.
func (a *anchor) pulls(mass quantity.Mass) []steady { return a.line.pulls(mass)[a.index] }

// greatest is the greatest pull here, let go onto the line.
func (a *anchor) greatest(mass quantity.Mass) quantity.Force {
	most := 0.0
	for _, s := range a.pulls(mass) {
		most = math.Max(most, s.pull.Norm())
	}
	return quantity.Force(most)
}

// greatestSteady is the pull at which a measure is greatest. What comes back
// again and again (a load factor of 1) is not let go onto the line.
func (c swingCase) greatestSteady(measure func(loads) float64, wind float64) peak {
	best := peak{value: math.Inf(-1)}
	for _, s := range c.steady {
		l := loads{s.pull.Scale(c.ride), wind}
		if s.sudden && c.ride <= 1 {
			continue
		} else if s.sudden {
			l.pull = s.pull
		}
		if v := measure(l); v > best.value {
			best = peak{v, 0, l}
		}
	}
	return best
}

// pulls lists the pulls at each end for a mass of riders and gear, which is
// worked out once.
func (l *line) pulls(mass quantity.Mass) [2][]steady {
	if known, ok := l.known[mass]; ok {
		return known
	}
	var ends [2][]steady
	weight := mass.Weight()
	switch l.s.Kind {
	case survey.HammockLine:
		ends = l.hammockPulls(weight)
	case survey.TraverseLine:
		ends = l.traversePulls(weight)
	case survey.ClimbingLine:
		ends = l.climbingPulls(weight)
	}
	l.known[mass] = ends
	return ends
}

// beyondBearing stands for the pull of a line that cannot be worked out.
const beyondBearing quantity.Force = 1e9

func (l *line) sudden() float64 { return l.k.Parameter(knowledge.LineSudden).Value }

// hammockPulls shares the weight evenly between both ends of the body.
func (l *line) hammockPulls(weight quantity.Force) (ends [2][]steady) {
	for _, sudden := range []bool{false, true} {
		load := weight
		if sudden {
			load *= quantity.Force(l.sudden())
		}
		got, err := l.hammock(l.sag().Low(), load).Solve()
		if err != nil {
			got.Horizontal = beyondBearing
		}
		l.add(&ends, got.Horizontal, got.Left.Vertical, got.Right.Vertical, sudden)
	}
	return ends
}

// hammock is the hammock that hangs by a sag below the straight line between
// its anchors, its body as steep as that line.
func (l *line) hammock(sag quantity.Length, load quantity.Force) gear.Hammock {
	span, rise := l.span.High(), l.rise
	body := l.s.Body.Value
	run := (span - body*span/quantity.Length(math.Hypot(float64(span), float64(rise)))) / 2
	strap := func(down quantity.Length) quantity.Length {
		return quantity.Length(math.Hypot(float64(run), float64(down)))
	}
	slope := rise * run / span
	return gear.Hammock{
		RightAnchor: gear.Spot{X: span, Y: rise}, LeftStrap: strap(sag - slope), Body: body, RightStrap: strap(sag + slope),
		LoadLeft: load / 2, LoadRight: load / 2,
	}
}

// walked are the shares of a traverse at which the riders are looked at.
var walked = []quantity.Proportion{0.03, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.97}

// traversePulls goes along the line with the load at rest, and let go onto it.
func (l *line) traversePulls(weight quantity.Force) (ends [2][]steady) {
	for _, sudden := range []bool{false, true} {
		load := weight
		if sudden {
			load *= quantity.Force(l.suddenShare)
		}
		for _, share := range walked {
			got, err := l.tight.Under(load, share)
			if err != nil {
				got.Horizontal = beyondBearing
			}
			l.add(&ends, got.Horizontal, got.Left.Vertical, got.Right.Vertical, sudden)
		}
	}
	return ends
}

// add turns the pulls of a line between two anchors into vectors on them: each
// towards the other, and down.
func (l *line) add(ends *[2][]steady, level, left, right quantity.Force, sudden bool) {
	towards := l.towards.Scale(float64(level))
	ends[0] = append(ends[0], steady{towards.Add(quantity.Vec3{Z: -float64(left)}), sudden})
	ends[1] = append(ends[1], steady{towards.Scale(-1).Add(quantity.Vec3{Z: -float64(right)}), sudden})
}

// climbingPulls are those of a climber at rest, and of a slip into a line that
// is not slack: work positioning, no fall.
func (l *line) climbingPulls(weight quantity.Force) (ends [2][]steady) {
	down := quantity.Vec3{Z: -1}
	leaves := down
	if l.s.Redirect != nil {
		leaves = l.leg
	}
	for _, factor := range []float64{1, l.sudden()} {
		pull := float64(weight) * factor
		first := leaves.Scale(pull)
		if l.s.Fixed == "" || l.s.Fixed == survey.FixedAtBase {
			first = first.Add(down.Scale(pull)) // the other leg pulls as much
		}
		ends[0] = append(ends[0], steady{first, factor > 1})
		if l.s.Redirect != nil {
			ends[1] = append(ends[1], steady{down.Sub(leaves).Scale(pull), factor > 1})
		}
	}
	return ends
}

// peakPull is the greatest pull on any part of the gear.
func (l *line) peakPull(u trial) quantity.Force {
	most := quantity.Force(0)
	for _, end := range l.ends {
		most = max(most, end.anchor.greatest(u.mass+l.riders.seat))
	}
	return most
}

// pullAlong is how far the greatest pull lies off square to the wood that it
// is made fast to.
func (r *rig) pullAlong() quantity.Angle {
	axis := r.on.direction(float64(r.arm.Value))
	steepest := 0.0
	for _, s := range r.anchor.pulls(r.asked.mass + r.riders.seat) {
		steepest = math.Max(steepest, math.Abs(s.pull.Unit().Dot(axis)))
	}
	return quantity.Angle(math.Asin(math.Min(1, steepest)))
}

// anchorCreeps reports whether a part that does not choke would slide along the
// wood.
func (r *rig) anchorCreeps() bool {
	hold := func(p *survey.Part) bool { return p.Hitch == "choker" || p.Hitch == "girth" }
	if p := r.anchor.part; p != nil && hold(p) {
		return false
	}
	for i := range r.gear.Parts {
		if r.anchor.part == nil && hold(&r.gear.Parts[i]) {
			return false
		}
	}
	least, err := gear.CreepAngle(r.k.Parameter(knowledge.AnchorFriction).Value)
	return err == nil && r.pullAlong() > least
}

// linePullTerms are the terms of every check of a line's pull on an anchor.
func (r *rig) linePullTerms(u trial) []Term {
	l, mass := r.anchor.line, u.mass+r.riders.seat
	list := append([]Term{}, r.riders.terms...)
	list = append(list, Term{Symbol: "m", Name: "riders and gear", Value: float64(mass), Unit: "kg"})
	list = append(list, l.shapeTerms()...)
	rest := 0.0
	for _, s := range r.anchor.pulls(mass) {
		if !s.sudden {
			rest = math.Max(rest, s.pull.Norm())
		}
	}
	return append(list,
		Term{Symbol: "T", Name: "greatest pull of the line here, riders at rest", Value: rest, Unit: "N"},
		factTerm("gamma_Q", "load factor on it", r.rules.rideFactor),
		Term{Symbol: "T_s", Name: "the same let go onto it, without a load factor", Value: float64(r.anchor.greatest(mass)), Unit: "N"},
		Term{Symbol: "l", Name: "place of the anchor along the member", Value: float64(r.arm.Value), Unit: "m",
			Sd: float64(r.arm.Sd), How: r.arm.How, Path: r.at + ".at"})
}
