package frame

import (
	"math"
	"slices"

	"boughline/quantity"
)

// joint is how close two places must be to count as one, m.
const joint = 1e-9

// Frame is a checked model with its geometry worked out. It does not change
// and may be used from several goroutines.
type Frame struct {
	material Material
	masses   []Mass
	members  []member
}

// member is a line of pieces; a piece has one direction, and outlines linear
// along it.
type member struct {
	name     string
	pieces   []piece
	length   float64
	parent   Place // Member is -1 for the main member
	children []int
}

type piece struct {
	from, to           float64 // arc lengths
	start              quantity.Vec3
	axes               Axes
	outerFrom, outerTo Ellipse
	innerFrom, innerTo Ellipse
}

// point returns the position at arc length s.
func (p *piece) point(s float64) quantity.Vec3 {
	return p.start.Add(p.axes.X.Scale(s - p.from))
}

// section returns the wood at arc length s.
func (p *piece) section(s float64) Section {
	t := (s - p.from) / (p.to - p.from)
	return Section{p.outerFrom.between(p.outerTo, t), p.innerFrom.between(p.innerTo, t)}
}

// area returns the area of the wood at arc length s, m2; it is quadratic in s.
func (p *piece) area(s float64) float64 { return float64(p.section(s).Area()) }

// axesAlong returns the axes of a stretch in the direction of the unit vector
// x; the package comment says how they lie.
func axesAlong(x quantity.Vec3) Axes {
	const nearVertical = 1e-9
	up := quantity.Vec3{Z: 1}
	v := up.Sub(x.Scale(x.Z))
	if v.Norm() < nearVertical {
		v = quantity.Vec3{X: -math.Copysign(1, x.Z)}
	}
	v = v.Unit()
	return Axes{x, v, x.Cross(v)}
}

// find returns the piece on the given side of arc length s, and s moved onto
// an end of the piece that it all but touches. An s off the member is moved to
// its nearer end.
func (m *member) find(s float64, side Side) (*piece, float64) {
	s = math.Min(math.Max(s, 0), m.length)
	i, _ := slices.BinarySearchFunc(m.pieces, s, func(p piece, s float64) int {
		beyond := s - p.to
		if side == RootSide {
			beyond -= joint
		} else {
			beyond += joint
		}
		if beyond < 0 {
			return 1
		}
		return -1
	})
	p := &m.pieces[min(i, len(m.pieces)-1)]
	if s < p.from+joint {
		s = p.from
	} else if s > p.to-joint {
		s = p.to
	}
	return p, s
}

// Length returns the arc length of a member.
func (f *Frame) Length(member int) quantity.Length {
	return quantity.Length(f.members[member].length)
}

// Members returns the number of members.
func (f *Frame) Members() int { return len(f.members) }

// Position returns the point of the centreline at a place, m.
func (f *Frame) Position(at Place) quantity.Vec3 {
	p, s := f.members[at.Member].find(float64(at.Along), TipSide)
	return p.point(s)
}

// Section returns the wood on one side of a place.
func (f *Frame) Section(at Place, side Side) Section {
	p, s := f.members[at.Member].find(float64(at.Along), side)
	return p.section(s)
}

// Axes returns the directions of the member on one side of a place.
func (f *Frame) Axes(at Place, side Side) Axes {
	p, _ := f.members[at.Member].find(float64(at.Along), side)
	return p.axes
}

// Breaks lists the arc lengths of a member at which its direction, its taper
// or its hollow changes, or a mass or another member is fixed to it; both ends
// included, in order.
func (f *Frame) Breaks(member int) []quantity.Length {
	pieces := f.members[member].pieces
	breaks := make([]quantity.Length, 0, len(pieces)+1)
	breaks = append(breaks, 0)
	for i := range pieces {
		breaks = append(breaks, quantity.Length(pieces[i].to))
	}
	return breaks
}

// WoodMass returns the mass of the wood of all members, without the lumped
// masses; overlaps at kinks and forks are not taken off.
func (f *Frame) WoodMass() quantity.Mass {
	mass := 0.0
	for i := range f.members {
		for j := range f.members[i].pieces {
			p := &f.members[i].pieces[j]
			for _, g := range gauss2 {
				s := p.from + g.at*(p.to-p.from)
				mass += g.weight * (p.to - p.from) * p.area(s)
			}
		}
	}
	return quantity.Mass(mass * float64(f.material.Density))
}
