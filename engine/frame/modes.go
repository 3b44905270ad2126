package frame

import (
	"errors"
	"fmt"
	"math"

	"boughline/quantity"
)

// Mode is one undamped mode of small vibration about the unloaded shape.
type Mode struct {
	Frequency quantity.Frequency
	analysis  *Analysis
	shape     []float64 // by node, scaled to a modal mass of 1 kg
}

// EffectiveMass returns the mass that, on a spring of the mode's frequency,
// answers a force at a place in a direction as the mode does: one over the
// square of the mass-normal displacement there. It is infinite where the mode
// does not move in that direction.
func (m Mode) EffectiveMass(at Place, direction quantity.Vec3) quantity.Mass {
	return effective(m.Displacement(at).Dot(direction.Unit()))
}

// Displacement returns the displacement of a place in the mode, scaled so that
// the modal mass is 1 kg (unit 1/sqrt(kg)).
func (m Mode) Displacement(at Place) quantity.Vec3 {
	e := m.analysis.elementAt(at)
	length := e.to - e.from
	sh := shapesAt((math.Min(math.Max(float64(at.Along), e.from), e.to)-e.from)/length, length)
	x := e.piece.axes.X
	u := quantity.Vec3{}
	for i, n := range [2]int{e.root, e.tip} {
		if n == clamped {
			continue
		}
		b := m.shape[freedoms*n : freedoms*(n+1)]
		shift, turn := quantity.Vec3{X: b[0], Y: b[1], Z: b[2]}, quantity.Vec3{X: b[3], Y: b[4], Z: b[5]}
		along := x.Scale(shift.Dot(x))
		u = u.Add(along.Scale(sh.linear[i])).Add(shift.Sub(along).Scale(sh.cubic[i])).
			Add(turn.Cross(x).Scale(sh.arm[i]))
	}
	return u
}

// ErrNoConvergence says that the modes did not settle.
var ErrNoConvergence = errors.New("the modes did not settle")

// Modes returns the lowest modes of vibration of wood and lumped masses, in
// order of frequency. Their error goes with the fourth power of the element
// length; the default mesh gives the first six to better than 1e-4.
func (a *Analysis) Modes(count int) ([]Mode, error) { return a.modes(count, nil) }

// PlaneModes returns the lowest bending modes of a straight unforked limb that
// move along a direction perpendicular to it: V or H of its axes. The error
// says so for another shape of frame.
func (a *Analysis) PlaneModes(count int, direction quantity.Vec3) ([]Mode, error) {
	n := direction.Unit()
	x, straight := a.frame.straight()
	if !straight || math.Abs(n.Dot(x)) > 1e-6 || n == (quantity.Vec3{}) {
		return nil, fmt.Errorf("modes in the plane of %v; expected a direction across a straight limb without forks", direction)
	}
	axis := x.Cross(n)
	return a.modes(count, func(v []float64) {
		for i := 0; i < len(v); i += freedoms {
			project(v[i:i+3], n)
			project(v[i+3:i+6], axis)
		}
	})
}

// project keeps the part of v along the unit vector n.
func project(v []float64, n quantity.Vec3) {
	k := v[0]*n.X + v[1]*n.Y + v[2]*n.Z
	v[0], v[1], v[2] = k*n.X, k*n.Y, k*n.Z
}

func (f *Frame) straight() (x quantity.Vec3, ok bool) {
	x = f.members[0].pieces[0].axes.X
	for i := range f.members[0].pieces {
		if f.members[0].pieces[i].axes.X.Sub(x).Norm() > 1e-9 {
			return x, false
		}
	}
	return x, len(f.members) == 1
}
