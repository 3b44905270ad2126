package place

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Limb is a level limb of round section that tapers straight from Base to Tip,
// all diameters above 0. Along counts from the stem surface.
type Limb struct {
	Length    quantity.Length
	Base, Tip quantity.Length // diameters of the wood
	Density   quantity.Density
}

// stationStep is the distance of the stations at which stress is worked out.
const stationStep quantity.Length = 0.01

// SelfMoment returns the bending moment at a station from the weight of the
// limb outboard of it, the exact integral of w(t) (t - u) for a diameter
// linear in t: with c = length - u, diameter d there and taper k,
// pi/4 density g (d^2 c^2/2 + 2 d k c^3/3 + k^2 c^4/4).
func (b Limb) SelfMoment(at quantity.Length) quantity.Moment {
	c, d, k := float64(b.Length-at), b.diameter(float64(at)), b.taper()
	weight := math.Pi / 4 * float64(b.Density) * quantity.StandardGravity
	return quantity.Moment(weight * c * c * (d*d/2 + 2*d*k*c/3 + k*k*c*c/4))
}

// Stress returns the greatest bending stress between the stem and a hang
// point at which the pull draws straight down, and the station where it lies,
// the first of equals. Stations are 0.01 m apart from 0 on, which reads a
// peak between two of them low by some millionths. M/W with W = pi d^3/32;
// sag and shear are left out. Source: engineering beam theory.
func (b Limb) Stress(along quantity.Length, pull quantity.Force) (quantity.Stress, quantity.Length) {
	return b.stations(along).stress(along, pull)
}

// StressConstraint keeps Stress within what the wood is allowed: the margin is
// 1 - stress/allowed, whatever the line. Errors name a size that is not above
// 0; a hang point beyond the limb is an error of Search.
func (b Limb) StressConstraint(pull quantity.Force, allowed quantity.Stress) (Constraint, error) {
	if err := b.validate(); err != nil {
		return Constraint{}, err
	}
	if !(allowed > 0) || !(pull >= 0) {
		return Constraint{}, fmt.Errorf("stress: pull %v N against %v Pa; expected a pull of 0 or more and a strength above 0", pull, allowed)
	}
	all := b.stations(b.Length)
	margin := func(along quantity.Length) float64 {
		if along > b.Length {
			return math.NaN()
		}
		stress, _ := all.stress(along, pull)
		return 1 - float64(stress/allowed)
	}
	return Constraint{Name: "stress", Margin: Field{Along: margin}}, nil
}

func (b Limb) taper() float64 { return float64((b.Tip - b.Base) / b.Length) }

func (b Limb) diameter(at float64) float64 { return float64(b.Base) + b.taper()*at }

func (b Limb) validate() error {
	for _, size := range []struct {
		name  string
		value float64
	}{{"length", float64(b.Length)}, {"base", float64(b.Base)}, {"tip", float64(b.Tip)}, {"density", float64(b.Density)}} {
		if !(size.value > 0) || math.IsInf(size.value, 0) {
			return fmt.Errorf("limb.%s: %v; expected a size above 0", size.name, size.value)
		}
	}
	if b.Length >= greatestCount*stationStep {
		return fmt.Errorf("limb.length: %v m; expected a limb of a tree", b.Length)
	}
	return nil
}

// station is a place on the limb with what the stress there is made of.
type station struct {
	at         float64
	selfMoment float64
	perModulus float64 // 1/W, 1/m3
}

type stations []station

// stations lists those from the stem up to a hang point.
func (b Limb) stations(until quantity.Length) stations {
	values := Axis{To: until, Step: stationStep}.Values()
	list := make(stations, len(values))
	for i, u := range values {
		d := b.diameter(float64(u))
		list[i] = station{float64(u), float64(b.SelfMoment(u)), 32 / (math.Pi * d * d * d)}
	}
	return list
}

func (list stations) stress(along quantity.Length, pull quantity.Force) (quantity.Stress, quantity.Length) {
	s, t := float64(along), float64(pull)
	greatest, where := math.Inf(-1), 0.0
	for k := range list {
		if list[k].at > s {
			break
		}
		if stress := (list[k].selfMoment + t*(s-list[k].at)) * list[k].perModulus; stress > greatest {
			greatest, where = stress, list[k].at
		}
	}
	return quantity.Stress(greatest), quantity.Length(where)
}
