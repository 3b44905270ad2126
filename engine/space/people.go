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
// the area that is kept clear for its riders, the waiting places and the ways
// in.
type People struct {
	Area   Polygon
	Places []Disc
	Ways   []Strip
}

// Moved returns the plan seen from an origin elsewhere.
func (p People) Moved(by quantity.Vec3) People {
	var moved People
	for _, corner := range p.Area {
		moved.Area = append(moved.Area, corner.Add(by))
	}
	for _, d := range p.Places {
		moved.Places = append(moved.Places, Disc{d.Centre.Add(by), d.Radius})
	}
	for _, w := range p.Ways {
		moved.Ways = append(moved.Ways, Strip{w.From.Add(by), w.To.Add(by), w.HalfWidth})
	}
	return moved
}

// Distance returns the horizontal distance of a position to the nearest place
// where people are, 0 above such a place.
func (p People) Distance(position quantity.Vec3) quantity.Length {
	least := p.Area.Distance(position)
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
