package wind

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"

	"boughline/quantity"
)

// Load is a horizontal wind force and its moment about the ground.
type Load struct {
	Force  quantity.Force
	Moment quantity.Moment
}

// Height returns the height above ground at which the force acts, 0 for no force.
func (l Load) Height() quantity.Length {
	if l.Force == 0 {
		return 0
	}
	return quantity.Length(float64(l.Moment) / float64(l.Force))
}

// Add returns both loads together.
func (l Load) Add(m Load) Load { return Load{l.Force + m.Force, l.Moment + m.Moment} }

// points is the order of the Gauss-Legendre rule on each smooth piece.
const points = 32

// rule holds the places and weights of that rule on -1 to 1.
var rule = func() (r struct{ at, weight [points]float64 }) {
	quad.Legendre{}.FixedLocations(r.at[:], r.weight[:], -1, 1)
	return r
}()

// CrownLoad returns the wind load of the crown: the integral over height of
// rho/2 U^2 C_d w R(U), w the width of the ellipse, and its first moment about the
// ground. It never falls with the wind. Dynamic rise by sway is not in it.
// The integral is split where the profile or the factor has a kink; its relative error
// is below 1e-10.
// Errors: values out of range, a crown that reaches below the ground.
// Source: strip theory of drag with the peak pressure of EN 1991-1-4; the factor
// is described at Reconfiguration.
func CrownLoad(c Crown, p Profile, averaging Averaging) (Load, error) {
	if err := checkAll(p.Check(), averaging.check(), c.check()); err != nil {
		return Load{}, fmt.Errorf("wind on crown: %w", err)
	}
	centre, halfHeight := float64(c.CentreHeight), float64(c.HalfHeight)
	// The ellipse's angle t, z = centre + halfHeight sin t, takes the vertical
	// tangents at top and base out of the integrand.
	perAngle := func(t float64) (z, line float64) {
		z = centre + halfHeight*math.Sin(t)
		width := 2 * float64(c.HalfWidth) * math.Cos(t)
		return z, c.pressure(quantity.Length(z), p, averaging) * width * halfHeight * math.Cos(t)
	}
	breaks := []float64{-math.Pi / 2}
	for _, kink := range c.kinks(p, averaging) {
		breaks = append(breaks, math.Asin((float64(kink)-centre)/halfHeight))
	}
	return integrate(perAngle, append(breaks, math.Pi/2)), nil
}

// pressure returns the drag per frontal area at height z.
func (c Crown) pressure(z quantity.Length, p Profile, averaging Averaging) float64 {
	speed := p.Speed(z, averaging)
	if speed == 0 {
		return 0
	}
	at := speed
	if c.Reconfiguring.AtCentre {
		at = p.Speed(c.CentreHeight, averaging)
	}
	return float64(p.AirDensity) / 2 * c.Reconfiguring.squared(speed, at) * c.Drag
}

// kinks returns the heights inside the crown, rising, at which the drag per area
// is not smooth.
func (c Crown) kinks(p Profile, averaging Averaging) []quantity.Length {
	candidates := []quantity.Length{p.Terrain.LeastHeight}
	if z, ok := p.HeightOf(c.Reconfiguring.Reference, averaging); ok {
		candidates = append(candidates, z)
	}
	return slices.DeleteFunc(candidates, func(z quantity.Length) bool { return z <= c.Base() || z >= c.Top() })
}

// integrate returns the integrals of the line load and of its first moment
// between neighbouring breaks.
func integrate(line func(x float64) (z, load float64), breaks []float64) Load {
	var sum Load
	for i, high := range breaks[1:] {
		middle, half := (breaks[i]+high)/2, (high-breaks[i])/2
		if half == 0 { // a stem of no height
			continue
		}
		for j, at := range rule.at {
			z, load := line(middle + half*at)
			force := load * half * rule.weight[j]
			sum = sum.Add(Load{quantity.Force(force), quantity.Moment(z * force)})
		}
	}
	return sum
}

func checkAll(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
