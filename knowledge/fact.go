package knowledge

import (
	"math"
	"strconv"

	"boughline/source"
)

// siUnit turns the unit of a table into an SI unit.
type siUnit struct {
	factor float64
	symbol string
}

var siUnits = map[string]siUnit{
	"1": {1, "1"}, "%": {0.01, "1"},
	"m": {1, "m"}, "cm": {0.01, "m"}, "mm": {0.001, "m"}, "m2": {1, "m2"},
	"kg": {1, "kg"}, "kg/m3": {1, "kg/m3"},
	"N": {1, "N"}, "kN": {1000, "N"}, "N/m": {1, "N/m"}, "N m": {1, "N m"}, "N m/kg": {1, "N m/kg"},
	"Pa": {1, "Pa"}, "MPa": {1e6, "Pa"},
	"deg": {math.Pi / 180, "rad"}, "m/s": {1, "m/s"}, "kt": {1852.0 / 3600, "m/s"},
	"s": {1, "s"}, "min": {1, "min"}, "month": {1, "month"},
}

// number reads a finite number.
func (r row) number(column string) float64 {
	x, err := strconv.ParseFloat(r.text(column), 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		r.problem("%s is %q, not a number", column, r.text(column))
		return 0
	}
	return x
}

// maybe reads a number that may be left out.
func (r row) maybe(column string) (float64, bool) {
	if r.text(column) == "" {
		return 0, false
	}
	return r.number(column), true
}

// whole reads a whole number.
func (r row) whole(column string) int {
	n, err := strconv.Atoi(r.text(column))
	if err != nil {
		r.problem("%s is %q, not a whole number", column, r.text(column))
	}
	return n
}

// factOf returns a value of the row as a fact in SI units.
func (r row) factOf(value, low, high float64, unit string) source.Fact {
	si, ok := siUnits[unit]
	if !ok {
		r.problem("the unit %q is not known", unit)
	}
	if low > value || value > high {
		r.problem("the value %g is outside its range from %g to %g", value, low, high)
	}
	f := si.factor
	return source.Fact{Value: value * f, Low: low * f, High: high * f, Unit: si.symbol, Ref: r.ref()}
}

// fact reads a column whose numbers are in unit.
func (r row) fact(column, unit string) source.Fact {
	x := r.number(column)
	return r.factOf(x, x, x, unit)
}

// maybeFact reads a column that may be left out; nil says that it is.
func (r row) maybeFact(column, unit string) *source.Fact {
	if r.text(column) == "" {
		return nil
	}
	f := r.fact(column, unit)
	return &f
}
