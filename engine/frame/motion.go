package frame

import (
	"math"

	"boughline/quantity"
)

// node returns the motion of a node under the last load case.
func (a *Analysis) node(n int) motion {
	if n == clamped {
		return motion{}
	}
	b := a.motions[freedoms*n : freedoms*(n+1)]
	return motion{quantity.Vec3{X: b[0], Y: b[1], Z: b[2]}, quantity.Vec3{X: b[3], Y: b[4], Z: b[5]}}
}

// tipForce returns what the rest of the frame exerts on the tip of an element,
// about the tip.
func (a *Analysis) tipForce(e *element) wrench {
	held := a.node(e.root).carried(e.d).add(a.drift(e, e.to))
	tip := a.node(e.tip)
	return e.k.push(motion{tip.shift.Sub(held.shift), tip.turn.Sub(held.turn)})
}

// Motion returns the displacement (m) and the rotation (rad, right-hand rule)
// of a place under the last load case solved. It is as exact between nodes as
// on them.
func (a *Analysis) Motion(at Place) (displacement, rotation quantity.Vec3) {
	e := a.elementAt(at)
	s := math.Min(math.Max(float64(at.Along), e.from), e.to)
	m := a.node(e.root).carried(e.piece.axes.X.Scale(s - e.from)).add(a.drift(e, s))
	tip := a.tipForce(e)
	m = m.add(a.deform(e, e.from, s, s, func(t float64) wrench {
		return tip.seen(e.piece.axes.X.Scale(e.to - t))
	}))
	return m.shift, m.turn
}

// Reaction returns the force and the moment that the support exerts on the
// frame under the last load case solved, the moment about the first station of
// the main member. Loads and masses right on that station go into it too.
func (a *Analysis) Reaction() (force, moment quantity.Vec3) {
	on := wrench{}
	for i := range a.elements {
		if e := &a.elements[i]; e.root < 0 {
			on = on.add(a.tipForce(e).seen(e.d)).add(a.beyond(e, e.from))
		}
	}
	for i := range a.loads.Points {
		p := &a.loads.Points[i]
		if node, ok := a.nodeAt(p.At); ok && node == clamped {
			on.force = on.force.Add(p.Force)
		}
	}
	for i := range a.frame.masses {
		m := &a.frame.masses[i]
		if node, ok := a.nodeAt(m.At); ok && node == clamped {
			on.force = on.force.Add(a.loads.Gravity.Scale(float64(m.Mass)))
		}
	}
	return on.force.Scale(-1), on.moment.Scale(-1)
}

// Sag returns how far a place sinks under the last load case solved.
func (a *Analysis) Sag(at Place) quantity.Length {
	displacement, _ := a.Motion(at)
	return quantity.Length(-displacement.Z)
}
