package measure

import (
	"fmt"
	"math"
	"math/rand/v2"

	"boughline/quantity"
)

// scene is a true limb before a true camera, and how well somebody reads what a
// picture of it needs.
type scene struct {
	bough  bough
	lens   lens
	frame  float64 // focal length for a 36 mm frame, m
	random *rand.Rand
	errors float64 // share of the stated errors that the readings have: 1, or 0 for none
}

const (
	pictureWidth, pictureHeight = 4000.0, 3000.0 // px
	tapedSd, nearSd             = 0.005, 0.1     // m
	tiltSd, rollSd, turnedSd    = 1.0, 1.0, 5.0  // deg
	stations                    = 3
)

var diagonal = math.Hypot(pictureWidth, pictureHeight)

func (s scene) uniform(low, high float64) float64 { return low + (high-low)*s.random.Float64() }

func (s scene) normal(sd float64) float64 { return s.errors * sd * s.random.NormFloat64() }

// randomScene draws a limb of 16 to 50 cm over a swing, 5 to 14 m away, and a
// camera that is held and built as inexactly as the picture says.
func randomScene(r *rand.Rand) scene {
	s := scene{random: r, errors: 1}
	away, rise := s.uniform(5, 14), s.uniform(1.5, 5)
	s.bough = bough{
		foot:    quantity.Vec3{X: s.uniform(-1, 1), Y: away, Z: rise},
		azimuth: s.uniform(-35, 35) * degree, slope: s.uniform(-10, 40) * degree, curve: s.uniform(-0.12, 0.12),
		sway: 0.05 * math.Sqrt2, phase: s.uniform(0, 2*math.Pi),
		length: s.uniform(2, 4), radius: s.uniform(0.08, 0.25), narrow: 0.01, left: r.IntN(2) == 0,
	}
	s.frame = s.uniform(0.024, 0.060)
	s.lens = lens{
		focal: s.frame / 0.0432666 * diagonal, k1: s.uniform(-bend, bend),
		cx: pictureWidth/2 + s.normal(centreSd*diagonal), cy: pictureHeight/2 + s.normal(centreSd*diagonal),
		tilt: math.Atan2(rise, away) + s.uniform(-8, 8)*degree, roll: s.uniform(-4, 4) * degree,
	}
	return s
}

// reads is a value as somebody reads it and writes it down.
func (s scene) reads(truth, sd float64, unit string) Value {
	return Value(fmt.Sprintf("%.12f %s ±%.12f %s", truth+s.normal(sd), unit, sd, unit))
}

// mark is a point as somebody marks it.
func (s scene) mark(m Mark) *Mark { return &Mark{m[0] + s.normal(markSd), m[1] + s.normal(markSd)} }

// picture takes the picture with some lines of known length hanging by the limb.
func (s scene) picture(references int) Picture {
	p := Picture{
		Width: pictureWidth, Height: pictureHeight,
		Focal: s.reads(s.frame, focalSd*s.frame, "m"),
		Tilt:  s.reads(s.lens.tilt/degree, tiltSd, "deg"), Roll: s.reads(s.lens.roll/degree, rollSd, "deg"),
		Turned: s.reads(s.bough.azimuth/degree, turnedSd, "deg"),
	}
	for range references {
		p.References = append(p.References, s.line())
	}
	for i := range stations {
		edges := s.bough.edges(s.lens, s.stationAt(i))
		p.Limb = append(p.Limb, Station{Edges: []Mark{*s.mark(edges[0]), *s.mark(edges[1])}})
	}
	return p
}

func (s scene) stationAt(i int) float64 { return s.bough.length * float64(i) / (stations - 1) }

// line is a reference: two knots on a line that hangs upright from about the limb,
// up to 0.3 m before or behind its plane.
func (s scene) line() Reference {
	near, long := s.uniform(-0.3, 0.3), s.uniform(0.8, 1.6)
	top := s.bough.beside(s.uniform(0.3, 0.9)*s.bough.length, near)
	return Reference{
		From: s.mark(s.lens.image(top)), To: s.mark(s.lens.image(top.Add(quantity.Vec3{Z: -long}))),
		Length: s.reads(long, tapedSd, "m"), Nearer: s.reads(near, nearSd, "m"),
	}
}

// beside returns the point below the limb at the arc length, that much nearer than its
// plane.
func (b bough) beside(at, near float64) quantity.Vec3 {
	p := b.axis(at).Add(quantity.Vec3{Z: -b.radiusAt(at)})
	sin, cos := math.Sincos(b.azimuth)
	from := p.Sub(b.foot)
	out := near - from.X*sin + from.Y*cos
	return p.Add(quantity.Vec3{X: out * sin, Y: -out * cos})
}

// within reports whether every mark lies in the picture.
func within(p Picture) bool {
	var all []Mark
	for _, r := range p.References {
		all = append(all, *r.From, *r.To)
	}
	for _, s := range p.Limb {
		all = append(all, s.Edges...)
	}
	for _, m := range all {
		if m[0] < 0 || m[0] > p.Width || m[1] < 0 || m[1] > p.Height {
			return false
		}
	}
	return true
}
