package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/engine/swing"
	"boughline/quantity"
)

// randomOutline is the wood inside the bark at one place of a member, with the
// diameters and the bark as inputs. Diameters deviate at the stations and in a straight
// line between them.
type randomOutline struct {
	upright, across float64 // over bark as measured, m
	// Change of either for a unit deviation at the station before and after, and
	// the places of those two inputs.
	byUpright, byAcross [2]float64
	stations            [2]int
	twoBarks            float64 // as stated, m
	bark                int
}

func (r *rig) randomOutline(p *randomPlaces, s *shape, along float64) randomOutline {
	d := s.diameter(along)
	bark, _ := r.barkOf(s, (d.upright.Value+d.across.Value)/2)
	o := randomOutline{upright: float64(d.upright.Value), across: float64(d.across.Value), twoBarks: 2 * float64(bark.Value), bark: p.bark[s], stations: [2]int{none, none}}
	places := p.girth[s]
	after := 0
	for after < len(s.girths) && s.girths[after].at < along {
		after++
	}
	before := max(0, after-1)
	after = min(after, len(s.girths)-1)
	t := 0.0
	if span := s.girths[after].at - s.girths[before].at; span > 0 {
		t = (along - s.girths[before].at) / span
	}
	for i, at := range [2]int{before, after} {
		weight := [2]float64{1 - t, t}[i]
		g := s.girths[at]
		o.stations[i], o.byUpright[i], o.byAcross[i] = places[at], weight*float64(g.upright.Value), weight*float64(g.across.Value)
	}
	return o
}

// at returns the outline of one draw.
func (o *randomOutline) at(x []float64) frame.Section {
	first, second := deviation(x, o.stations[0]), deviation(x, o.stations[1])
	bark := o.twoBarks
	if o.bark != none {
		bark *= x[o.bark]
	}
	inside := func(d float64, by [2]float64) quantity.Length {
		return quantity.Length(math.Max(leastWood, d+by[0]*first+by[1]*second-bark))
	}
	return frame.Section{Outer: frame.Ellipse{Upright: inside(o.upright, o.byUpright), Across: inside(o.across, o.byAcross)}}
}

// randomCut is one section of a limb of the load path.
type randomCut struct {
	*cut
	outline randomOutline
	member  int     // place of the factor of its limb
	form    float64 // share of its strength that a union has, 1 elsewhere
	// Section forces of 1 N down and of 1 N along the swing, the hang point at its
	// near place, and what its far place adds.
	down, ahead, downFar, aheadFar frame.SectionForces
	// Where in a swing each demand is greatest, and on which side the wind then
	// blows: as at the middle values of all inputs.
	bends, shears, splits worstMoment
	bend                  *bend // nil where the limb runs straight
}

// worstMoment is the moment of a swing at which a demand is greatest, as a
// share of the amplitude.
type worstMoment struct{ share, wind float64 }

// combineUnits fills in the section forces by the direction of the swing.
func (c *randomCut) combineUnits(heading quantity.Vec3) {
	ahead := func(unit *[3]frame.SectionForces) frame.SectionForces {
		return unit[0].Scale(heading.X).Add(unit[1].Scale(heading.Y))
	}
	c.down, c.ahead = c.near[2].Scale(-1), ahead(&c.near)
	c.downFar = c.far[2].Scale(-1).Add(c.near[2])
	c.aheadFar = ahead(&c.far).Add(c.ahead.Scale(-1))
}

// sectionForces sums the unit cases for one draw, of a pull down and along the
// swing and of a wind.
func (c *randomCut) sectionForces(k *randomCase, down, ahead, wind float64) frame.SectionForces {
	sum := c.cut.self.Scale(k.self)
	for _, unit := range [...]struct {
		forces *frame.SectionForces
		times  float64
	}{{&c.down, down}, {&c.downFar, down * k.arm}, {&c.ahead, ahead}, {&c.aheadFar, ahead * k.arm}, {&c.cut.wind, wind}} {
		if unit.times != 0 {
			addTimes(&sum, unit.forces, unit.times)
		}
	}
	return sum
}

// addTimes adds a multiple of section forces; it is what every draw spends its
// time on.
func addTimes(sum, f *frame.SectionForces, times float64) {
	n, m := quantity.Force(times), quantity.Moment(times)
	sum.Axial += f.Axial * n
	sum.ShearUpright += f.ShearUpright * n
	sum.ShearAcross += f.ShearAcross * n
	sum.Torque += f.Torque * m
	sum.MomentAcross += f.MomentAcross * m
	sum.MomentUpright += f.MomentUpright * m
	sum.Moment.X += f.Moment.X * times
	sum.Moment.Y += f.Moment.Y * times
	sum.Moment.Z += f.Moment.Z * times
}

// underRiders is the section forces of a swing at one of its moments.
func (c *randomCut) underRiders(k *randomCase, at worstMoment) frame.SectionForces {
	down, ahead := k.pull(at.share, k.dynamic)
	return c.sectionForces(k, down, ahead, at.wind*k.limbWind)
}

// bears is the stress at which the section breaks in bending.
func (c *randomCut) bears(k *randomCase) float64 {
	return k.strength * k.x[c.member] * c.form
}

// solid is the wood of one draw at a section.
type solid struct {
	frame.Section
	upright, across, area float64
}

func (c *randomCut) solidIn(k *randomCase) solid {
	s := solid{Section: c.outline.at(k.x)}
	s.upright, s.across = s.SectionModulus()
	s.area = float64(s.Area())
	return s
}

// stress is the greatest stress along the grain over a solid ellipse.
func (s *solid) stress(f *frame.SectionForces) float64 {
	bent, side := float64(f.MomentAcross)/s.upright, float64(f.MomentUpright)/s.across
	return math.Abs(float64(f.Axial))/s.area + math.Sqrt(bent*bent+side*side)
}

// bendingRatio is strength over stress under the riders in motion and wind.
func (c *randomCut) bendingRatio(k *randomCase, s *solid) float64 {
	forces := c.underRiders(k, c.bends)
	return c.bears(k) / s.stress(&forces)
}

// shearRatio is shear strength over shear under the riders.
func (c *randomCut) shearRatio(k *randomCase, s *solid) float64 {
	return k.x[k.places.shear] * k.x[c.member] / float64(s.Shear(c.underRiders(k, c.shears)))
}

// splittingRatio is strength across the grain over the tension that the riders
// make there, tests being so many times above theory.
func (c *randomCut) splittingRatio(k *randomCase, factor float64) float64 {
	straightens := -c.underRiders(k, c.splits).Moment.Dot(c.bend.normal)
	tension := factor * c.bend.tensionIn(c.outline.at(k.x).Outer, straightens)
	if tension <= 0 {
		return greatestMargin
	}
	return k.x[k.places.across] / tension
}

// jerkRatio is strength over stress of a jump into a slack line.
func (c *randomCut) jerkRatio(k *randomCase, s *solid, stiffness quantity.Stiffness) float64 {
	force := swing.Jerk(k.mass.Weight(), stiffness, quantity.Length(k.x[k.places.slack]))
	forces := c.sectionForces(k, float64(force), 0, 0)
	return c.bears(k) / s.stress(&forces)
}

// standsRatio is strength over stress under the limb's own weight and a dead
// load at the hang point.
func (c *randomCut) standsRatio(k *randomCase, s *solid, load quantity.Force) float64 {
	forces := c.sectionForces(k, float64(load), 0, 0)
	return c.bears(k) / s.stress(&forces)
}

// testedRatio is that under the load test, with what it lastingly tells.
func (c *randomCut) testedRatio(k *randomCase, s *solid, test quantity.Force) float64 {
	return k.x[k.places.lasting] * c.standsRatio(k, s, test)
}
