package frame

import (
	"slices"

	"boughline/quantity"
)

// span is a stretch of one piece without a concentrated load inside.
type span struct {
	from, to float64
	piece    *piece
	load     spread
	beyond   wrench // all loads from the end at to onwards, those at to included
}

// wrench is a force and its moment about some point of the frame: about the
// nearest one at hand, lest large levers cancel.
type wrench struct{ force, moment quantity.Vec3 }

func (w wrench) add(v wrench) wrench {
	return wrench{w.force.Add(v.force), w.moment.Add(v.moment)}
}

// seen returns the wrench about a point from which its own point lies at arm.
func (w wrench) seen(arm quantity.Vec3) wrench {
	return wrench{w.force, w.moment.Add(arm.Cross(w.force))}
}

// spread is the load per metre along one span: the weight of the wood, and
// lines of load summed to one.
type spread struct {
	weight quantity.Vec3 // N/m3: density times gravity
	lines  []LineLoad
}

func (l spread) at(p *piece, s float64) quantity.Vec3 {
	q := quantity.Vec3{}
	if l.weight != q {
		q = l.weight.Scale(p.area(s))
	}
	for i := range l.lines {
		q = q.Add(l.lines[i].at(s))
	}
	return q
}

// between returns the load on a stretch of the span about the point at its
// root end. Area and lever are at most of third degree in s together, so two
// Gauss points are exact.
func (l spread) between(p *piece, from, to float64) wrench {
	w := wrench{}
	if l.weight == (quantity.Vec3{}) && len(l.lines) == 0 {
		return w
	}
	for _, g := range gauss2 {
		s := from + g.at*(to-from)
		q := wrench{force: l.at(p, s).Scale(g.weight * (to - from))}
		w = w.add(q.seen(p.axes.X.Scale(s - from)))
	}
	return w
}

// spans cuts the pieces of a member at its knots and sums the loads from the
// tip inwards. It returns the total of the member as well.
func (m *member) spans(load spread, knots []knot) ([]span, wrench) {
	slices.SortStableFunc(knots, func(a, b knot) int {
		if a.along < b.along {
			return -1
		} else if a.along > b.along {
			return 1
		}
		return 0
	})
	var spans []span
	sum := wrench{}
	k := len(knots) - 1
	for i := len(m.pieces) - 1; i >= 0; i-- {
		p := &m.pieces[i]
		for to := p.to; to > p.from; {
			for ; k >= 0 && knots[k].along > to-joint; k-- {
				sum = sum.add(knots[k].load)
			}
			from := p.from
			if k >= 0 && knots[k].along > p.from+joint {
				from = knots[k].along
			}
			spans = append(spans, span{from, to, p, load, sum})
			sum = sum.seen(p.axes.X.Scale(to - from)).add(load.between(p, from, to))
			to = from
		}
	}
	for ; k >= 0; k-- {
		sum = sum.add(knots[k].load)
	}
	slices.Reverse(spans)
	return spans, sum
}

// forces returns the section forces within the span at arc length s.
func (s *span) forces(along float64) SectionForces {
	w := s.beyond.seen(s.piece.axes.X.Scale(s.to - along)).add(s.load.between(s.piece, along, s.to))
	return s.piece.axes.resolve(w)
}

// locate returns the span on the given side of an arc length.
func locate(spans []span, along float64, side Side) *span {
	low, high := 0, len(spans)-1
	for low < high {
		middle := (low + high) / 2
		before := along < spans[middle].to-joint
		if side == RootSide {
			before = along <= spans[middle].to+joint
		}
		if before {
			high = middle
		} else {
			low = middle + 1
		}
	}
	return &spans[low]
}
