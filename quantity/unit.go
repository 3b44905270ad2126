package quantity

import "math"

// Unit is a unit in which a quantity may be written. One of it is Factor SI
// units.
type Unit struct {
	Symbol string
	Factor float64
}

// Kind is a quantity that can be written with a unit.
type Kind interface {
	~float64
	// Units lists the units of the quantity, the one for output first.
	Units() []Unit
	// Name is the quantity in words, as errors say it.
	Name() string
}

const (
	foot       = 0.3048     // m, exact (international foot, 1959)
	inch       = foot / 12  // m
	poundMass  = 0.45359237 // kg, exact (international pound, 1959)
	poundForce = poundMass * StandardGravity
	knot       = 1852.0 / 3600 // m/s, exact (international nautical mile, 1929)
	mileHour   = 5280 * foot / 3600
)

// Units implements Kind.
func (Length) Units() []Unit {
	return []Unit{{"m", 1}, {"cm", 0.01}, {"mm", 0.001}, {"km", 1000}, {"ft", foot}, {"in", inch}}
}

// Units implements Kind.
func (Mass) Units() []Unit {
	return []Unit{{"kg", 1}, {"g", 0.001}, {"t", 1000}, {"lb", poundMass}}
}

// Units implements Kind.
func (Force) Units() []Unit {
	return []Unit{{"N", 1}, {"kN", 1000}, {"daN", 10}, {"kgf", StandardGravity}, {"lbf", poundForce}}
}

// Units implements Kind.
func (Stress) Units() []Unit {
	return []Unit{{"Pa", 1}, {"kPa", 1e3}, {"MPa", 1e6}, {"GPa", 1e9}, {"N/mm2", 1e6}}
}

// Units implements Kind.
func (Angle) Units() []Unit {
	return []Unit{{"deg", math.Pi / 180}, {"rad", 1}}
}

// Units implements Kind.
func (Speed) Units() []Unit {
	return []Unit{{"m/s", 1}, {"km/h", 1 / 3.6}, {"kt", knot}, {"mph", mileHour}}
}

// Units implements Kind.
func (Density) Units() []Unit { return []Unit{{"kg/m3", 1}} }

// Name implements Kind.
func (Length) Name() string { return "length" }

// Name implements Kind.
func (Mass) Name() string { return "mass" }

// Name implements Kind.
func (Force) Name() string { return "force" }

// Name implements Kind.
func (Stress) Name() string { return "stress" }

// Name implements Kind.
func (Angle) Name() string { return "angle" }

// Name implements Kind.
func (Speed) Name() string { return "speed" }

// Name implements Kind.
func (Density) Name() string { return "density" }
