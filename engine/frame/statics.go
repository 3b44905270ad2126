package frame

import (
	"math"
	"slices"

	"boughline/quantity"
)

// Statics holds the section forces of a frame under one load case, or under
// cases added and scaled. It is exact: the frame is determinate, and the
// weight of linearly tapering wood is integrated without error.
type Statics struct {
	frame *Frame
	terms []term
}

type term struct {
	factor float64
	spans  [][]span // by member, from root to tip
	totals []wrench // all loads of a member and of those that it carries
}

// Statics sums the loads of a case. The error names a load that is off the
// frame or not a number.
func (f *Frame) Statics(c LoadCase) (Statics, error) {
	if err := f.check(c); err != nil {
		return Statics{}, err
	}
	spans := make([][]span, len(f.members))
	total := make([]wrench, len(f.members))
	for i := len(f.members) - 1; i >= 0; i-- {
		knots := f.knots(c, i, total)
		spans[i], total[i] = f.members[i].spans(f.spread(c, i), knots)
	}
	return Statics{f, []term{{1, spans, total}}}, nil
}

// knot is a concentrated load on a member, about the point where it sits, or
// an end of a line of load.
type knot struct {
	along float64
	load  wrench
}

// knots lists the concentrated loads of a member: points, lumped masses and
// the members that it carries, whose totals are known already.
func (f *Frame) knots(c LoadCase, i int, total []wrench) []knot {
	var knots []knot
	m := &f.members[i]
	add := func(along quantity.Length, force quantity.Vec3) {
		_, s := m.find(float64(along), TipSide)
		knots = append(knots, knot{s, wrench{force: force}})
	}
	for _, load := range c.Points {
		if load.At.Member == i {
			add(load.At.Along, load.Force)
		}
	}
	for _, mass := range f.masses {
		if mass.At.Member == i {
			add(mass.At.Along, c.Gravity.Scale(float64(mass.Mass)))
		}
	}
	for _, line := range c.Lines {
		if line.Member == i {
			add(line.From, quantity.Vec3{})
			add(line.To, quantity.Vec3{})
		}
	}
	for _, child := range m.children {
		_, s := m.find(float64(f.members[child].parent.Along), TipSide)
		knots = append(knots, knot{s, total[child]})
	}
	return knots
}

func (f *Frame) spread(c LoadCase, i int) spread {
	l := spread{}
	if c.SelfWeight {
		l.weight = c.Gravity.Scale(float64(f.material.Density))
	}
	for _, line := range c.Lines {
		if line.Member == i {
			l.lines = append(l.lines, line)
		}
	}
	return l
}

// At returns the section forces on one side of a place. A place beyond an end
// of its member is taken at that end. Beyond the tip itself there is no load:
// on its tip side all forces are 0.
func (s Statics) At(at Place, side Side) SectionForces {
	along := math.Min(math.Max(float64(at.Along), 0), s.frame.members[at.Member].length)
	sum := SectionForces{}
	for _, t := range s.terms {
		sum = sum.Add(t.at(at.Member, along, side).Scale(t.factor))
	}
	return sum
}

func (t term) at(member int, along float64, side Side) SectionForces {
	spans := t.spans[member]
	first, last := &spans[0], &spans[len(spans)-1]
	switch {
	case side == TipSide && along > last.to-joint:
		return SectionForces{}
	case side == RootSide && along < joint:
		return first.piece.axes.resolve(t.totals[member])
	}
	sp := locate(spans, along, side)
	return sp.forces(math.Min(math.Max(along, sp.from), sp.to))
}

// Reaction returns the force and the moment that the support exerts on the
// frame, the moment about the first station of the main member.
func (s Statics) Reaction() (force, moment quantity.Vec3) {
	on := s.At(Place{}, RootSide)
	return on.Force.Scale(-1), on.Moment.Scale(-1)
}

// Add returns the statics of both sets of loads together; both must belong to
// the same frame.
func (s Statics) Add(o Statics) Statics {
	return Statics{s.frame, append(slices.Clone(s.terms), o.terms...)}
}

// Scale returns the statics of the loads times k.
func (s Statics) Scale(k float64) Statics {
	terms := slices.Clone(s.terms)
	for i := range terms {
		terms[i].factor *= k
	}
	return Statics{s.frame, terms}
}
