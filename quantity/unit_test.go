package quantity

import (
	"math"
	"testing"
)

// The exact definitions of the units, as decimal numbers: International
// System of Units, BIPM SI Brochure (9th ed., 2019); international yard and
// pound agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237 kg);
// international nautical mile, Monaco 1929 (1852 m); standard gravity, 3rd
// CGPM 1901 (9.80665 m/s2). Products were worked out by hand. From memory.
func TestUnitsFollowTheirDefinitions(t *testing.T) {
	checkUnits[Length](t, map[string]float64{
		"m": 1, "cm": 0.01, "mm": 0.001, "km": 1000, "ft": 0.9144 / 3, "in": 0.0254})
	checkUnits[Mass](t, map[string]float64{
		"kg": 1, "g": 0.001, "t": 1000, "lb": 0.45359237})
	checkUnits[Force](t, map[string]float64{
		"N": 1, "kN": 1000, "daN": 10, "kgf": 9.80665, "lbf": 4.4482216152605})
	checkUnits[Stress](t, map[string]float64{
		"Pa": 1, "kPa": 1e3, "MPa": 1e6, "GPa": 1e9, "N/mm2": 1e6})
	checkUnits[Angle](t, map[string]float64{
		"deg": math.Pi / 180, "rad": 1})
	checkUnits[Speed](t, map[string]float64{
		"m/s": 1, "km/h": 1000.0 / 3600, "kt": 1852.0 / 3600, "mph": 0.44704})
	checkUnits[Density](t, map[string]float64{"kg/m3": 1})
}

func checkUnits[Q Kind](t *testing.T, want map[string]float64) {
	t.Helper()
	var q Q
	if got := len(q.Units()); got != len(want) {
		t.Errorf("%s has %d units, want %d", q.Name(), got, len(want))
	}
	for symbol, factor := range want {
		m, err := Parse[Q]("1 " + symbol)
		// One unit in the last place: the factors of inch and mile are quotients.
		if got := float64(m.Value); err != nil || math.Abs(got-factor) > 2e-16*factor {
			t.Errorf("1 %s = %v SI units, %v; want %v", symbol, got, err, factor)
		}
	}
}

func TestUnitSymbolsAreUnique(t *testing.T) {
	checkUnique[Length](t)
	checkUnique[Mass](t)
	checkUnique[Force](t)
	checkUnique[Stress](t)
	checkUnique[Angle](t)
	checkUnique[Speed](t)
	checkUnique[Density](t)
}

func checkUnique[Q Kind](t *testing.T) {
	t.Helper()
	seen := map[string]bool{}
	var q Q
	for _, u := range q.Units() {
		if seen[u.Symbol] {
			t.Errorf("%s has the unit %s twice", q.Name(), u.Symbol)
		}
		seen[u.Symbol] = true
	}
}

// A mass of 1 kg weighs 1 kgf by the definition of the kilogram-force, one
// pound weighs 1 lbf.
func TestWeight(t *testing.T) {
	if got := Mass(1).Weight(); got != 9.80665 {
		t.Errorf("1 kg weighs %v", got)
	}
	pound, _ := Parse[Mass]("1 lb")
	poundForce, _ := Parse[Force]("1 lbf")
	if pound.Value.Weight() != poundForce.Value {
		t.Errorf("1 lb weighs %v, 1 lbf is %v", pound.Value.Weight(), poundForce.Value)
	}
}

func TestDegrees(t *testing.T) {
	if got := (90 * Degree).Degrees(); got != 90 {
		t.Errorf("90 deg gave %v", got)
	}
	if s, c := (30 * Degree).Sin(), (60 * Degree).Cos(); math.Abs(s-0.5) > 1e-15 || math.Abs(c-0.5) > 1e-15 {
		t.Errorf("sin 30 deg = %v, cos 60 deg = %v; want 0.5", s, c)
	}
}
