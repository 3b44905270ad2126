package frame

import (
	"math"

	"boughline/quantity"
)

// Section is the wood of a member at one cut: an ellipse with a concentric
// elliptical hollow. The zero Inner means no hollow.
type Section struct{ Outer, Inner Ellipse }

// Area returns the area of the wood.
func (s Section) Area() quantity.Area { return s.Outer.Area() - s.Inner.Area() }

// SecondMoments returns the second moments of area of the wood that
// resist bending in the upright plane and across it.
func (s Section) SecondMoments() (uprightM4, acrossM4 float64) {
	ov, oh := s.Outer.SecondMoments()
	iv, ih := s.Inner.SecondMoments()
	return ov - iv, oh - ih
}

// TorsionConstant returns the torsion constant, outer minus inner
// ellipse. Exact for a solid ellipse, a tube and any hollow of the outline's
// own shape, because the stress lines of the solid ellipse are such ellipses
// (Timoshenko & Goodier, from memory); an approximation for other hollows.
func (s Section) TorsionConstant() (m4 float64) {
	return s.Outer.TorsionConstant() - s.Inner.TorsionConstant()
}

// SectionModulus returns the section moduli of the wood against
// bending in the upright plane and across it.
func (s Section) SectionModulus() (uprightM3, acrossM3 float64) {
	v, h := s.SecondMoments()
	return v / (float64(s.Outer.Upright) / 2), h / (float64(s.Outer.Across) / 2)
}

// stiffnesses holds what the bending, stretch and twist of a section need:
// areas in m2, the rest in m4.
type stiffnesses struct{ area, upright, across, torsion float64 }

func (s Section) stiffnesses() stiffnesses {
	v, h := s.SecondMoments()
	return stiffnesses{float64(s.Area()), v, h, s.TorsionConstant()}
}

// valid says whether the section has wood all round.
func (s Section) valid() bool {
	o, i := s.Outer, s.Inner
	finite := !math.IsInf(float64(o.Upright+o.Across), 0)
	return finite && o.Upright > 0 && o.Across > 0 && i.Upright >= 0 && i.Across >= 0 &&
		i.Upright < o.Upright && i.Across < o.Across
}
