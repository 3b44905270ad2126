package draw

import (
	"math"
	"slices"
)

// strokes is one set of parallel hatching lines.
type strokes struct {
	angle   float64 // of the lines, rad
	spacing float64
}

var hatching = map[Fill][]strokes{
	Slant:     {{-math.Pi / 4, 1.3}},
	BackSlant: {{math.Pi / 4, 1.3}},
	Level:     {{0, 1.3}},
	Upright:   {{math.Pi / 2, 1.3}},
	Cross:     {{-math.Pi / 4, 1.6}, {math.Pi / 4, 1.6}},
	Grid:      {{0, 1.6}, {math.Pi / 2, 1.6}},
	Wide:      {{-math.Pi / 4, 2.8}},
}

// IsHatch reports whether a fill is hatching.
func (f Fill) IsHatch() bool { return len(hatching[f]) > 0 }

// Hatching returns the lines that hatch a polygon, in pairs of ends. They are
// lines of the scene and no pattern of the ink, so that every ink draws the
// same, and lie on one raster of the whole paper, so that neighbours join.
func Hatching(outline []Point, f Fill) [][2]Point {
	var lines [][2]Point
	for _, s := range hatching[f] {
		lines = append(lines, s.over(outline)...)
	}
	return lines
}

// over cuts a set of parallel lines with a polygon by the even-odd rule.
func (s strokes) over(outline []Point) [][2]Point {
	sin, cos := math.Sincos(s.angle)
	along := func(p Point) float64 { return p.X*cos + p.Y*sin }
	across := func(p Point) float64 { return p.Y*cos - p.X*sin }
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range outline {
		low, high = math.Min(low, across(p)), math.Max(high, across(p))
	}
	var lines [][2]Point
	for k := math.Ceil(low / s.spacing); k*s.spacing < high; k++ {
		level := k * s.spacing
		var cuts []float64
		for i, b := range outline {
			a := outline[(i+len(outline)-1)%len(outline)]
			from, to := across(a), across(b)
			if (from <= level) != (to <= level) {
				cuts = append(cuts, along(a)+(along(b)-along(a))*(level-from)/(to-from))
			}
		}
		slices.Sort(cuts)
		for i := 0; i+1 < len(cuts); i += 2 {
			at := func(x float64) Point { return Point{x*cos - level*sin, x*sin + level*cos} }
			lines = append(lines, [2]Point{at(cuts[i]), at(cuts[i+1])})
		}
	}
	return lines
}

// Round returns a circle as a polygon.
func Round(centre Point, radius float64) []Point {
	const corners = 48
	points := make([]Point, corners)
	for i := range points {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		points[i] = centre.Add(radius*cos, radius*sin)
	}
	return points
}
