package draw

import "math"

// Box is an upright rectangle.
type Box struct{ Min, Max Point }

// BoxAt returns the box of a size with its upper left corner at a point.
func BoxAt(corner Point, width, height float64) Box {
	return Box{corner, corner.Add(width, height)}
}

// Width returns the extent in X.
func (b Box) Width() float64 { return b.Max.X - b.Min.X }

// Height returns the extent in Y.
func (b Box) Height() float64 { return b.Max.Y - b.Min.Y }

// Centre returns the point in the middle.
func (b Box) Centre() Point { return Point{(b.Min.X + b.Max.X) / 2, (b.Min.Y + b.Max.Y) / 2} }

// Grown returns the box with a margin on every side.
func (b Box) Grown(margin float64) Box {
	return Box{b.Min.Add(-margin, -margin), b.Max.Add(margin, margin)}
}

// Overlaps reports whether two boxes share more than an edge.
func (b Box) Overlaps(c Box) bool {
	const touching = 1e-9
	return b.Min.X < c.Max.X-touching && c.Min.X < b.Max.X-touching &&
		b.Min.Y < c.Max.Y-touching && c.Min.Y < b.Max.Y-touching
}

// Holds reports whether c lies within b.
func (b Box) Holds(c Box) bool {
	const touching = 1e-9
	return c.Min.X >= b.Min.X-touching && c.Min.Y >= b.Min.Y-touching && c.Max.X <= b.Max.X+touching && c.Max.Y <= b.Max.Y+touching
}

// Nearest returns the point of the box that is nearest to p.
func (b Box) Nearest(p Point) Point {
	return Point{math.Min(math.Max(p.X, b.Min.X), b.Max.X), math.Min(math.Max(p.Y, b.Min.Y), b.Max.Y)}
}

// Distance returns how far apart two points are.
func Distance(a, b Point) float64 { return math.Hypot(a.X-b.X, a.Y-b.Y) }

// crosses reports whether a segment passes through the box.
func (b Box) crosses(from, to Point) bool {
	if from.X < b.Min.X && to.X < b.Min.X || from.X > b.Max.X && to.X > b.Max.X ||
		from.Y < b.Min.Y && to.Y < b.Min.Y || from.Y > b.Max.Y && to.Y > b.Max.Y {
		return false
	}
	_, _, ok := b.Clip(from, to)
	return ok
}

// Clip returns the part of a segment within the box; false where there is none
// (Liang and Barsky 1984, from memory).
func (b Box) Clip(from, to Point) (first, last Point, ok bool) {
	enter, leave := 0.0, 1.0
	clip := func(step, room float64) bool {
		switch {
		case step == 0:
			return room >= 0
		case step < 0:
			enter = math.Max(enter, room/step)
		default:
			leave = math.Min(leave, room/step)
		}
		return enter <= leave
	}
	dx, dy := to.X-from.X, to.Y-from.Y
	ok = clip(-dx, from.X-b.Min.X) && clip(dx, b.Max.X-from.X) && clip(-dy, from.Y-b.Min.Y) && clip(dy, b.Max.Y-from.Y)
	return from.Add(enter*dx, enter*dy), from.Add(leave*dx, leave*dy), ok
}
