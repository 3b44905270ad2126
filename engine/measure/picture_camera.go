package measure

import hd "gonum.org/v1/gonum/num/hyperdual"

// vec is a vector before the camera: right, level ahead, up.
type vec [3]hd.Number

func dot(a, b vec) hd.Number {
	return hd.Add(hd.Add(hd.Mul(a[0], b[0]), hd.Mul(a[1], b[1])), hd.Mul(a[2], b[2]))
}

func cross(a, b vec) vec {
	turn := func(i, j int) hd.Number { return hd.Sub(hd.Mul(a[i], b[j]), hd.Mul(a[j], b[i])) }
	return vec{turn(1, 2), turn(2, 0), turn(0, 1)}
}

func norm(a vec) hd.Number { return hypot(a[0], a[1], a[2]) }

func scaled(a vec, s hd.Number) vec { return vec{hd.Mul(a[0], s), hd.Mul(a[1], s), hd.Mul(a[2], s)} }

func plus(a, b vec) vec { return vec{hd.Add(a[0], b[0]), hd.Add(a[1], b[1]), hd.Add(a[2], b[2])} }

func minus(a, b vec) vec { return vec{hd.Sub(a[0], b[0]), hd.Sub(a[1], b[1]), hd.Sub(a[2], b[2])} }

func unit(a vec) vec { return scaled(a, hd.Inv(norm(a))) }

// camera is the picture's camera and the limb's plane at given readings.
type camera struct {
	x                                  []hd.Number
	focal, bend                        hd.Number // px, k1
	centre                             [2]hd.Number
	sinRoll, cosRoll, sinTilt, cosTilt hd.Number
	level, normal                      vec // along the plane, and away from the camera
}

const frameDiagonal = 0.04326661530556787 // m, of 36 mm by 24 mm

func (v *view) camera(x []hd.Number) camera {
	c := camera{
		x: x, bend: x[v.bend], centre: [2]hd.Number{x[v.centre[0]], x[v.centre[1]]},
		sinRoll: hd.Sin(x[v.roll]), cosRoll: hd.Cos(x[v.roll]),
		sinTilt: hd.Sin(x[v.tilt]), cosTilt: hd.Cos(x[v.tilt]),
	}
	if v.angle >= 0 {
		c.focal = hd.Scale(v.width/2, hd.Inv(hd.Tan(hd.Scale(0.5, x[v.angle]))))
	} else {
		c.focal = hd.Scale(hypot(num(v.width), num(v.height)).Real/frameDiagonal, x[v.focal])
	}
	sin, cos := hd.Sin(x[v.turned]), hd.Cos(x[v.turned])
	c.level = vec{cos, sin, num(0)}
	c.normal = vec{hd.Scale(-1, sin), cos, num(0)}
	return c
}

// pinhole returns a mark in focal lengths from the camera's axis, its bend taken
// out.
func (c camera) pinhole(m markView) (right, up hd.Number) {
	right = div(hd.Sub(c.x[m[0]], c.centre[0]), c.focal)
	up = div(hd.Sub(c.centre[1], c.x[m[1]]), c.focal)
	s := c.unbend(hd.Add(square(right), square(up)))
	return hd.Mul(right, s), hd.Mul(up, s)
}

// world turns a direction of the camera into one of the world: the roll is
// undone first, then the tilt.
func (c camera) world(right, up, ahead hd.Number) vec {
	rise := hd.Sub(hd.Mul(up, c.cosRoll), hd.Mul(right, c.sinRoll))
	return vec{
		hd.Add(hd.Mul(right, c.cosRoll), hd.Mul(up, c.sinRoll)),
		hd.Sub(hd.Mul(ahead, c.cosTilt), hd.Mul(c.sinTilt, rise)),
		hd.Add(hd.Mul(ahead, c.sinTilt), hd.Mul(c.cosTilt, rise)),
	}
}

// ray returns the direction that a mark is seen in, not of unit length.
func (c camera) ray(m markView) vec {
	right, up := c.pinhole(m)
	return c.world(right, up, num(1))
}

// unbend returns the factor s that takes the bend of the lens out of a point at
// the squared radius: s (1 + k1 s^2 r^2) = 1. Source: radial term of the lens
// model of Brown 1971 (from memory).
func (c camera) unbend(r2 hd.Number) hd.Number {
	s, k := num(1), hd.Mul(c.bend, r2)
	for range 4 { // Newton; two steps do for a bend read as 0
		s2 := square(s)
		excess := hd.Sub(hd.Mul(s, hd.Add(num(1), hd.Mul(k, s2))), num(1))
		s = hd.Sub(s, div(excess, hd.Add(num(1), hd.Scale(3, hd.Mul(k, s2)))))
	}
	return s
}

// onPlane returns the point in which a ray meets the plane parallel to the
// limb's at the distance.
func (c camera) onPlane(ray vec, distance hd.Number) vec {
	return scaled(ray, div(distance, dot(ray, c.normal)))
}

// inPlane returns the coordinates of a point along the plane: level to the right
// and up. What lies before or behind the plane is left out.
func (c camera) inPlane(p vec) (along, up hd.Number) { return dot(p, c.level), p[2] }
