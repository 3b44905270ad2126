package frame

import "boughline/quantity"

// shearFactor is the share of the area that carries shear in the flexibility
// of a full ellipse, from the energy of the parabolic shear stress (9/10 for
// the circle: Timoshenko & Gere, from memory). A hollow section has less;
// shear is a small part of any limb's deflection.
const shearFactor = 0.9

// element is a tapered beam between two nodes within one piece. Every node but
// the clamped one is the tip node of one element, so both share a number.
type element struct {
	member    int
	piece     *piece
	from, to  float64
	root, tip int           // nodes
	d         quantity.Vec3 // from root to tip
	k         tipStiffness
	give      [len(gauss5)]flexibility
	wood      quadratic // area by the distance from the tip
	own       ownDrift
}

// ownDrift is the motion of the tip, relative to a held root, under a unit of
// weight per volume along each axis of the element.
type ownDrift struct{ stretch, shiftV, turnV, shiftH, turnH float64 }

// under returns the motion for a weight per volume.
func (d *ownDrift) under(weight quantity.Vec3, x *Axes) motion {
	v, h := weight.Dot(x.V), weight.Dot(x.H)
	return motion{
		x.X.Scale(weight.Dot(x.X) * d.stretch).Add(x.V.Scale(v * d.shiftV)).Add(x.H.Scale(h * d.shiftH)),
		x.H.Scale(v * d.turnV).Sub(x.V.Scale(h * d.turnH)),
	}
}

// add adds the share of a stretch w with the flexibility f, an arm from the
// tip and the wood beyond it.
func (d *ownDrift) add(w, arm float64, f *flexibility, wood quadratic) {
	force, moment := wood.load(arm)
	d.stretch += w * force * f.axial
	d.turnV += w * moment * f.upright
	d.turnH += w * moment * f.across
	d.shiftV += w * (moment*arm*f.upright + force*f.shear)
	d.shiftH += w * (moment*arm*f.across + force*f.shear)
}

// quadratic is a polynomial c0 + c1 u + c2 u^2.
type quadratic struct{ c0, c1, c2 float64 }

// through returns the quadratic with the given values at 0, length/2 and length.
func through(start, middle, end, length float64) quadratic {
	return quadratic{
		start,
		(-3*start + 4*middle - end) / length,
		2 * (start - 2*middle + end) / (length * length),
	}
}

// load returns the integrals over 0 to u of the polynomial, and of it times
// the distance from u: a weight and its moment about the cut at u.
func (q quadratic) load(u float64) (sum, moment float64) {
	return u * (q.c0 + u*(q.c1/2+u*q.c2/3)), u * u * (q.c0/2 + u*(q.c1/6+u*q.c2/12))
}

// tipStiffness is the stiffness at the tip of an element held at its root, in
// the frame of the site: forces by displacements, forces by rotations, moments
// by rotations.
type tipStiffness struct{ forces, mixed, moments matrix3 }

// flexibility is what a unit of force or moment in a section does per metre.
type flexibility struct{ axial, torsion, upright, across, shear float64 }

func (a *Analysis) flexibility(p *piece, s float64) flexibility {
	c := p.section(s).stiffnesses()
	f := flexibility{
		axial:   1 / (a.young * c.area),
		torsion: 1 / (a.shear * c.torsion),
		upright: 1 / (a.young * c.upright),
		across:  1 / (a.young * c.across),
	}
	if a.shearFlexible {
		f.shear = 1 / (shearFactor * a.shear * c.area)
	}
	return f
}

// stiffness integrates the flexibility of the element as a cantilever and
// inverts it: exact for any taper, so the nodes of a coarse mesh are exact too
// (force method; Przemieniecki, Theory of Matrix Structural Analysis, from
// memory).
func (a *Analysis) stiffness(e *element) tipStiffness {
	var axial, torsion float64
	var v, h plane
	length := e.to - e.from
	e.own = ownDrift{}
	for i, g := range gauss5 {
		f := a.flexibility(e.piece, e.from+g.at*length)
		e.give[i] = f
		w, arm := g.weight*length, length*(1-g.at)
		axial += w * f.axial
		torsion += w * f.torsion
		v.add(w, arm, f.upright, f.shear)
		h.add(w, arm, f.across, f.shear)
		e.own.add(w, arm, &f, e.wood)
	}
	kv, kh := v.inverse(), h.inverse()
	x := e.piece.axes
	k := tipStiffness{}
	k.forces.addOuter(1/axial, x.X, x.X)
	k.forces.addOuter(kv.force, x.V, x.V)
	k.forces.addOuter(kh.force, x.H, x.H)
	k.mixed.addOuter(kv.mixed, x.V, x.H)
	k.mixed.addOuter(-kh.mixed, x.H, x.V)
	k.moments.addOuter(1/torsion, x.X, x.X)
	k.moments.addOuter(kv.moment, x.H, x.H)
	k.moments.addOuter(kh.moment, x.V, x.V)
	return k
}

// plane is the 2 by 2 tip matrix of bending in one plane: of a flexibility, or
// of a stiffness.
type plane struct{ force, mixed, moment float64 }

func (p *plane) add(w, arm, bending, shear float64) {
	p.force += w * (arm*arm*bending + shear)
	p.mixed += w * arm * bending
	p.moment += w * bending
}

func (p plane) inverse() plane {
	det := p.force*p.moment - p.mixed*p.mixed
	return plane{p.moment / det, -p.mixed / det, p.force / det}
}

// motion is a displacement in m and a rotation in radians.
type motion struct{ shift, turn quantity.Vec3 }

func (m motion) add(n motion) motion {
	return motion{m.shift.Add(n.shift), m.turn.Add(n.turn)}
}

// carried returns the motion of a point at the lever d that moves rigidly with m.
func (m motion) carried(d quantity.Vec3) motion {
	return motion{m.shift.Add(m.turn.Cross(d)), m.turn}
}

// push returns the force and the moment at the tip for a motion of the tip
// relative to the root.
func (k *tipStiffness) push(m motion) wrench {
	turned := k.mixed.transposed()
	return wrench{
		k.forces.apply(m.shift).Add(k.mixed.apply(m.turn)),
		turned.apply(m.shift).Add(k.moments.apply(m.turn)),
	}
}

// deform returns what the stretch between two arc lengths adds to the motion
// of the point at arc length at, from the wrench about each cut that cut
// returns: the unit load integral of curvature times lever and of stretch.
func (a *Analysis) deform(e *element, from, to, at float64, cut func(s float64) wrench) motion {
	m, p := motion{}, e.piece
	whole := from == e.from && to == e.to
	for i, g := range gauss5 {
		s := from + g.at*(to-from)
		f := p.axes.resolve(cut(s))
		c := &e.give[i]
		if !whole {
			part := a.flexibility(p, s)
			c = &part
		}
		weight := g.weight * (to - from)
		turn := p.axes.X.Scale(float64(f.Torque) * c.torsion * weight).
			Add(p.axes.H.Scale(float64(f.MomentAcross) * c.upright * weight)).
			Add(p.axes.V.Scale(float64(f.MomentUpright) * c.across * weight))
		stretch := p.axes.X.Scale(float64(f.Axial) * c.axial * weight).
			Add(p.axes.V.Scale(float64(f.ShearUpright) * c.shear * weight)).
			Add(p.axes.H.Scale(float64(f.ShearAcross) * c.shear * weight))
		m.shift = m.shift.Add(turn.Cross(p.axes.X.Scale(at - s))).Add(stretch)
		m.turn = m.turn.Add(turn)
	}
	return m
}
