package draw

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// randomPolygon is star-shaped about the origin, so that its area follows from
// its corners by the shoelace formula.
func randomPolygon(t *rapid.T) []Point {
	n := rapid.IntRange(3, 12).Draw(t, "corners")
	list := make([]Point, n)
	for i := range list {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		r := rapid.Float64Range(20, 60).Draw(t, "radius")
		list[i] = Point{r * cos, r * sin}
	}
	return list
}

func area(p []Point) float64 {
	sum := 0.0
	for i, b := range p {
		a := p[(i+len(p)-1)%len(p)]
		sum += a.X*b.Y - a.Y*b.X
	}
	return math.Abs(sum) / 2
}

// The length of hatching times its spacing is the area: the rectangle rule of
// integration, whose error for a polygon is of the order of perimeter times
// spacing squared over the width.
func TestHatchingCoversTheArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline := randomPolygon(t)
		for f, sets := range hatching {
			sum := 0.0
			for _, l := range Hatching(outline, f) {
				sum += Distance(l[0], l[1])
			}
			got := sum * sets[0].spacing / float64(len(sets))
			if want := area(outline); math.Abs(got-want) > 0.06*want {
				t.Fatalf("%v: hatching of %.1f mm2 covers %.1f mm2", f, want, got)
			}
		}
	})
}

func TestHatchingOfASquare(t *testing.T) {
	lines := Hatching(Rectangle(BoxAt(Point{0.1, 0.1}, 10, 2.6)), Level)
	if len(lines) != 2 {
		t.Fatalf("%d lines; a height of 2.6 with 1.3 between lines holds two", len(lines))
	}
	for _, l := range lines {
		if math.Abs(l[0].X-0.1) > 1e-9 || math.Abs(l[1].X-10.1) > 1e-9 || l[0].Y != l[1].Y {
			t.Errorf("line %v does not run from edge to edge", l)
		}
	}
}

func TestHatchesCanBeToldApart(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range Hatches() {
		if !f.IsHatch() || seen[f.String()] {
			t.Errorf("%v is no hatching of its own", f)
		}
		seen[f.String()] = true
	}
}
