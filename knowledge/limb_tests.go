package knowledge

import "boughline/source"

// LimbTest is a set of living limbs pulled to failure: not clear wood.
type LimbTest struct {
	Species        string
	BreakingStress source.Fact // Pa, at the base
	Moment         source.Fact // N m, mean
	BasicGravity   source.Fact
	UnionAngle     source.Fact // rad, mean
}

func loadLimbTests(l *loader) []LimbTest {
	var all []LimbTest
	for _, r := range l.read("limb_tests") {
		all = append(all, LimbTest{
			Species: r.text("species"), BreakingStress: r.fact("breaking_stress_mpa", "MPa"),
			Moment: r.fact("moment_nm", "N m"), BasicGravity: r.fact("basic_gravity", "1"),
			UnionAngle: r.fact("union_angle_deg", "deg"),
		})
	}
	return all
}

// LimbTests lists the tests of whole living limbs.
func (b *Base) LimbTests() []LimbTest { return append([]LimbTest(nil), b.limbTests...) }
