package assess

import "boughline/quantity"

// BendingStation is one section of the load path with what bends it, at the
// unfavourable 5 % values and factored as in the check of bending in still air.
type BendingStation struct {
	Member string
	Along  quantity.Length // from the foot of the member
	// Moment is the greatest over the swing, Self the part of the limb's own
	// weight.
	Moment, Self quantity.Moment
	// Stress is the greatest along the grain, Strength what it is compared
	// with; at a union, that of the union.
	Stress, Strength quantity.Stress
	Diameter         quantity.Length // inside bark, upright
	Union            bool
}

// DesignAmplitude returns the angle that strength is checked at.
func (h HangFigure) DesignAmplitude() quantity.Angle { return angle(h.rig.rules.designAmplitude) }

// Bending works out every section of the load path from the hang point to the
// stem: limb by limb, in each from its foot outwards.
func (h HangFigure) Bending() [][]BendingStation {
	r := h.rig
	var list [][]BendingStation
	for i := range r.limbs {
		part := &r.limbs[i]
		var stations []BendingStation
		for j := range part.cuts {
			stations = append(stations, r.bendingStation(part, j))
		}
		list = append(list, stations)
	}
	return list
}

func (r *rig) bendingStation(part *limbPart, j int) BendingStation {
	c := &part.cuts[j]
	swings := r.swings(r.asked, angle(r.rules.designAmplitude), r.rules.rideFactor.Value, 0)
	p := swings.greatest(func(l loads) float64 { return c.stress(l, unfavourable) }, 0)
	s := BendingStation{
		Member: part.on.member.ID, Along: quantity.Length(c.along), Union: j == 0,
		Moment: quantity.Moment(momentOf(c.forces(p.loads, unfavourable))), Self: quantity.Moment(momentOf(c.self)),
		Stress: quantity.Stress(p.value), Strength: r.species.design, Diameter: c.section.thin.Upright,
	}
	if j == 0 {
		capacity, demand := r.unionCapacity(part, c, p, unfavourable)
		if demand > 0 {
			s.Strength = quantity.Stress(p.value * capacity / demand)
		}
	}
	return s
}

// SectionFigure is a section of a member: two diameters over bark and the
// bark on one side, as measured.
type SectionFigure struct {
	Member                  string
	Along                   quantity.Length
	Upright, Across         quantity.Length
	Bark                    quantity.Length
	ThinUpright, ThinAcross quantity.Length // inside bark, the 5 % values
}

// Section returns the section of the hang's limb at an arc length.
func (h HangFigure) Section(along quantity.Length) SectionFigure {
	s := h.rig.on
	d := s.diameter(float64(along))
	bark, _ := h.rig.barkOf(s, (d.upright.Value+d.across.Value)/2)
	thin := h.rig.section(s, float64(along)).thin
	return SectionFigure{s.member.ID, along, d.upright.Value, d.across.Value, bark.Value, thin.Upright, thin.Across}
}
