package rootplate

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// MassResistance describes the overturning resistance of a tree by its stem
// mass. PerMass is the critical turning moment at the base for each kilogram of
// stem; Scatter the standard deviation of its natural logarithm.
type MassResistance struct {
	StemMass                quantity.Mass
	PerMassNewtonMetrePerKg float64
	Scatter                 float64
}

// Low returns the overturning moment that 95 % of such trees resist:
// exp(ln(mean) - 1.645 scatter). Slopes are of conifers pulled over in British
// Columbia, 77 to 146 N m/kg (Byrne, 2005, thesis; read in its abstract); for
// broadleaves it is a stand-in. Scatter 0.33 from more than 280 uprooted trees
// of 15 species (Forests 14:533, 2023, tables A1 and A2).
// Errors: a mass or slope that is not positive, a negative scatter.
func (r MassResistance) Low() (quantity.Moment, error) {
	if !(r.StemMass > 0) || !(r.PerMassNewtonMetrePerKg > 0) || !(r.Scatter >= 0) {
		return 0, fmt.Errorf("overturning resistance: stem mass %v kg, %v N m/kg, scatter %v; expected the first two more than 0, the scatter 0 or more",
			float64(r.StemMass), r.PerMassNewtonMetrePerKg, r.Scatter)
	}
	mean := float64(r.StemMass) * r.PerMassNewtonMetrePerKg
	return quantity.Moment(mean * math.Exp(-quantity.Tail*r.Scatter)), nil
}

// StoodGust is the moment at the ground of a gust the tree is known to have
// stood, worked out on the low side (low drag and area, the leaves of that
// date, shelter and distance taken off). Void says that it no longer speaks for
// the tree: root work, wetter soil or new findings since.
type StoodGust struct {
	Moment quantity.Moment
	Void   bool
}

// Resistance returns the moment the gust proves, 0 where the evidence is void.
func (g StoodGust) Resistance() quantity.Moment {
	if g.Void {
		return 0
	}
	return max(0, g.Moment)
}
