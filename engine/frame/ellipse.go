package frame

import (
	"math"

	"boughline/quantity"
)

// Ellipse is an elliptical outline by its two full diameters: Upright along
// the axis v, Across along the axis h. A circle has both equal.
type Ellipse struct{ Upright, Across quantity.Length }

// Circle returns the outline of a round section.
func Circle(diameter quantity.Length) Ellipse { return Ellipse{diameter, diameter} }

// Scale returns the ellipse with both diameters times k.
func (e Ellipse) Scale(k float64) Ellipse {
	return Ellipse{e.Upright * quantity.Length(k), e.Across * quantity.Length(k)}
}

// between returns the ellipse a share t of the way from e to f.
func (e Ellipse) between(f Ellipse, t float64) Ellipse {
	l := quantity.Length(t)
	return Ellipse{e.Upright + (f.Upright-e.Upright)*l, e.Across + (f.Across-e.Across)*l}
}

// Area returns the area inside the ellipse.
func (e Ellipse) Area() quantity.Area {
	return quantity.Area(math.Pi / 4 * float64(e.Upright) * float64(e.Across))
}

// SecondMoments returns the second moments of area that resist bending
// in the upright plane (integral of y_v squared) and across it (y_h squared):
// pi/64 d_h d_v^3 and pi/64 d_v d_h^3 (handbook formula of the ellipse).
func (e Ellipse) SecondMoments() (uprightM4, acrossM4 float64) {
	v, h := float64(e.Upright), float64(e.Across)
	return math.Pi / 64 * h * v * v * v, math.Pi / 64 * v * h * h * h
}

// TorsionConstant returns the torsion constant of the full ellipse:
// pi/16 (d_v d_h)^3/(d_v^2 + d_h^2) (Saint-Venant 1855, from memory; as in
// Timoshenko & Goodier, Theory of Elasticity, torsion of an elliptical bar).
func (e Ellipse) TorsionConstant() (m4 float64) {
	v, h := float64(e.Upright), float64(e.Across)
	if v <= 0 || h <= 0 {
		return 0
	}
	return math.Pi / 16 * v * h * v * h * v * h / (v*v + h*h)
}

// SectionModulus returns the section moduli against bending in the
// upright plane and across it: pi/32 d_h d_v^2 and pi/32 d_v d_h^2.
func (e Ellipse) SectionModulus() (uprightM3, acrossM3 float64) {
	v, h := float64(e.Upright), float64(e.Across)
	return math.Pi / 32 * h * v * v, math.Pi / 32 * v * h * h
}
