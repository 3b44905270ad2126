package assess

// LeftOut names what no chance printed here covers.
type LeftOut string

// What a chance leaves out.
const (
	DefectsNobodySaw LeftOut = "defects-nobody-saw"
	Misuse           LeftOut = "misuse"
	GearDamage       LeftOut = "gear-damage"
	RepeatedLoading  LeftOut = "repeated-load"
	OtherLimbs       LeftOut = "other-limbs-falling"
	OtherWays        LeftOut = "wind-jerk-stem-roots" // only of the chance in an assessment
	SidewaysRiding   LeftOut = "sideways-riding"      // only of a load test straight down
)

// leftOut lists all of it.
func leftOut() []LeftOut {
	return []LeftOut{DefectsNobodySaw, Misuse, GearDamage, RepeatedLoading, OtherLimbs}
}
