package frame

import "boughline/quantity"

// PointLoad is a force in N on the centreline. It keeps its direction.
type PointLoad struct {
	At    Place
	Force quantity.Vec3
}

// LineLoad is a force spread along a member, in N per metre of its length,
// linear from FromForce at From to ToForce at To (arc lengths from the
// member's first station). Wind on a stretch of limb is one.
type LineLoad struct {
	Member             int
	From, To           quantity.Length
	FromForce, ToForce quantity.Vec3
}

// LoadCase is one set of loads. Gravity is an acceleration in m/s2; lumped
// masses weigh in it always, the wood only with SelfWeight. The zero Gravity
// means that nothing weighs.
type LoadCase struct {
	Gravity    quantity.Vec3
	SelfWeight bool
	Points     []PointLoad
	Lines      []LineLoad
}

// StandardWeight returns the load case of the frame's own weight: wood and
// lumped masses in standard gravity.
func StandardWeight() LoadCase {
	return LoadCase{Gravity: quantity.Vec3{Z: -quantity.StandardGravity}, SelfWeight: true}
}

// at returns the load per metre at an arc length, and zero off the loaded
// stretch.
func (l LineLoad) at(s float64) quantity.Vec3 {
	from, to := float64(l.From), float64(l.To)
	if s < from || s > to || to <= from {
		return quantity.Vec3{}
	}
	return l.FromForce.Add(l.ToForce.Sub(l.FromForce).Scale((s - from) / (to - from)))
}
