package space

import (
	"math"
	"slices"
	"strings"
	"testing"

	"boughline/quantity"

	"pgregory.net/rapid"
)

// spotsOn draws places in plan, apart from one another, on a surface.
func spotsOn(t *rapid.T, height func(x, y float64) float64) []Spot {
	var spots []Spot
	coordinate := rapid.IntRange(-8, 8) // whole metres: many in line and on one circle
	for range rapid.IntRange(3, 25).Draw(t, "spots") {
		x, y := float64(coordinate.Draw(t, "x")), float64(coordinate.Draw(t, "y"))
		s := Spot{quantity.Length(x), quantity.Length(y), quantity.Length(height(x, y)), 0.02}
		known := false
		for _, other := range spots {
			known = known || other.X == s.X && other.Y == s.Y
		}
		if !known {
			spots = append(spots, s)
		}
	}
	return spots
}

// Triangles fill the outline of the spots without overlap (their areas add up to
// that of the convex hull), use every spot, and no circle through the corners
// of one holds another spot: the definition of Delaunay, 1934.
func TestTrianglesAreDelaunay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		terrain, err := NewTerrain(spotsOn(t, func(x, y float64) float64 { return 0 }))
		if err != nil {
			return // fewer than three, or in line: TestTerrainRefuses
		}
		area, used := 0.0, map[int]bool{}
		for _, tri := range terrain.triangles {
			a, b, c := terrain.spots[tri[0]], terrain.spots[tri[1]], terrain.spots[tri[2]]
			if turn(a, b, c) <= 0 {
				t.Fatalf("triangle %v is not counter-clockwise", tri)
			}
			area += turn(a, b, c) / 2
			for _, i := range tri {
				used[i] = true
			}
			for i, s := range terrain.spots {
				if !tri.has(i) && inCircle(a, b, c, s) {
					t.Fatalf("spot %v lies in the circle through %v %v %v", s, a, b, c)
				}
			}
		}
		if want := hullArea(terrain.spots); math.Abs(area-want) > 1e-6 || len(used) != len(terrain.spots) {
			t.Fatalf("triangles cover %v m2 of %v, %d of %d spots", area, want, len(used), len(terrain.spots))
		}
	})
}

func (t triangle) has(i int) bool { return t[0] == i || t[1] == i || t[2] == i }

// hullArea is the area of the convex hull by gift wrapping.
func hullArea(spots []Spot) float64 {
	start := 0 // spots are sorted: the first is on the hull
	area, at := 0.0, start
	for {
		next := (at + 1) % len(spots)
		for i := range spots {
			side := turn(spots[at], spots[next], spots[i])
			farther := math.Hypot(float64(spots[i].X-spots[at].X), float64(spots[i].Y-spots[at].Y)) >
				math.Hypot(float64(spots[next].X-spots[at].X), float64(spots[next].Y-spots[at].Y))
			if side < 0 || side == 0 && farther {
				next = i
			}
		}
		area += float64(spots[at].X*spots[next].Y-spots[next].X*spots[at].Y) / 2
		if at = next; at == start {
			return area
		}
	}
}

// On a plane the triangles are that plane, wherever the spots stand.
func TestTerrainOfAPlane(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(-0.3, 0.3).Draw(t, "a"), rapid.Float64Range(-0.3, 0.3).Draw(t, "b")
		terrain, err := NewTerrain(spotsOn(t, func(x, y float64) float64 { return 1 + a*x + b*y }))
		if err != nil {
			return
		}
		x, y := middle(terrain, rapid.IntRange(0, len(terrain.triangles)-1).Draw(t, "triangle"))
		height, sd, known := terrain.At(quantity.Length(x), quantity.Length(y))
		if !known || (math.Abs(float64(height)-(1+a*x+b*y)) > 1e-9 || math.Abs(float64(sd)-0.02) > 1e-9) {
			t.Fatalf("height %v ± %v, want %v ± 0.02", height, sd, 1+a*x+b*y)
		}
		azimuth := quantity.Angle(rapid.Float64Range(0, 6.3).Draw(t, "azimuth"))
		section := terrain.Section(quantity.Vec3{X: x, Y: y}, azimuth)
		if len(section) < 2 {
			t.Fatalf("a line through known ground cuts it %d times", len(section))
		}
		for _, s := range section {
			p := quantity.Vec3{X: x, Y: y}.Add(quantity.Heading(azimuth, 0).Scale(float64(s.Along)))
			if math.Abs(float64(s.Height)-(1+a*p.X+b*p.Y)) > 1e-8 {
				t.Fatalf("section %+v, want %v", s, 1+a*p.X+b*p.Y)
			}
		}
	})
}

// middle is the centroid of a triangle.
func middle(terrain *Terrain, index int) (x, y float64) {
	for _, i := range terrain.triangles[index] {
		x, y = x+float64(terrain.spots[i].X)/3, y+float64(terrain.spots[i].Y)/3
	}
	return x, y
}

// Between two points of a section the ground is straight, and the section
// agrees with the heights at single points.
func TestSectionAgreesWithHeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		terrain, err := NewTerrain(spotsOn(t, func(x, y float64) float64 { return math.Sin(x) + 0.1*y*y }))
		if err != nil {
			return
		}
		azimuth := quantity.Angle(rapid.Float64Range(0, 6.3).Draw(t, "azimuth"))
		section := terrain.Section(quantity.Vec3{X: 0.3, Y: -0.2}, azimuth)
		for i := 1; i < len(section); i++ {
			a, b := section[i-1], section[i]
			share := quantity.Length(rapid.Float64Range(0.01, 0.99).Draw(t, "share"))
			p := quantity.Vec3{X: 0.3, Y: -0.2}.Add(quantity.Heading(azimuth, 0).Scale(float64(a.Along + share*(b.Along-a.Along))))
			height, _, known := terrain.At(quantity.Length(p.X), quantity.Length(p.Y))
			if want := a.Height + share*(b.Height-a.Height); !known || math.Abs(float64(height-want)) > 1e-6 {
				t.Fatalf("height %v (known %v) at %v, want %v", height, known, p, want)
			}
		}
	})
}

func TestTerrainRefuses(t *testing.T) {
	for want, spots := range map[string][]Spot{
		"there are 2":   {{}, {X: 1}},
		"in one line":   {{}, {X: 1, Y: 1}, {X: 2, Y: 2}, {X: 7, Y: 7}},
		"each place":    {{}, {X: 1}, {Y: 1}, {X: 1, Height: 2}},
		"finite length": {{}, {X: 1}, {Y: quantity.Length(math.NaN())}},
	} {
		if _, err := NewTerrain(spots); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: got %v", want, err)
		}
	}
}

// A profile with needless stations is the same ground without them.
func TestStraightened(t *testing.T) {
	g := Ground{Stations: []Point{{-4, 1}, {-2, 1}, {0, 1}, {1, 1.5}, {2, 2}, {3, 2.5}, {5, 0}}}
	got := g.Straightened()
	if want := []Point{{-4, 1}, {0, 1}, {3, 2.5}, {5, 0}}; !slices.Equal(got.Stations, want) {
		t.Errorf("got %v, want %v", got.Stations, want)
	}
	for x := quantity.Length(-6); x <= 7; x += 0.37 {
		near(t, "height", float64(got.At(x)), float64(g.At(x)), 1e-12)
	}
}
