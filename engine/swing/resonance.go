package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Resonance says how near the pull of a swing comes to a mode of sway.
type Resonance struct {
	Harmonic int                 // 1 or 2, the one that comes nearest
	Ratio    quantity.Proportion // of its frequency to that of the mode
	Near     bool                // a stop sign: within 20 % of the mode
}

// NearestResonance returns which of the first two harmonics of a swing comes
// nearest to a mode of sway, at the amplitude or any smaller one. The first is
// the horizontal pull's, the second the vertical one's; where the hang point
// stands out from the stem both drive its sway. The 20 % are a house rule with
// no published source. It fails on inputs out of range.
func NearestResonance(length quantity.Length, amplitude quantity.Angle, mode quantity.Frequency) (Resonance, error) {
	if err := requirePositive(field{"mode frequency", float64(mode), "Hz"}); err != nil {
		return Resonance{}, fmt.Errorf("resonance: %w", err)
	}
	period, err := Period(length, amplitude)
	if err != nil {
		return Resonance{}, fmt.Errorf("resonance: %w", err)
	}
	const near = 0.2
	nearest := Resonance{}
	for n := 1; n <= 2; n++ {
		each := float64(n) / float64(mode)
		slowest, fastest := each/float64(period), each/float64(SmallPeriod(length))
		ratio := math.Min(math.Max(1, slowest), fastest)
		if nearest.Harmonic == 0 || off(ratio) < off(float64(nearest.Ratio)) {
			nearest = Resonance{n, quantity.Proportion(ratio), off(ratio) <= near}
		}
	}
	return nearest, nil
}

// off is how far a ratio is from 1.
func off(ratio float64) float64 { return math.Abs(ratio - 1) }
