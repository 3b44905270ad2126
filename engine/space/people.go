package space

import (
	"math"

	"boughline/quantity"
)

// Disc is a place in plan, such as where riders wait.
type Disc struct {
	Centre quantity.Vec3 // in the frame of the site; Z does not count
	Radius quantity.Length
}

// Strip is a way in plan from one point to another.
type Strip struct {
	From, To  quantity.Vec3 // in the frame of the site; Z does not count
	HalfWidth quantity.Length
}

// People is the plan of everywhere that people are while a swing is in use:
// the band along the swing line with the let-go flight, the waiting places
// and the ways in.
type People struct {
	Hang         quantity.Vec3  // hang point; Z does not count
	SwingAzimuth quantity.Angle // of positive Along, clockwise from north
	// Ahead and Behind are the lengths of the band from the plumb line in the
	// direction of SwingAzimuth and against it.
	Ahead, Behind quantity.Length
	HalfWidth     quantity.Length // of the band
	Places        []Disc
	Ways          []Strip
}

// Distance returns the horizontal distance of a position to the nearest place
// where people are, 0 above such a place.
func (p People) Distance(position quantity.Vec3) quantity.Length {
	least := p.band(position)
	for _, way := range p.Ways {
		least = min(least, way.distance(position))
	}
	for _, place := range p.Places {
		least = min(least, place.distance(position))
	}
	return least
}

// Near says whether wood falling from the position could reach people: reach
// is how far from straight below it may come down, its own length and throw
// included.
func (p People) Near(position quantity.Vec3, reach quantity.Length) bool {
	return p.Distance(position) <= reach
}

func (d Disc) distance(position quantity.Vec3) quantity.Length {
	apart := math.Hypot(position.X-d.Centre.X, position.Y-d.Centre.Y)
	return max(0, quantity.Length(apart)-d.Radius)
}

// distance rounds the ends, so that strips in a row leave no gap at a bend.
func (s Strip) distance(position quantity.Vec3) quantity.Length {
	beyond, beside := fromSegment(s.From, s.To, position)
	return max(0, quantity.Length(math.Hypot(beyond, beside))-s.HalfWidth)
}

// band returns the distance to the rectangle along the swing line.
func (p People) band(position quantity.Vec3) quantity.Length {
	ahead := quantity.Heading(p.SwingAzimuth, 0)
	from, to := p.Hang.Sub(ahead.Scale(float64(p.Behind))), p.Hang.Add(ahead.Scale(float64(p.Ahead)))
	beyond, beside := fromSegment(from, to, position)
	return quantity.Length(math.Hypot(beyond, math.Max(0, beside-float64(p.HalfWidth))))
}

// fromSegment returns how far the position lies beyond the ends of a segment,
// measured along it, and beside its line, both in plan.
func fromSegment(from, to, position quantity.Vec3) (beyond, beside float64) {
	along, offset := flat(to.Sub(from)), flat(position.Sub(from))
	length, axis := along.Norm(), along.Unit()
	station := offset.Dot(axis)
	beyond = math.Max(0, math.Max(-station, station-length))
	return beyond, offset.Sub(axis.Scale(station)).Norm()
}

func flat(v quantity.Vec3) quantity.Vec3 { return quantity.Vec3{X: v.X, Y: v.Y} }
