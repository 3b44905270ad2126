package knowledge

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"strconv"
	"testing"

	"boughline/source"
)

// exportedKeys reads the constants of parameter_keys.go.
func exportedKeys(t *testing.T) []string {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "parameter_keys.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	var keys []string
	ast.Inspect(file, func(n ast.Node) bool {
		if spec, ok := n.(*ast.ValueSpec); ok {
			key, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
			if err != nil {
				t.Fatal(err)
			}
			keys = append(keys, key)
		}
		return true
	})
	return keys
}

func TestEveryParameterHasAConstant(t *testing.T) {
	b := base(t)
	constants := map[string]bool{}
	for _, key := range exportedKeys(t) {
		constants[key] = true
		if f := b.Parameter(key); f.Unit == "" || f.Ref.Source.Title == "" {
			t.Errorf("%s has unit %q and source %q", key, f.Unit, f.Ref.Source.Title)
		}
	}
	for _, key := range b.Parameters() {
		if !constants[key] {
			t.Errorf("%s has no constant", key)
		}
	}
	if len(constants) != len(b.Parameters()) {
		t.Errorf("%d constants, %d parameters", len(constants), len(b.Parameters()))
	}
}

func TestUnknownParameterPanics(t *testing.T) {
	defer func() {
		if recover() == nil {
			t.Error("an unknown key was answered")
		}
	}()
	base(t).Parameter("no-such-number")
}

// Kinds as the reference facts give them: what is from memory must stay marked.
func TestKindsOfParameters(t *testing.T) {
	b := base(t)
	for key, want := range map[string]source.Kind{
		DesignAmplitude: source.Memory, LoadFactorRiders: source.Memory, ChildMass: source.Memory,
		FatigueShareOneWay: source.Memory, VogelExponent: source.Memory, KeptClearFirm: source.Memory,
		MaterialFactor: source.SecondHand, SpaceAmplitude: source.SecondHand, RootProtectionRadius: source.SecondHand,
		MemberFactorBranches: source.Read, ClearWoodVariation: source.Read, KnotShare: source.Read, IncludedBarkForm: source.Read,
		MemberFactor: source.Computed, LimbVolumeCoefficient: source.Computed,
		StillStemHeight: source.Practice, GoodUnionAspect: source.Practice,
		TargetReliability: source.House, TextileFactorPull: source.House, LimbMassFactor: source.House,
	} {
		if got := b.Parameter(key).Ref.Source.Kind; got != want {
			t.Errorf("%s is of kind %s, want %s", key, got, want)
		}
	}
}

func TestParametersLeaveInSI(t *testing.T) {
	b := base(t)
	for key, want := range map[string]struct {
		value float64
		unit  string
	}{
		DesignAmplitude: {80 * math.Pi / 180, "rad"}, SeatClearance: {0.35, "m"}, AcrossGrainLimitConifer: {0.4e6, "Pa"},
		DurationConstant: {0.183, "1"}, RopeAxialStiffness: {19600, "N"}, BarkBondSpruceGrowing: {0.26e6, "Pa"},
	} {
		if f := b.Parameter(key); math.Abs(f.Value-want.value) > 1e-12*want.value || f.Unit != want.unit {
			t.Errorf("%s = %g %s, want %g %s", key, f.Value, f.Unit, want.value, want.unit)
		}
	}
}

// EN 1176-1 Annex A, masses of 1, 2, 3, 5 and 10 children, from memory; the
// table rounds to a kilogram.
func TestChildMassesGiveTheTableOfTheStandard(t *testing.T) {
	b := base(t)
	m, s, z := b.Parameter(ChildMass).Value, b.Parameter(ChildMassDeviation).Value, b.Parameter(GroupMassQuantile).Value
	for n, want := range map[float64]float64{1: 69.5, 2: 130, 3: 189, 5: 304, 10: 588} {
		if got := n*m + z*s*math.Sqrt(n); math.Abs(got-want) > 0.5 {
			t.Errorf("%g children weigh %.1f kg, want %.1f", n, got, want)
		}
	}
}

// Strength at a duration of load over that at about 7.5 minutes: L. W. Wood
// 1951, worked out with 18.3 + 108.4 t^-0.0464.
func TestDurationOfLoad(t *testing.T) {
	b := base(t)
	c, k, p := b.Parameter(DurationConstant).Value, b.Parameter(DurationSlope).Value, b.Parameter(DurationExponent).Value
	const hour, year = 3600.0, 365.25 * 86400
	for seconds, want := range map[float64]float64{1: 1.267, 3: 1.213, 10: 1.157, 450: 0.999, hour: 0.924, 8 * hour: 0.856, year: 0.669, 10 * year: 0.620} {
		if got := c + k*math.Pow(seconds, p); math.Abs(got-want) > 0.0006 {
			t.Errorf("%g s: %.4f, want %.3f", seconds, got, want)
		}
	}
}

// Worked limbs of the regression on 295 scanned limbs: 20 cm gives 333 L and
// a path of 13.5 m, 30 cm gives 970 L (three figures printed).
func TestLimbVolume(t *testing.T) {
	b := base(t)
	v, vn := b.Parameter(LimbVolumeCoefficient).Value, b.Parameter(LimbVolumeExponent).Value
	s, sn := b.Parameter(LimbPathCoefficient).Value, b.Parameter(LimbPathExponent).Value
	for d, want := range map[float64]float64{20: 333, 30: 970} {
		if got := v * math.Pow(d, vn); math.Abs(got-want) > 0.015*want {
			t.Errorf("%g cm: %.0f L, want %.0f", d, got, want)
		}
	}
	if got := s * math.Pow(20, sn); math.Abs(got-13.5) > 0.1 {
		t.Errorf("20 cm: path %.2f m, want 13.5", got)
	}
}

// The variation of the member factor follows from Kane 2007: standard error
// 0.036 of 26 branches about 0.72.
func TestStrengthVariations(t *testing.T) {
	b := base(t)
	member := 0.036 * math.Sqrt(26) / b.Parameter(MemberFactorBranches).Value
	if got := b.Parameter(MemberVariation).Value; math.Abs(got-member) > 0.006 {
		t.Errorf("member variation %.3f, Kane gives %.3f", got, member)
	}
	both := math.Hypot(b.Parameter(ClearWoodVariation).Value, b.Parameter(MemberVariation).Value)
	if got := b.Parameter(StrengthVariation).Value; math.Abs(got-both) > 0.005 {
		t.Errorf("together %.3f, the two give %.3f", got, both)
	}
}

// House calibration: oak of 55.8 MPa has a design strength of 17.0 MPa, the
// lognormal 5 % fractile with member factor, variation and material factor.
func TestDesignStrengthOfTheCalibrationOak(t *testing.T) {
	b := base(t)
	cov := b.Parameter(StrengthVariation).Value
	spread := math.Sqrt(math.Log(1 + cov*cov))
	median := 55.8 * b.Parameter(MemberFactor).Value / math.Sqrt(1+cov*cov)
	got := median * math.Exp(-1.645*spread) / b.Parameter(MaterialFactor).Value
	if math.Abs(got-17.0) > 0.05 {
		t.Errorf("design strength %.2f MPa, want 17.0", got)
	}
}
