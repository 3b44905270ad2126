package assess

import (
	"math"

	"boughline/quantity"
)

// workOverturning works out the moment that the pull makes about a point of
// the stem, with a steady moment added whose relief does not count.
func (r *rig) workOverturning(w *workbook, u trial, height float64, steady quantity.Vec3) {
	sway := r.swayFactor(u.line)
	p := r.pullMoment(u, height, unfavourable, r.rules.rideFactor.Value*sway, steady)
	w.given(factTerm("gamma_Q", "load factor on riders", r.rules.rideFactor))
	w.input("D_s", "dynamic factor of the tree that sways with the swing, from the parts of its pull near the sway of the tree", sway, "1")
	r.workPull(w, u, angle(r.rules.designAmplitude), p.at, p.loads.pull, "gamma_Q*D_s*")
	lever := tidied(r.on.position(float64(r.armOf(unfavourable))).Sub(r.on.stem().position(height)))
	heading := tidied(r.heading)
	w.input("e_x", "swing direction, east", heading.X, "1")
	w.input("e_y", "swing direction, north", heading.Y, "1")
	w.input("l_x", "hang point east of the point of the stem", lever.X, "m")
	w.input("l_y", "hang point north of it", lever.Y, "m")
	w.input("l_z", "hang point above it", lever.Z, "m")
	ride := tidied(lever.Cross(p.loads.pull))
	steady = tidied(steady)
	w.follows("M_x", "moment of the pull about the axis to the east", "-l_y*V - l_z*H*e_y", ride.X, "N m")
	w.follows("M_y", "moment of it about the axis to the north", "l_z*H*e_x + l_x*V", ride.Y, "N m")
	size := math.Hypot(ride.X, ride.Y)
	if steady.X == 0 && steady.Y == 0 || size == 0 {
		w.follows("M_p", "moment of the pull", "sqrt(M_x^2 + M_y^2)", p.value, "N m")
		return
	}
	w.input("S_x", "moment of the tree's own weight about the axis to the east, by its space frame", steady.X, "N m")
	w.input("S_y", "the same about the axis to the north", steady.Y, "N m")
	w.follows("M_r", "moment of the pull", "sqrt(M_x^2 + M_y^2)", size, "N m")
	w.follows("S_a", "part of the own weight along it", "(M_x*S_x + M_y*S_y)/M_r", (ride.X*steady.X+ride.Y*steady.Y)/size, "N m")
	w.follows("S_b", "part of it square to that", "(M_x*S_y - M_y*S_x)/M_r", (ride.X*steady.Y-ride.Y*steady.X)/size, "N m")
	w.follows("M_p", "moment of pull and own weight; relief does not count", "sqrt((M_r + max(0, S_a))^2 + S_b^2)", p.value, "N m")
}

// tidied takes parts of a vector that are nothing but rounding for 0.
func tidied(v quantity.Vec3) quantity.Vec3 {
	long := v.Norm()
	return quantity.Vec3{X: tidy(v.X, long), Y: tidy(v.Y, long), Z: tidy(v.Z, long)}
}

// workGust works out the moment of the gust about a point of the stem.
func (r *rig) workGust(w *workbook, u trial, height float64) {
	load := r.air.load(u.gust, unfavourable)
	w.given(r.gustTerm(u), r.dragTerm())
	w.input("F_c", "drag of the whole tree in the gust, by strips of its crown", float64(load.Force), "N")
	w.input("M_c", "moment of it about the ground", float64(load.Moment), "N m")
	w.input("z", "height of the section", height, "m")
	w.follows("M_w", "moment of the gust there", "max(0, M_c - F_c*z)", r.windMoment(u, height, unfavourable), "N m")
	w.given(factTerm("gamma_W", "load factor on wind", r.rules.windFactor))
}

func (r *rig) workStem(w *workbook, c *Check, u trial) {
	height := float64(c.Where.Along)
	r.workOverturning(w, u, height, r.ownWeightAbout(height))
	r.workGust(w, u, height)
	stem := r.on.stem()
	outline := r.section(stem, height).thin
	r.workStemOutline(w, stem, height)
	upright, across := outline.SectionModulus()
	w.follows("W", "least section modulus", "min(W_u, W_s)", math.Min(upright, across), "m3")
	w.asked(c, "(M_p + gamma_W*M_w)/W")
	r.workStrength(w)
	w.borne(c, "f_d")
}

// workStemOutline is workOutline for the stem, whose two diameters are no
// upright one and a level one: the frame's names are kept.
func (r *rig) workStemOutline(w *workbook, stem *shape, height float64) {
	inner := &workbook{}
	r.workOutline(inner, stem, height, r.section(stem, height).thin)
	for _, s := range inner.steps {
		switch s.Symbol { // the dynamic factor of the sway has this symbol here
		case "D_s":
			s.Symbol = "D_t"
		case "s_D_s":
			s.Symbol = "s_D_t"
		case "d_s":
			s.Formula = "max(0.001, max(0, D_t - 1.645*s_D_t) - 2*(b + 1.645*s_b))"
		}
		if !w.has(s.Symbol) {
			w.steps = append(w.steps, s)
		}
	}
}

func (r *rig) workRootPlate(w *workbook, c *Check, u trial) {
	r.workOverturning(w, u, 0, quantity.Vec3{})
	r.workGust(w, u, 0)
	w.asked(c, "M_p + gamma_W*M_w")
	var stood []Term
	for _, t := range r.rootPlateTerms() {
		if t.Symbol == "M_mass" {
			w.follows(t.Symbol, t.Name, "m_stem*k_r*exp(-1.645*s_ln)", t.Value, t.Unit)
			continue
		}
		w.given(t)
		if t.Symbol == "M_0" {
			stood = append(stood, t)
		}
	}
	if len(stood) > 0 {
		w.borne(c, "max(M_0, M_mass)")
		return
	}
	w.borne(c, "M_mass")
}
