package frame

import (
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// massMatrix assembles the consistent mass matrix: wood on the cubic shapes of
// a beam bending and linear stretch, its twist on linear shapes, lumped masses
// as points. Bending rotary inertia is left out (Euler-Bernoulli).
func (a *Analysis) massMatrix() *numeric.Skyline {
	m := numeric.NewSkyline(a.profile())
	for i := range a.elements {
		a.addMass(m, &a.elements[i])
	}
	for i := range a.frame.masses {
		body := &a.frame.masses[i]
		if node, ok := a.nodeAt(body.At); ok && node != clamped {
			for k := range 3 {
				m.Add(freedoms*node+k, freedoms*node+k, float64(body.Mass))
			}
		}
	}
	return m
}

// shapes are the motions of a point of an element for a unit of its end
// motions: linear and cubic shares of the end displacements and the arms of
// the end rotations, root first.
type shapes struct {
	linear, cubic, arm [2]float64
}

// shapesAt returns the shapes a share t of the way along an element (Hermite
// cubics, handbook).
func shapesAt(t, length float64) shapes {
	return shapes{
		linear: [2]float64{1 - t, t},
		cubic:  [2]float64{1 - 3*t*t + 2*t*t*t, 3*t*t - 2*t*t*t},
		arm:    [2]float64{length * (t - 2*t*t + t*t*t), length * (t*t*t - t*t)},
	}
}

// addMass integrates density times shapes times shapes over the element.
func (a *Analysis) addMass(m *numeric.Skyline, e *element) {
	nodes := [2]int{e.root, e.tip}
	length := e.to - e.from
	density := float64(a.frame.material.Density)
	across := acrossOf(e.piece.axes.X)
	for _, g := range gauss5 {
		section := e.piece.section(e.from + g.at*length).stiffnesses()
		w := density * g.weight * length
		sh := shapesAt(g.at, length)
		for i, row := range nodes {
			for j, column := range nodes {
				if row == clamped || column == clamped {
					continue
				}
				e.massBlocks(m, freedoms*row, freedoms*column, i, j, w, section, sh, &across)
			}
		}
	}
}

// acrossOf returns the matrix that turns a rotation into the slope of the
// centreline: theta cross x.
func acrossOf(x quantity.Vec3) matrix3 { return crossMatrix(x.Scale(-1)) }

// massBlocks adds one Gauss point's share of the mass between end i and end j.
func (e *element) massBlocks(m *numeric.Skyline, row, column, i, j int, w float64, c stiffnesses, sh shapes, across *matrix3) {
	x := e.piece.axes.X
	shift, mixed, turn := matrix3{}, across.scaled(w*c.area*sh.cubic[i]*sh.arm[j]), matrix3{}
	cubic := w * c.area * sh.cubic[i] * sh.cubic[j]
	shift.addIdentity(cubic)
	shift.addOuter(w*c.area*sh.linear[i]*sh.linear[j]-cubic, x, x)
	arms := w * c.area * sh.arm[i] * sh.arm[j]
	turn.addIdentity(arms)
	turn.addOuter(w*(c.upright+c.across)*sh.linear[i]*sh.linear[j]-arms, x, x)
	for r := range 3 {
		for k := range 3 {
			addUpper(m, row+r, column+k, shift[r][k])
			addUpper(m, row+3+r, column+3+k, turn[r][k])
			addUpper(m, row+r, column+3+k, mixed[r][k])
		}
	}
	back := across.scaled(w * c.area * sh.arm[i] * sh.cubic[j])
	back = back.transposed()
	for r := range 3 {
		for k := range 3 {
			addUpper(m, row+3+r, column+k, back[r][k])
		}
	}
}

// addUpper adds an entry of the upper half; its mirror image comes from the
// other order of the ends.
func addUpper(m *numeric.Skyline, i, j int, v float64) {
	if i <= j {
		m.Add(i, j, v)
	}
}

// Mass returns the moving mass of the model, wood and lumped masses.
func (a *Analysis) Mass() quantity.Mass {
	sum := a.frame.WoodMass()
	for _, m := range a.frame.masses {
		sum += m.Mass
	}
	return sum
}

// effective returns the mass that a mode moves at a point with the mass-normal
// displacement there.
func effective(displacement float64) quantity.Mass {
	if displacement == 0 {
		return quantity.Mass(math.Inf(1))
	}
	return quantity.Mass(1 / (displacement * displacement))
}
