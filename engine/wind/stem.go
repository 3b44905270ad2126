package wind

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Stem is the bare stem below a crown, a cone cut off: its diameter falls evenly
// from the ground to Top.
type Stem struct {
	BaseDiameter quantity.Length
	TopDiameter  quantity.Length
	Top          quantity.Length // height above ground
	Drag         float64
}

// StemLoad returns the wind load of the bare stem, without reconfiguration. A
// stem of no height has none.
// Errors: values out of range.
// Source: drag per length on the peak pressure of EN 1991-1-4.
func StemLoad(s Stem, p Profile, averaging Averaging) (Load, error) {
	if err := checkAll(p.Check(), averaging.check(), s.check()); err != nil {
		return Load{}, fmt.Errorf("wind on stem: %w", err)
	}
	top := float64(s.Top)
	perHeight := func(z float64) (height, line float64) {
		diameter := float64(s.BaseDiameter) + (float64(s.TopDiameter)-float64(s.BaseDiameter))*z/top
		speed := float64(p.Speed(quantity.Length(z), averaging))
		return z, float64(p.AirDensity) / 2 * speed * speed * s.Drag * diameter
	}
	breaks := []float64{0}
	if least := float64(p.Terrain.LeastHeight); least < top {
		breaks = append(breaks, least)
	}
	return integrate(perHeight, append(breaks, top)), nil
}

func (s Stem) check() error {
	for _, x := range []float64{float64(s.BaseDiameter), float64(s.TopDiameter), float64(s.Top), s.Drag} {
		if !(x >= 0) || math.IsInf(x, 1) {
			return fmt.Errorf("stem: diameters %v m and %v m, height %v m, drag %v; expected each 0 or more",
				float64(s.BaseDiameter), float64(s.TopDiameter), float64(s.Top), s.Drag)
		}
	}
	return nil
}
