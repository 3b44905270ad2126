package space

import (
	"math"

	"boughline/quantity"
)

// Reach is where riders of one swing can come in plan: along the swing line as
// far as their flights go, and to the sides as far as a launch off the line
// takes them.
type Reach struct {
	Hang         quantity.Vec3  // hang point; Z does not count
	SwingAzimuth quantity.Angle // of positive Along, clockwise from north
	// Ahead and Behind are the lengths from the plumb line in the direction of
	// SwingAzimuth and against it.
	Ahead, Behind quantity.Length
	// Drift is how far the path comes to the side of the plumb line, Off the
	// angle by which flights may leave the swing line.
	Drift quantity.Length
	Off   quantity.Angle
}

// Polygon returns the outline of the reach with a margin on all sides: wider
// at its ends than beside the plumb line, as flights off the line are. least is
// the least half width.
func (r Reach) Polygon(margin, least quantity.Length) Polygon {
	ahead := quantity.Heading(r.SwingAzimuth, 0)
	right := quantity.Heading(r.SwingAzimuth+90*quantity.Degree, 0)
	waist := max(least, r.Drift+margin)
	corner := func(along, beside quantity.Length) quantity.Vec3 {
		return flat(r.Hang.Add(ahead.Scale(float64(along))).Add(right.Scale(float64(beside))))
	}
	wide := func(length quantity.Length) quantity.Length {
		return max(waist, quantity.Length(math.Tan(float64(r.Off)))*length+margin)
	}
	front, back := wide(r.Ahead), wide(r.Behind)
	return Polygon{
		corner(r.Ahead, -front), corner(r.Ahead, front), corner(0, waist),
		corner(-r.Behind, back), corner(-r.Behind, -back), corner(0, -waist),
	}
}
