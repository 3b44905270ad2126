package frame

import (
	"math"

	"boughline/quantity"
)

// Fibre is a point of the outer perimeter and the stress along the grain
// there, tension positive. Upright and Across are its distances from the
// centreline along the axes v and h of the cut.
type Fibre struct {
	Stress          quantity.Stress
	Upright, Across quantity.Length
}

// Fibres returns the greatest and the least stress along the grain over the
// outer perimeter, sigma = N/A - M_h y_v/I_v + M_v y_h/I_h (beam theory, plane
// sections): on an ellipse the bending part is a sine of the parametric angle,
// so the two lie opposite each other at N/A +- sqrt((M_h d_v/2 I_v)^2 +
// (M_v d_h/2 I_h)^2). Without bending every fibre has the same stress and the
// one on the centreline stands for all.
func (s Section) Fibres(f SectionForces) (greatest, least Fibre) {
	upright, across := s.SectionModulus()
	mean := float64(f.Axial) / float64(s.Area())
	v := -float64(f.MomentAcross) / upright
	h := float64(f.MomentUpright) / across
	bending := math.Hypot(v, h)
	cos, sin := 0.0, 0.0
	if bending > 0 {
		cos, sin = v/bending, h/bending
	}
	at := Fibre{
		quantity.Stress(mean + bending),
		s.Outer.Upright / 2 * quantity.Length(cos),
		s.Outer.Across / 2 * quantity.Length(sin),
	}
	return at, Fibre{quantity.Stress(mean - bending), -at.Upright, -at.Across}
}

// Worst returns the fibre with the greatest stress of either sign; the tension
// side where both are equal.
func (s Section) Worst(f SectionForces) Fibre {
	const rounding = 1e-12
	greatest, least := s.Fibres(f)
	if math.Abs(float64(least.Stress)) > math.Abs(float64(greatest.Stress))*(1+rounding) {
		return least
	}
	return greatest
}

// TransverseShear returns the greatest shear stress from both shear forces,
// V Q/(I b) at the neutral line of each: 4/3 V/A in a solid ellipse (Jourawski
// 1856; Timoshenko & Gere, Mechanics of Materials, from memory). The two are
// taken as acting at one point, which is so in a solid section and on the safe
// side in a hollow one.
func (s Section) TransverseShear(f SectionForces) quantity.Stress {
	upright, across := s.SecondMoments()
	o, i := s.Outer, s.Inner
	ov, oh := float64(o.Upright), float64(o.Across)
	iv, ih := float64(i.Upright), float64(i.Across)
	v := float64(f.ShearUpright) * (oh*ov*ov - ih*iv*iv) / 12 / (upright * (oh - ih))
	h := float64(f.ShearAcross) * (ov*oh*oh - iv*ih*ih) / 12 / (across * (ov - iv))
	return quantity.Stress(math.Hypot(v, h))
}

// TorsionShear returns the greatest shear stress from a torque, at the ends of
// the minor axis: 2 T/(pi a b^2) for a solid ellipse with half-axes a > b
// (Saint-Venant; Timoshenko & Goodier, Theory of Elasticity, from memory). A
// hollow of the outline's own shape is exact too; other hollows follow the
// torsion constant.
func (s Section) TorsionShear(torque quantity.Moment) quantity.Stress {
	a, b := float64(s.Outer.Upright)/2, float64(s.Outer.Across)/2
	if a < b {
		a, b = b, a
	}
	lever := 2 * a * a * b / (a*a + b*b)
	return quantity.Stress(math.Abs(float64(torque)) * lever / s.TorsionConstant())
}

// Shear returns the shear stress along the grain to compare with a shear
// strength: the greatest from the shear forces plus the greatest from the
// torque, on the safe side where they do not meet at one point.
func (s Section) Shear(f SectionForces) quantity.Stress {
	return s.TransverseShear(f) + s.TorsionShear(f.Torque)
}
