package section

import (
	"math"

	"boughline/quantity"
)

// Point is a point in the plane of the section.
type Point struct{ X, Y quantity.Length }

// Ring is a closed line through its points, the last joined to the first: an
// outline or the edge of a cavity. It must not cross itself.
type Ring []Point

// steps is how many corners stand for a full ellipse. With the area kept, its
// second moments are off by under 1e-8 and its edge by under 1e-5.
const steps = 720

// Ellipse returns an ellipse with half-axes a and b, a turned from x by
// rotation. The corners lie a trifle outside so that the area is exact.
func Ellipse(centre Point, a, b quantity.Length, rotation quantity.Angle) Ring {
	const turn = 2 * math.Pi / steps
	keep := math.Sqrt(turn / math.Sin(turn))
	c, s := rotation.Cos(), rotation.Sin()
	ring := make(Ring, steps)
	for i := range ring {
		sin, cos := math.Sincos(turn * float64(i))
		x, y := float64(a)*keep*cos, float64(b)*keep*sin
		ring[i] = Point{centre.X + quantity.Length(c*x-s*y), centre.Y + quantity.Length(s*x+c*y)}
	}
	return ring
}

// Circle returns a circle.
func Circle(centre Point, radius quantity.Length) Ring { return Ellipse(centre, radius, radius, 0) }

// Sounding is a distance from a centre at an angle: half a calliper reading,
// or how far the sound wood or the hollow reaches there.
type Sounding struct {
	Angle  quantity.Angle
	Radius quantity.Length
}

// Soundings returns the outline through radii measured about a centre, with
// straight lines between them: inside a convex outline, so on the safe side
// for the outline, and on the unsafe side for a cavity measured at few angles.
func Soundings(centre Point, soundings []Sounding) Ring {
	ring := make(Ring, len(soundings))
	for i, s := range soundings {
		ring[i] = Point{
			centre.X + s.Radius*quantity.Length(s.Angle.Cos()),
			centre.Y + s.Radius*quantity.Length(s.Angle.Sin()),
		}
	}
	return ring
}

// Opening returns the sector about a centre that lies within halfAngle of a
// direction, far enough out to cut through any outline up to reach from the
// centre. With a cavity it makes an open one.
func Opening(centre Point, direction, halfAngle quantity.Angle, reach quantity.Length) Ring {
	parts := max(1, int(math.Ceil(float64(halfAngle)/(math.Pi/12))))
	step := 2 * halfAngle / quantity.Angle(parts)
	far := 2 * reach / quantity.Length((step / 2).Cos())
	ring := Ring{centre}
	for i := range parts + 1 {
		angle := direction - halfAngle + quantity.Angle(i)*step
		ring = append(ring, Point{
			centre.X + far*quantity.Length(angle.Cos()),
			centre.Y + far*quantity.Length(angle.Sin()),
		})
	}
	return ring
}

// Reach returns the greatest distance of the ring from a point.
func (r Ring) Reach(from Point) quantity.Length {
	reach := 0.0
	for _, p := range r {
		reach = math.Max(reach, math.Hypot(float64(p.X-from.X), float64(p.Y-from.Y)))
	}
	return quantity.Length(reach)
}
