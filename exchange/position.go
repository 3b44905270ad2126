package exchange

import (
	"math"

	"boughline/quantity"
	"boughline/survey"
)

// Half axes of the WGS 84 ellipsoid (NIMA TR8350.2, 2000, Table 3.1; from
// memory), m.
const (
	equatorial = 6378137.0
	flattening = 1 / 298.257223563
	eccentric2 = flattening * (2 - flattening)
)

// Position is a place on the earth in WGS 84 decimal degrees.
type Position struct{ Latitude, Longitude float64 }

// PositionOf is that of the origin of a site, false where the site has none.
// Nearer than 0.01 degrees to a pole there is no east.
func PositionOf(p *survey.Place) (Position, bool) {
	if p == nil || math.Abs(p.Latitude) > 89.99 {
		return Position{}, false
	}
	return Position{p.Latitude, p.Longitude}, true
}

// cartesian is the place at height 0 in the frame of the earth, m, with the
// directions of east and north there.
func (p Position) cartesian() (place, east, north quantity.Vec3) {
	sinLat, cosLat := math.Sincos(p.Latitude * math.Pi / 180)
	sinLon, cosLon := math.Sincos(p.Longitude * math.Pi / 180)
	n := equatorial / math.Sqrt(1-eccentric2*sinLat*sinLat)
	return quantity.Vec3{X: n * cosLat * cosLon, Y: n * cosLat * sinLon, Z: n * (1 - eccentric2) * sinLat},
		quantity.Vec3{X: -sinLon, Y: cosLon}, quantity.Vec3{X: -sinLat * cosLon, Y: -sinLat * sinLon, Z: cosLat}
}

// Offset is how far east and north of p another place lies, measured in the
// plane that touches the ellipsoid at p.
func (p Position) Offset(to Position) (east, north quantity.Length) {
	from, e, n := p.cartesian()
	there, _, _ := to.cartesian()
	d := there.Sub(from)
	return quantity.Length(d.Dot(e)), quantity.Length(d.Dot(n))
}

// Moved is the place that lies so far east and north of p, the inverse of
// Offset, for distances of a site.
func (p Position) Moved(east, north quantity.Length) Position {
	to := p
	for range 8 { // each step leaves less than a hundredth of the error
		e, n := p.Offset(to)
		sin, cos := math.Sincos(to.Latitude * math.Pi / 180)
		w := math.Sqrt(1 - eccentric2*sin*sin)
		meridian, across := equatorial*(1-eccentric2)/(w*w*w), equatorial/w*cos
		to.Latitude += float64(north-n) / meridian * 180 / math.Pi
		to.Longitude += float64(east-e) / across * 180 / math.Pi
	}
	to.Longitude = math.Remainder(to.Longitude, 360)
	return to
}
