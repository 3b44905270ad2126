package space

import "boughline/quantity"

// LinearRule is a distance that grows with the length of the line:
// PerLine times the line plus Constant.
type LinearRule struct {
	PerLine  float64
	Constant quantity.Length
}

// For returns the distance the rule asks for with the given line.
func (r LinearRule) For(line quantity.Length) quantity.Length {
	return quantity.Length(r.PerLine)*line + r.Constant
}

// Rules of EN 1176-2. SeatToFrame was read second-hand (4.4, quoted by a
// statutory accident insurer); in the impact areas (4.10) 60 degrees and
// 2.25 m were read second-hand, 0.867 and 1.75 m are from memory.
var (
	// SeatToFrame is the room between the seat at rest and the stem.
	SeatToFrame = LinearRule{0.2, 0.2}
	// ImpactAreaFirm is the impact area each way from the plumb line on a
	// surface level with the ground around it.
	ImpactAreaFirm = LinearRule{0.867, 1.75}
	// ImpactAreaLoose is that on loose fill.
	ImpactAreaLoose = LinearRule{0.867, 2.25}
)

// KeptClear returns how far from the plumb line the ground is to be kept
// clear on one side: the larger of the computed landing (sign ignored) and
// the rule of the standard. Long lines out-run the rule.
func KeptClear(landing, line quantity.Length, rule LinearRule) quantity.Length {
	return max(landing, -landing, rule.For(line))
}

// ImpactArea returns the extent X of the impact area round equipment that is
// not a swing, for the free height of fall Y: 1.5 m up to Y = 1.5 m, then
// X = 2Y/3 + 0.5 m. The standard stops at Y = 3 m; beyond, the formula is
// carried on. EN 1176-1, read second-hand in a guide of the German statutory
// accident insurance.
func ImpactArea(fall quantity.Length) quantity.Length {
	return max(1.5, 2*fall/3+0.5)
}
