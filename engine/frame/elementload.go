package frame

import (
	"math"

	"boughline/quantity"
)

// weight returns the weight of the wood in N/m3.
func (a *Analysis) weight() quantity.Vec3 {
	if !a.loads.SelfWeight {
		return quantity.Vec3{}
	}
	return a.loads.Gravity.Scale(float64(a.frame.material.Density))
}

// inside says whether a point load lies between the nodes of the element.
func (e *element) inside(p *PointLoad) bool {
	s := float64(p.At.Along)
	return p.At.Member == e.member && s > e.from+joint && s < e.to-joint
}

// overlap returns the part of a line of load on the element beyond s.
func (e *element) overlap(l *LineLoad, s float64) (from, to float64, any bool) {
	if l.Member != e.member {
		return 0, 0, false
	}
	from, to = math.Max(s, float64(l.From)), math.Min(e.to, float64(l.To))
	return from, to, to > from
}

// beyond returns the loads within the element beyond arc length s, about the
// cut at s.
func (a *Analysis) beyond(e *element, s float64) wrench {
	w := a.weightBeyond(e, s)
	for i := range a.loads.Lines {
		w = w.add(e.lineBeyond(&a.loads.Lines[i], s))
	}
	for i := range a.loads.Points {
		if p := &a.loads.Points[i]; e.inside(p) && float64(p.At.Along) > s {
			w = w.add(e.pointBeyond(p, s))
		}
	}
	return w
}

func (a *Analysis) weightBeyond(e *element, s float64) wrench {
	weight := a.weight()
	sum, moment := e.wood.load(e.to - s)
	return wrench{weight.Scale(sum), e.piece.axes.X.Cross(weight.Scale(moment))}
}

func (e *element) lineBeyond(l *LineLoad, s float64) wrench {
	w := wrench{}
	from, to, any := e.overlap(l, s)
	if !any {
		return w
	}
	for _, g := range gauss2 {
		t := from + g.at*(to-from)
		q := wrench{force: l.at(t).Scale(g.weight * (to - from))}
		w = w.add(q.seen(e.piece.axes.X.Scale(t - s)))
	}
	return w
}

func (e *element) pointBeyond(p *PointLoad, s float64) wrench {
	return wrench{force: p.Force}.seen(e.piece.axes.X.Scale(float64(p.At.Along) - s))
}

// drift returns the motion at arc length s, relative to the held root of the
// element, from the loads within the element. Every load is integrated up to
// where its section forces cease to be smooth.
func (a *Analysis) drift(e *element, s float64) motion {
	m := motion{}
	if weight := a.weight(); s == e.to {
		m = e.own.under(weight, &e.piece.axes)
	} else if weight != (quantity.Vec3{}) {
		m = a.deform(e, e.from, s, s, func(t float64) wrench { return a.weightBeyond(e, t) })
	}
	for i := range a.loads.Lines {
		l := &a.loads.Lines[i]
		from, to, any := e.overlap(l, e.from)
		if !any {
			continue
		}
		cut := func(t float64) wrench { return e.lineBeyond(l, t) }
		m = m.add(a.deform(e, e.from, math.Min(from, s), s, cut))
		if s > from {
			m = m.add(a.deform(e, from, math.Min(to, s), s, cut))
		}
	}
	for i := range a.loads.Points {
		if load := &a.loads.Points[i]; e.inside(load) {
			end := math.Min(s, float64(load.At.Along))
			m = m.add(a.deform(e, e.from, end, s, func(t float64) wrench { return e.pointBeyond(load, t) }))
		}
	}
	return m
}
