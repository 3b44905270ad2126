package draw

import (
	"math"
	"strconv"
)

// Arrow returns an arrow head with its tip at a point, looking away from
// another.
func Arrow(from, tip Point, size float64) Item {
	turn := math.Atan2(tip.Y-from.Y, tip.X-from.X)
	points := []Point{tip}
	for _, side := range [...]float64{-1, 1} {
		sin, cos := math.Sincos(turn + math.Pi + side*0.35)
		points = append(points, tip.Add(size*cos, size*sin))
	}
	return &Polygon{Points: points, Fill: Ink}
}

// Dimension returns a dimension line between two points with a tick at each
// end. Its figure is a label of its own, to be placed by a Placer.
func Dimension(from, to Point) []Item {
	const reach = 1.1
	items := []Item{&Line{Points: []Point{from, to}, Pen: Hair}}
	turn := math.Atan2(to.Y-from.Y, to.X-from.X) + math.Pi/4
	sin, cos := math.Sincos(turn)
	for _, end := range [...]Point{from, to} {
		items = append(items, &Line{Points: []Point{end.Add(-reach*cos, -reach*sin), end.Add(reach*cos, reach*sin)}, Pen: Fine})
	}
	return items
}

// NorthArrow returns an arrow to the top of the paper with its foot at a
// point, and the room it takes.
func NorthArrow(foot Point) (Item, Box) {
	const tall = 9.0
	tip := foot.Add(0, -tall)
	letter := &Text{At: tip.Add(0, -1.2), Words: "N", Size: LabelSize, Anchor: Middle, Strong: true}
	arrow := &Group{Key: "north", Title: "North is up.", Items: []Item{
		&Line{Points: []Point{foot, tip}, Pen: Fine}, Arrow(foot, tip, 3.2), letter,
	}}
	box := letter.Box()
	return arrow, Box{box.Min, Point{box.Max.X, foot.Y}}
}

// ScaleBar returns a bar of a round number of metres at most a third of a
// width long, with its left end at a point, and the room it takes.
func ScaleBar(at Point, perMetre, width float64) (Item, Box) {
	metres := RoundBelow(width / 3 / perMetre)
	long, half := metres*perMetre, metres*perMetre/2
	words := &Text{At: at.Add(long+1.2, 1.3), Words: strconv.FormatFloat(metres, 'f', -1, 64) + " m", Size: LabelSize}
	bar := &Group{Key: "scale", Title: "Scale bar", Items: []Item{
		&Polygon{Points: rectangle(at.Add(0, -0.6), half, 1.2), Pen: Hair, Fill: Ink},
		&Polygon{Points: rectangle(at.Add(half, -0.6), half, 1.2), Pen: Hair, Fill: Paper},
		words,
	}}
	box := words.Box()
	return bar, Box{Point{at.X, box.Min.Y}, box.Max}
}

func rectangle(corner Point, width, height float64) []Point {
	return []Point{corner, corner.Add(width, 0), corner.Add(width, height), corner.Add(0, height)}
}

// Rectangle returns the corners of a box.
func Rectangle(b Box) []Point { return rectangle(b.Min, b.Width(), b.Height()) }

// RoundBelow returns the greatest 1, 2 or 5 times a power of ten that is not
// above x.
func RoundBelow(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)))
	for _, step := range [...]float64{5, 2} {
		if step*power <= x*(1+1e-9) {
			return step * power
		}
	}
	return power
}
