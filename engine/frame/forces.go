package frame

import "boughline/quantity"

// SectionForces are the forces that the part beyond a cut exerts on the part
// before it: Axial positive in tension, shear and moments along the axes v and
// h of the cut, moments about the centreline point of the cut by the
// right-hand rule. Force (N) and Moment (N m) are the same two vectors in the
// frame of the site. MomentAcross acts about h and bends in the upright plane;
// a limb that carries a weight has it negative.
type SectionForces struct {
	Axial, ShearUpright, ShearAcross    quantity.Force
	Torque, MomentAcross, MomentUpright quantity.Moment
	Force, Moment                       quantity.Vec3
}

// Add returns the section forces of both load cases together; both must belong
// to the same cut.
func (f SectionForces) Add(g SectionForces) SectionForces {
	return SectionForces{
		f.Axial + g.Axial, f.ShearUpright + g.ShearUpright, f.ShearAcross + g.ShearAcross,
		f.Torque + g.Torque, f.MomentAcross + g.MomentAcross, f.MomentUpright + g.MomentUpright,
		f.Force.Add(g.Force), f.Moment.Add(g.Moment),
	}
}

// Scale returns the section forces of the loads times k.
func (f SectionForces) Scale(k float64) SectionForces {
	n, m := quantity.Force(k), quantity.Moment(k)
	return SectionForces{
		f.Axial * n, f.ShearUpright * n, f.ShearAcross * n,
		f.Torque * m, f.MomentAcross * m, f.MomentUpright * m,
		f.Force.Scale(k), f.Moment.Scale(k),
	}
}

// Axes are the directions of a member at a cut: X from root to tip, V upright,
// H = X cross V across.
type Axes struct{ X, V, H quantity.Vec3 }

// resolve splits a force and a moment into the parts along the axes.
func (a Axes) resolve(w wrench) SectionForces {
	force, moment := w.force, w.moment
	return SectionForces{
		Axial:         quantity.Force(force.Dot(a.X)),
		ShearUpright:  quantity.Force(force.Dot(a.V)),
		ShearAcross:   quantity.Force(force.Dot(a.H)),
		Torque:        quantity.Moment(moment.Dot(a.X)),
		MomentAcross:  quantity.Moment(moment.Dot(a.H)),
		MomentUpright: quantity.Moment(moment.Dot(a.V)),
		Force:         force,
		Moment:        moment,
	}
}
