package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/quantity"
	"boughline/source"
)

// Parts of the section forces by name, in the order of workForces.
const (
	axialPart = 1 << iota
	bendingParts
	shearParts
	twistPart
)

// unitParts reads the parts asked for from the unit cases of a cut.
func (r *rig) unitParts(c *cut, which int) []unitPart {
	var list []unitPart
	add := func(bit int, symbol, name, unit, per string, of func(*frame.SectionForces) float64) {
		if which&bit != 0 {
			list = append(list, unitPart{symbol, name, unit, per, of(&c.self),
				r.heading.X*of(&c.far[0]) + r.heading.Y*of(&c.far[1]), -of(&c.far[2]), of(&c.wind)})
		}
	}
	add(axialPart, "N", "force along the limb", "N", "N/N", func(f *frame.SectionForces) float64 { return float64(f.Axial) })
	add(bendingParts, "M_u", "bending moment in the upright plane", "N m", "N m/N", func(f *frame.SectionForces) float64 { return float64(f.MomentAcross) })
	add(bendingParts, "M_s", "bending moment to the side", "N m", "N m/N", func(f *frame.SectionForces) float64 { return float64(f.MomentUpright) })
	add(shearParts, "V_u", "shear force in the upright plane", "N", "N/N", func(f *frame.SectionForces) float64 { return float64(f.ShearUpright) })
	add(shearParts, "V_s", "shear force to the side", "N", "N/N", func(f *frame.SectionForces) float64 { return float64(f.ShearAcross) })
	add(twistPart, "T_t", "twisting moment", "N m", "N m/N", func(f *frame.SectionForces) float64 { return float64(f.Torque) })
	return list
}

// cutOfCheck is the section that governs a check, with its limb.
func (r *rig) cutOfCheck(c *Check) (*limbPart, *cut) {
	for i := range r.limbs {
		part := &r.limbs[i]
		if part.on.member.ID != c.Where.Part {
			continue
		}
		for k := range part.cuts {
			if quantity.Length(part.cuts[k].along) == c.Where.Along {
				return part, &part.cuts[k]
			}
		}
	}
	return &r.limbs[0], &r.limbs[0].cuts[0]
}

// workOutline works out the wood inside the bark at the unfavourable values:
// diameters, area, section moduli.
func (r *rig) workOutline(w *workbook, s *shape, along float64, outline frame.Ellipse) {
	w.input("x", "place of the section, from the foot of "+s.member.ID, along, "m")
	d := s.diameter(along)
	bark, row := r.barkOf(s, (d.upright.Value+d.across.Value)/2)
	inside := func(symbol, name, of string, m quantity.Measured[quantity.Length], value quantity.Length) {
		w.uncertain(measuredTerm(of, name+" over bark", m, d.path))
		t := measuredTerm("b", "bark on one side", bark, s.path+".bark")
		if s.member.Bark == nil {
			t.Path, t.Refs, t.Note = "", []source.Ref{row.Ref}, row.Note
		}
		w.uncertain(t)
		w.follows(symbol, name+" inside bark, low 5 % value", "max(0.001, max(0, "+of+" - 1.645*s_"+of+") - 2*(b + 1.645*s_b))", float64(value), "m")
	}
	inside("d_u", "upright diameter", "D_u", d.upright, outline.Upright)
	inside("d_s", "level diameter", "D_s", d.across, outline.Across)
	upright, across := outline.SectionModulus()
	w.follows("A", "area", "3.14159265*d_u*d_s/4", float64(outline.Area()), "m2")
	w.follows("W_u", "section modulus in the upright plane", "3.14159265*d_s*d_u^2/32", upright, "m3")
	w.follows("W_s", "section modulus to the side", "3.14159265*d_u*d_s^2/32", across, "m3")
}

// workMean works out the mean strength of a member from that of clear wood.
func (r *rig) workMean(w *workbook) {
	w.given(r.morTerm(), factTerm("k_m", "strength of a limb by that of clear wood", r.rules.memberFactor))
	w.follows("f_mean", "mean strength of a limb", "f_clear*k_m", float64(r.species.strength.Mean), "Pa")
}

// workStrength works out the design strength: the 5 % fractile of a lognormal
// law over the material factor.
func (r *rig) workStrength(w *workbook) {
	r.workMean(w)
	cov := r.species.strength.CoV
	w.given(factTerm("V_c", "variation of clear wood", r.species.wood.CoV), factTerm("V_m", "variation of that share", r.rules.memberCoV))
	w.follows("V_f", "variation of the two together", "sqrt((1 + V_c^2)*(1 + V_m^2) - 1)", cov, "1")
	w.follows("v_ln", "standard deviation of its logarithm", "sqrt(ln(1 + V_f^2))", math.Sqrt(math.Log1p(cov*cov)), "1")
	w.follows("f_5", "strength, 5 % fractile", "f_mean*exp(-v_ln^2/2 - 1.645*v_ln)", float64(r.species.strength.Characteristic), "Pa")
	w.given(factTerm("gamma_M", "material factor", r.rules.materialFactor))
	w.follows("f_d", "design strength of the limb", "f_5/gamma_M", float64(r.species.design), "Pa")
}

// workForm works out the share of strength that a union has.
func (r *rig) workForm(w *workbook, s *shape) {
	limb, parent := s.diameter(0).across, r.parentDiameter(s)
	_, path := r.unionOf(s)
	w.uncertain(measuredTerm("D_0", "level diameter of the limb at its foot, over bark", limb, s.diameter(0).path))
	w.uncertain(measuredTerm("D_p", "diameter of the parent just above", parent, path))
	w.follows("a_r", "aspect ratio, limb over parent, the high value", "(D_0 + 1.645*s_D_0)/max(0.001, D_p - 1.645*s_D_p)", r.aspect(s, unfavourable), "1")
	first, last := r.rules.form[0], r.rules.form[1]
	w.input("a_1", "aspect ratio up to which a union has its full share", first.Aspect, "1", r.rules.formFirst.Ref)
	w.input("k_1f", "that share", first.Factor, "1", r.rules.formFirst.Ref)
	w.input("a_2", "aspect ratio from which on it falls no further", last.Aspect, "1", r.rules.formLast.Ref)
	w.input("k_2f", "the share there", last.Factor, "1", r.rules.formLast.Ref)
	formula := "k_1f + (k_2f - k_1f)*min(1, max(0, (a_r - a_1)/(a_2 - a_1)))"
	if r.barkIncluded(s) {
		w.given(factTerm("k_bark", "share of strength with bark turned in", r.rules.includedFactor))
		formula = "(" + formula + ")*k_bark"
	}
	w.follows("k_form", "share of strength that the union has", formula, r.formFactor(s, unfavourable), "1")
}
