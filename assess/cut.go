package assess

import (
	"math"
	"slices"

	"boughline/engine/frame"
	"boughline/engine/numeric"
	"boughline/engine/swing"
	"boughline/quantity"
)

// cut is one section of the load path with the section forces of every unit
// case, so that a load case is a weighted sum.
type cut struct {
	on      *shape
	along   float64 // m from the foot of the member
	section section
	self    frame.SectionForces
	far     [3]frame.SectionForces
	near    [3]frame.SectionForces
	wind    frame.SectionForces
}

// loads are the factored loads of one load case: the pull of the riders at the
// hang point, and the wind on the limb.
type loads struct {
	pull quantity.Vec3 // N
	wind float64       // N
}

// forces sums the section forces of a load case at the unfavourable hang
// point, or at the favourable one: the parts along the axes of the section.
func (c *cut) forces(l loads, side scenario) frame.SectionForces {
	unit := &c.far
	if side == favourable {
		unit = &c.near
	}
	sum := c.self
	addParts(&sum, &unit[0], l.pull.X)
	addParts(&sum, &unit[1], l.pull.Y)
	addParts(&sum, &unit[2], l.pull.Z)
	addParts(&sum, &c.wind, l.wind)
	return sum
}

// moment sums the moment of a load case as a vector in the frame of the tree.
func (c *cut) moment(l loads, side scenario) quantity.Vec3 {
	unit := &c.far
	if side == favourable {
		unit = &c.near
	}
	sum := c.self.Moment.Add(c.wind.Moment.Scale(l.wind))
	for i, force := range [3]float64{l.pull.X, l.pull.Y, l.pull.Z} {
		sum = sum.Add(unit[i].Moment.Scale(force))
	}
	return sum
}

// addParts adds k times the parts of a force along the axes of the section, in
// place: no check asks for its vectors, and this is done for every swing angle.
func addParts(sum, f *frame.SectionForces, k float64) {
	if k == 0 {
		return
	}
	n, m := quantity.Force(k), quantity.Moment(k)
	sum.Axial += f.Axial * n
	sum.ShearUpright += f.ShearUpright * n
	sum.ShearAcross += f.ShearAcross * n
	sum.Torque += f.Torque * m
	sum.MomentAcross += f.MomentAcross * m
	sum.MomentUpright += f.MomentUpright * m
}

// outline returns the section that a scenario takes.
func (c *cut) outline(side scenario) frame.Section {
	if side == favourable {
		return frame.Section{Outer: c.section.thick}
	}
	return frame.Section{Outer: c.section.thin}
}

// scenario says which end of every measurement a figure takes.
type scenario int

const (
	unfavourable scenario = iota
	favourable
)

// cutSpacing is the distance between the sections that are checked, m. They
// stand at fixed places so that a longer arm only ever adds sections.
const cutSpacing = 0.25

// cutsOf lists the sections of one member of the load path from its foot to
// where the load comes in.
func (t *tree) cutsOf(b *bough, s *shape, until float64) []cut {
	places := []float64{0}
	for at := cutSpacing; at < until; at += cutSpacing {
		places = append(places, at)
	}
	for _, at := range s.breaks() {
		if at > 0 && at < until {
			places = append(places, at)
		}
	}
	slices.Sort(places)
	cuts := make([]cut, 0, len(places))
	for _, at := range slices.Compact(places) {
		cuts = append(cuts, t.cutAt(b, s, at))
	}
	return cuts
}

func (t *tree) cutAt(b *bough, s *shape, along float64) cut {
	place := frame.Place{Member: b.index[s], Along: quantity.Length(along) + b.offset(s)}
	c := cut{on: s, along: along, section: t.section(s, along)}
	c.self = b.self.At(place, frame.TipSide)
	c.wind = b.wind.At(place, frame.TipSide)
	for i := range c.far {
		c.far[i] = b.far[i].At(place, frame.TipSide)
		c.near[i] = b.near[i].At(place, frame.TipSide)
	}
	return c
}

// swingCase is a swing in a wind: what the riders weigh and how far they go.
type swingCase struct {
	mass      quantity.Mass // riders, seat and line
	amplitude quantity.Angle
	heading   quantity.Vec3 // unit vector of the swing direction, level
	ride      float64       // load factor on the pull
	wind      float64       // factored force on the limb, N
	steady    []steady      // the pulls of a line instead, which does not swing
}

// pull returns the factored pull on the hang point with the line at an angle.
func (c swingCase) pull(at quantity.Angle) quantity.Vec3 {
	force := c.ride * float64(swing.Pull(c.mass, c.amplitude, at))
	return c.heading.Scale(force * at.Sin()).Add(quantity.Vec3{Z: -force * at.Cos()})
}

// scanShort bounds how far the scan may fall short of a smooth maximum: half
// a step off the top of a cosine, 1/cos 5 deg, with room to spare.
const scanShort = 1.02

// scanStep is the first pass over the swing angles; the best of it is refined.
const scanStep = 10 * quantity.Degree

// greatest finds the swing angle and the wind direction at which a measure of
// the section forces is greatest, by a scan refined by golden section. The
// measure is smooth between the scanned angles.
//
// Where not even the scan comes near the floor, a value already met elsewhere,
// it is left unrefined.
func (c swingCase) greatest(measure func(loads) float64, floor float64) peak {
	best := c.greatestInWind(measure, c.wind, floor)
	if c.wind != 0 {
		if other := c.greatestInWind(measure, -c.wind, math.Max(floor, best.value)); other.value > best.value {
			best = other
		}
	}
	return best
}

// peak is the greatest value of a measure and the loads that make it.
type peak struct {
	value float64
	at    quantity.Angle
	loads loads
}

func (c swingCase) greatestInWind(measure func(loads) float64, wind, floor float64) peak {
	if len(c.steady) > 0 {
		return c.greatestSteady(measure, wind)
	}
	of := func(q float64) float64 { return measure(loads{c.pull(quantity.Angle(q)), wind}) }
	best, where := math.Inf(-1), 0.0
	for q := -c.amplitude; q <= c.amplitude+scanStep/10; q += scanStep {
		if v := of(float64(q)); v > best {
			best, where = v, float64(q)
		}
	}
	if best*scanShort < floor {
		return peak{best, quantity.Angle(where), loads{c.pull(quantity.Angle(where)), wind}}
	}
	low := math.Max(-float64(c.amplitude), where-float64(scanStep))
	high := math.Min(float64(c.amplitude), where+float64(scanStep))
	if q, v := numeric.Greatest(of, low, high, 24); v > best { // narrows 20 degrees to 0.0002
		best, where = v, q
	}
	at := quantity.Angle(where)
	return peak{best, at, loads{c.pull(at), wind}}
}
