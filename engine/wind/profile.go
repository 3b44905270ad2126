package wind

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Terrain is a class of ground by its roughness: Roughness is z0, LeastHeight
// z_min, below which the profile is level.
type Terrain struct{ Roughness, LeastHeight quantity.Length }

// Profile is the wind over height at a site. Basic is the 10-minute mean at 10 m
// in open country (terrain II).
type Profile struct {
	Basic      quantity.Speed
	AirDensity quantity.Density
	Terrain    Terrain
	Orography  float64 // c_o, 1 on level ground
	Turbulence float64 // k_I, 1 recommended
}

// Averaging says over how long a speed is averaged.
type Averaging string

// Mean is the 10-minute mean, Gust the peak that EN 1991-1-4 takes on top of it.
const (
	Mean Averaging = "mean"
	Gust Averaging = "gust"
)

// peakFactor times the turbulence intensity is the rise of pressure from mean
// to peak (EN 1991-1-4, equation 4.8, twice the factor 3.5 on speed).
const peakFactor = 7

// openRoughness is z0 of terrain II, to which the terrain factor refers, m.
const openRoughness = 0.05

// Check tells what keeps the profile from being computed.
func (p Profile) Check() error {
	if err := p.Terrain.check(); err != nil {
		return err
	}
	if !(p.Basic >= 0) || math.IsInf(float64(p.Basic), 1) {
		return fmt.Errorf("wind profile: basic speed %v m/s; expected 0 or more", float64(p.Basic))
	}
	if !(p.AirDensity > 0) || !(p.Orography > 0) || !(p.Turbulence >= 0) {
		return fmt.Errorf("wind profile: air density %v kg/m3, orography %v, turbulence factor %v; expected the first two more than 0, the last 0 or more",
			float64(p.AirDensity), p.Orography, p.Turbulence)
	}
	return nil
}

func (t Terrain) check() error {
	if !(t.Roughness > 0) || !(t.LeastHeight > t.Roughness) {
		return fmt.Errorf("terrain: roughness %v m, least height %v m; expected a roughness more than 0 and a greater height",
			float64(t.Roughness), float64(t.LeastHeight))
	}
	return nil
}

// Factor returns k_r = 0.19 (z0 / 0.05 m)^0.07.
// Source: EN 1991-1-4:2005, equation 4.5 (from memory).
func (t Terrain) Factor() float64 {
	return 0.19 * math.Pow(float64(t.Roughness)/openRoughness, 0.07)
}

// logHeight returns ln(z / z0), with z at least z_min.
func (t Terrain) logHeight(z quantity.Length) float64 {
	return math.Log(float64(max(z, t.LeastHeight) / t.Roughness))
}

// RoughnessFactor returns c_r(z) = k_r ln(z / z0), for heights up to 200 m.
// Source: EN 1991-1-4:2005, equation 4.4 (as quoted in several public codes).
func (t Terrain) RoughnessFactor(z quantity.Length) float64 {
	return t.Factor() * t.logHeight(z)
}

// Mean returns the 10-minute mean at height z above ground: c_r c_o v_b.
// Source: EN 1991-1-4:2005, equation 4.3 (as quoted in several public codes).
func (p Profile) Mean(z quantity.Length) quantity.Speed {
	return quantity.Speed(p.Terrain.RoughnessFactor(z) * p.Orography * float64(p.Basic))
}

// TurbulenceIntensity returns I_v(z) = k_I / (c_o ln(z / z0)).
// Source: EN 1991-1-4:2005, equation 4.7 (as quoted in several public codes).
func (p Profile) TurbulenceIntensity(z quantity.Length) float64 {
	return p.Turbulence / (p.Orography * p.Terrain.logHeight(z))
}

// PeakPressure returns q_p(z) = (1 + 7 I_v) rho v_m^2 / 2.
// Source: EN 1991-1-4:2005, equation 4.8 (as quoted in several public codes).
func (p Profile) PeakPressure(z quantity.Length) quantity.Stress {
	mean := float64(p.Mean(z))
	return quantity.Stress((1 + peakFactor*p.TurbulenceIntensity(z)) * float64(p.AirDensity) / 2 * mean * mean)
}

// ExposureFactor returns c_e(z), the peak pressure as a multiple of that of the
// basic speed. It does not depend on the basic speed.
// Source: EN 1991-1-4:2005, equation 4.9 (from memory).
func (p Profile) ExposureFactor(z quantity.Length) float64 {
	logHeight := p.Terrain.logHeight(z)
	c := p.Terrain.Factor() * logHeight * p.Orography
	intensity := p.Turbulence / (p.Orography * logHeight)
	return (1 + peakFactor*intensity) * c * c
}

// Gust returns the speed whose pressure is the peak pressure at height z.
func (p Profile) Gust(z quantity.Length) quantity.Speed {
	return quantity.Speed(math.Sqrt(p.ExposureFactor(z)) * float64(p.Basic))
}

// Speed returns the mean or the gust at height z.
func (p Profile) Speed(z quantity.Length, averaging Averaging) quantity.Speed {
	if averaging == Gust {
		return p.Gust(z)
	}
	return p.Mean(z)
}

func (a Averaging) check() error {
	if a != Mean && a != Gust {
		return fmt.Errorf("averaging %q; expected %q or %q", string(a), string(Mean), string(Gust))
	}
	return nil
}
