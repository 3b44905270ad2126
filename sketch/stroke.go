package sketch

// Weight is the thickness of a line.
type Weight int

// The weights. What is looked for is bold.
const (
	Plain Weight = iota
	Thin
	Bold
)

// Point is a place on the square, x to the right and y downwards, 0 to 100.
type Point struct{ X, Y float64 }

// Stroke is one line of a drawing.
type Stroke struct {
	Weight Weight
	Points []Point
	Smooth bool // a curve through the points, not straight from one to the next
	Closed bool
	Filled bool
}

// Sketch is one drawing.
type Sketch []Stroke

// join puts drawings on top of one another.
func join(parts ...Sketch) Sketch {
	var all Sketch
	for _, part := range parts {
		all = append(all, part...)
	}
	return all
}

func points(xy []float64) []Point {
	list := make([]Point, 0, len(xy)/2)
	for i := 0; i+1 < len(xy); i += 2 {
		list = append(list, Point{xy[i], xy[i+1]})
	}
	return list
}

// line goes straight from point to point.
func line(w Weight, xy ...float64) Sketch { return Sketch{{Weight: w, Points: points(xy)}} }

// curve goes smoothly through the points.
func curve(w Weight, xy ...float64) Sketch {
	return Sketch{{Weight: w, Points: points(xy), Smooth: true}}
}

// loop is a smooth closed outline.
func loop(w Weight, xy ...float64) Sketch {
	return Sketch{{Weight: w, Points: points(xy), Smooth: true, Closed: true}}
}

// box is a closed outline with corners.
func box(w Weight, xy ...float64) Sketch {
	return Sketch{{Weight: w, Points: points(xy), Closed: true}}
}

// solid is a filled smooth shape.
func solid(xy ...float64) Sketch {
	return Sketch{{Weight: Plain, Points: points(xy), Smooth: true, Closed: true, Filled: true}}
}
