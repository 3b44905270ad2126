package gear

import (
	"math"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// Sudden returns the load at rest that takes the line as low as a load does
// that is let go onto it without a fall: what it loses in height is stored in
// the line. A line that pulls back in proportion makes twice the load of it, a
// slack one that tightens as it goes down up to four times. Supports count as
// rigid, and nothing is lost to friction. Conservation of energy.
func (l SlungLine) Sudden(load quantity.Force, share quantity.Proportion) (quantity.Force, error) {
	if _, err := l.Under(load, share); err != nil {
		return 0, err
	}
	below := func(force float64) float64 {
		s, err := l.Under(quantity.Force(force), share)
		if err != nil { // the same line could be solved with the load itself
			return math.NaN()
		}
		return float64(s.Below)
	}
	empty := below(0)
	// Stored: force times drop, less the drops summed over the force.
	left := func(force float64) float64 {
		stored := force * (below(force) - empty)
		for i, x := range gaussPoints {
			stored -= force * gaussWeights[i] * (below(force*x) - empty)
		}
		return stored - float64(load)*(below(force)-empty)
	}
	if !(load > 0) {
		return 0, nil
	}
	return quantity.Force(numeric.Root(left, float64(load), 6*float64(load))), nil
}

// gaussPoints and gaussWeights are the five Gauss-Legendre points of the unit
// interval.
var (
	gaussPoints  = [5]float64{0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842, 0.953089922969332}
	gaussWeights = [5]float64{0.118463442528095, 0.239314335249683, 0.284444444444444, 0.239314335249683, 0.118463442528095}
)
