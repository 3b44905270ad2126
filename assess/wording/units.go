package wording

import "math"

// Units are the units in which quantities are written: metric, or feet, inches
// and pounds.
type Units struct{ Feet bool }

// Metric writes metres, kilograms and newtons.
var Metric = Units{}

// scale is a unit for a value in an SI unit.
type scale struct {
	from   float64 // for values in the SI unit from this on
	factor float64
	unit   string
}

var metric = map[string][]scale{
	"Pa":  {{1e9, 1e-9, "GPa"}, {1e4, 1e-6, "MPa"}},
	"N":   {{1e3, 1e-3, "kN"}},
	"N m": {{1e3, 1e-3, "kN m"}},
	"N/m": {{1e3, 1e-3, "kN/m"}},
	"rad": {{0, 180 / math.Pi, "deg"}},
}

// Exact by definition: the international foot and pound (1959), the mile of 5280
// feet, standard gravity for the pound-force.
const (
	foot       = 0.3048
	inch       = foot / 12
	pound      = 0.45359237
	poundForce = pound * 9.80665
	mile       = 5280 * foot
)

var feet = map[string][]scale{
	"m":     {{2 * foot, 1 / foot, "ft"}, {0, 1 / inch, "in"}},
	"m2":    {{0, 1 / (foot * foot), "ft2"}},
	"m3":    {{0, 1 / (inch * inch * inch), "in3"}},
	"m4":    {{0, 1 / (inch * inch * inch * inch), "in4"}},
	"m/s":   {{0, 3600 / mile, "mph"}},
	"m/s2":  {{0, 1 / foot, "ft/s2"}},
	"kg":    {{0, 1 / pound, "lb"}},
	"kg/m3": {{0, foot * foot * foot / pound, "lb/ft3"}},
	"N":     {{0, 1 / poundForce, "lbf"}},
	"N m":   {{0, 1 / (poundForce * foot), "lbf ft"}},
	"J":     {{0, 1 / (poundForce * foot), "ft lbf"}},
	"N/m":   {{0, foot / poundForce, "lbf/ft"}},
	"m/N":   {{0, poundForce / foot, "ft/lbf"}},
	"Pa":    {{0, inch * inch / poundForce, "psi"}},
	"rad":   {{0, 180 / math.Pi, "deg"}},
}

// in is a value of an SI unit in the unit that reads best. A unit that is
// not known stays.
func (u Units) in(value float64, unit string) (float64, string) {
	table := metric
	if u.Feet {
		table = feet
	}
	for _, s := range table[unit] {
		if math.Abs(value) >= s.from {
			return value * s.factor, s.unit
		}
	}
	return value, unit
}

// length writes a place along something: metres to the centimetre, or feet.
func (u Units) length(metres float64) string {
	if u.Feet {
		return u.Quantity(metres, "m")
	}
	return fixed(metres, 2) + " m"
}
