package frame

import (
	"fmt"

	"boughline/quantity"
)

// Flexibility returns, in m/N, the displacement of a place in direction i
// under a unit force there in direction j, along the axes of the site. It
// replaces the last load case solved.
func (a *Analysis) Flexibility(at Place) ([3][3]float64, error) {
	c := matrix3{}
	for j, force := range []quantity.Vec3{{X: 1}, {Y: 1}, {Z: 1}} {
		if err := a.Solve(LoadCase{Points: []PointLoad{{at, force}}}); err != nil {
			return c, fmt.Errorf("flexibility: %w", err)
		}
		u, _ := a.Motion(at)
		c[0][j], c[1][j], c[2][j] = u.X, u.Y, u.Z
	}
	return c, nil
}

// Stiffness returns, in N/m, the force that holds a place displaced by a unit
// length: the inverse of Flexibility. The error says so where the place cannot
// move, as at the support.
func (a *Analysis) Stiffness(at Place) ([3][3]float64, error) {
	c, err := a.Flexibility(at)
	if err != nil {
		return c, err
	}
	m := matrix3(c)
	k, ok := m.inverse()
	if !ok {
		return c, fmt.Errorf("stiffness %v m along member %d: it cannot move; expected a place off the support",
			float64(at.Along), at.Member)
	}
	return k, nil
}

// StiffnessAlong returns the stiffness of a place against a force in one
// direction, measured along that direction: 1/(n C n) of the flexibility C.
func (a *Analysis) StiffnessAlong(at Place, direction quantity.Vec3) (quantity.Stiffness, error) {
	n := direction.Unit()
	if n == (quantity.Vec3{}) {
		return 0, fmt.Errorf("direction %v; expected a vector above 0", direction)
	}
	if err := a.Solve(LoadCase{Points: []PointLoad{{at, n}}}); err != nil {
		return 0, fmt.Errorf("stiffness: %w", err)
	}
	u, _ := a.Motion(at)
	if give := u.Dot(n); give > 0 {
		return quantity.Stiffness(1 / give), nil
	}
	return 0, fmt.Errorf("stiffness %v m along member %d: it cannot move; expected a place off the support",
		float64(at.Along), at.Member)
}
