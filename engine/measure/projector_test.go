package measure

import (
	"math"

	"boughline/quantity"
)

// This file holds a camera of its own, by rotation matrices and the forward
// lens model x (1 + k1 r^2) (Brown 1971, from memory), and a limb as a row of
// spheres along a curved axis. It shares nothing with the estimator.

// lens is a true camera at the origin; the world is X right, Y level ahead, Z up
// of a camera held level.
type lens struct {
	focal, k1, cx, cy float64 // px, 1, px, px
	tilt, roll        float64 // rad
}

// toCamera turns a point of the world into the camera's right, up, ahead.
func (l lens) toCamera(p quantity.Vec3) (right, up, ahead float64) {
	st, ct := math.Sincos(l.tilt)
	sr, cr := math.Sincos(l.roll)
	y := ct*p.Y + st*p.Z
	z := -st*p.Y + ct*p.Z
	return cr*p.X - sr*z, sr*p.X + cr*z, y
}

// pinhole returns the image of a point without bend, in focal lengths.
func (l lens) pinhole(p quantity.Vec3) (u, v float64) {
	right, up, ahead := l.toCamera(p)
	return right / ahead, -up / ahead
}

// pixel bends a point in focal lengths and places it in the picture.
func (l lens) pixel(u, v float64) Mark {
	bent := 1 + l.k1*(u*u+v*v)
	return Mark{l.cx + l.focal*u*bent, l.cy + l.focal*v*bent}
}

func (l lens) image(p quantity.Vec3) Mark { return l.pixel(l.pinhole(p)) }

// ray returns the direction of a point in focal lengths, in the world.
func (l lens) ray(u, v float64) quantity.Vec3 {
	st, ct := math.Sincos(l.tilt)
	sr, cr := math.Sincos(l.roll)
	right, up := u, -v
	x := cr*right + sr*up
	z := -sr*right + cr*up
	return quantity.Vec3{X: x, Y: ct - st*z, Z: st + ct*z}.Unit()
}

// bough is a limb: an arc that rises or droops within its plane, sways out of it, and
// tapers. Along is measured on the arc.
type bough struct {
	foot           quantity.Vec3 // of its axis
	azimuth        float64       // of the plane's right end: turned
	slope, curve   float64       // at the foot, rad and rad/m
	sway, phase    float64       // out of the plane, m and rad
	length         float64
	radius, narrow float64 // at the foot, and lost for each m
	left           bool
}

// axis returns the point of the axis at the arc length, in closed form for the
// arc within the plane.
func (b bough) axis(s float64) quantity.Vec3 {
	level, rise := s*math.Cos(b.slope), s*math.Sin(b.slope)
	if b.curve != 0 {
		end := b.slope + b.curve*s
		level = (math.Sin(end) - math.Sin(b.slope)) / b.curve
		rise = (math.Cos(b.slope) - math.Cos(end)) / b.curve
	}
	if b.left {
		level = -level
	}
	out := b.sway * math.Sin(2*math.Pi*s/b.length/2+b.phase)
	sin, cos := math.Sincos(b.azimuth)
	return b.foot.Add(quantity.Vec3{X: level*cos - out*sin, Y: level*sin + out*cos, Z: rise})
}

func (b bough) radiusAt(s float64) float64 { return b.radius - b.narrow*s }

// seen reports by how much a ray misses the limb near the arc length s, negative where it
// hits.
func (b bough) seen(ray quantity.Vec3, s float64) float64 {
	least := math.Inf(1)
	reach := 4 * b.radius
	const steps = 30
	for i := 0; i <= steps; i++ {
		at := s + reach*(2*float64(i)/steps-1)
		least = math.Min(least, b.axis(at).Cross(ray).Norm()-b.radiusAt(at))
	}
	return least
}

// edges returns the two edges of the limb's image at the arc length, on a line square to the image
// of its axis, found by bisection.
func (b bough) edges(l lens, s float64) []Mark {
	u, v := l.pinhole(b.axis(s))
	u1, v1 := l.pinhole(b.axis(s + 0.01))
	u0, v0 := l.pinhole(b.axis(s - 0.01))
	du, dv := v1-v0, u0-u1
	n := math.Hypot(du, dv)
	found := make([]Mark, 2)
	for i, sign := range []float64{-1, 1} {
		inside, outside := 0.0, 2*b.radius/b.axis(s).Norm()
		for range 26 {
			mid := (inside + outside) / 2
			if b.seen(l.ray(u+sign*mid*du/n, v+sign*mid*dv/n), s) < 0 {
				inside = mid
			} else {
				outside = mid
			}
		}
		found[i] = l.pixel(u+sign*inside*du/n, v+sign*inside*dv/n)
	}
	return found
}
