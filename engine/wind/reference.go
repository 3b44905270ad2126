package wind

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// referenceHeight is that of a speed told for open country, m.
const referenceHeight quantity.Length = 10

// WithOpenGust returns the profile of the site while a gust of the given speed
// blows at 10 m over the open terrain nearby: both share the basic speed.
// The site keeps its terrain, orography and turbulence factor.
// Errors: a negative gust, values out of range.
// Source: EN 1991-1-4:2005, section 4, solved for the basic speed.
func (p Profile) WithOpenGust(gust quantity.Speed, open Terrain) (Profile, error) {
	return p.withOpen(gust, open, Gust)
}

// WithOpenMean returns the profile of the site while a 10-minute mean of the
// given speed, such as that of a Beaufort force, blows at 10 m over the open
// terrain nearby. Errors and source as WithOpenGust.
func (p Profile) WithOpenMean(mean quantity.Speed, open Terrain) (Profile, error) {
	return p.withOpen(mean, open, Mean)
}

func (p Profile) withOpen(speed quantity.Speed, open Terrain, averaging Averaging) (Profile, error) {
	if !(speed >= 0) || math.IsInf(float64(speed), 1) {
		return Profile{}, fmt.Errorf("wind: %s %v m/s; expected 0 or more", averaging, float64(speed))
	}
	if err := open.check(); err != nil {
		return Profile{}, fmt.Errorf("open country: %w", err)
	}
	level := Profile{Basic: 1, AirDensity: p.AirDensity, Terrain: open, Orography: 1, Turbulence: 1}
	p.Basic = speed / level.Speed(referenceHeight, averaging)
	return p, p.Check()
}

// HeightOf returns the height at which the speed is reached, on the part of the
// profile that rises; ok is false for a speed at or below that of z_min, or for
// no wind.
// Source: inverse of the profile; for the gust v^2 = (c_o k_r v_b)^2 (L^2 + 7
// k_I L / c_o) is a quadratic in L = ln(z / z0).
func (p Profile) HeightOf(speed quantity.Speed, averaging Averaging) (z quantity.Length, ok bool) {
	if p.Basic <= 0 || speed <= p.Speed(p.Terrain.LeastHeight, averaging) {
		return 0, false
	}
	logHeight := float64(speed) / (p.Orography * p.Terrain.Factor() * float64(p.Basic))
	if averaging == Gust {
		half := peakFactor * p.Turbulence / p.Orography / 2
		logHeight = math.Sqrt(half*half+logHeight*logHeight) - half
	}
	return p.Terrain.Roughness * quantity.Length(math.Exp(logHeight)), true
}
