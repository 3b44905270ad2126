package draw

import (
	"testing"

	"pgregory.net/rapid"
)

func randomPoint(t *rapid.T, room Box) Point {
	return Point{rapid.Float64Range(room.Min.X, room.Max.X).Draw(t, "x"), rapid.Float64Range(room.Min.Y, room.Max.Y).Draw(t, "y")}
}

func TestPlacedLabelsStayApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		room := BoxAt(Point{3, 8}, rapid.Float64Range(20, 114).Draw(t, "width"), rapid.Float64Range(20, 120).Draw(t, "height"))
		p := NewPlacer(room)
		wall := []Point{randomPoint(t, room), randomPoint(t, room)}
		p.Forbid(wall...)
		p.Avoid(randomPoint(t, room), randomPoint(t, room))
		var placed []Box
		for range rapid.IntRange(1, 40).Draw(t, "labels") {
			b, ok := p.Place(randomPoint(t, room), rapid.Float64Range(4, 30).Draw(t, "wide"), rapid.Float64Range(4, 12).Draw(t, "high"))
			if !ok {
				continue
			}
			if !room.Holds(b) || b.crosses(wall[0], wall[1]) {
				t.Fatalf("%v leaves %v or lies on %v", b, room, wall)
			}
			for _, other := range placed {
				if b.Overlaps(other) {
					t.Fatalf("%v overlaps %v", b, other)
				}
			}
			placed = append(placed, b)
		}
	})
}

func TestOneLabelStandsBesideItsPlace(t *testing.T) {
	p := NewPlacer(BoxAt(Point{}, 100, 100))
	at := Point{50, 50}
	b, ok := p.Place(at, 20, 5)
	if !ok || Distance(at, b.Nearest(at)) > 1.5 || Leader(at, b) != nil {
		t.Errorf("placed %v, %v", b, ok)
	}
}

func TestAFullPaperIsReported(t *testing.T) {
	p := NewPlacer(BoxAt(Point{}, 20, 10))
	p.Take(BoxAt(Point{0, 0}, 20, 10))
	if b, ok := p.Place(Point{5, 5}, 4, 4); ok {
		t.Errorf("found room at %v on a full paper", b)
	}
}

func TestCrossing(t *testing.T) {
	b := BoxAt(Point{10, 10}, 10, 10)
	for _, c := range []struct {
		from, to Point
		want     bool
	}{
		{Point{0, 15}, Point{30, 15}, true},
		{Point{15, 0}, Point{15, 30}, true},
		{Point{12, 12}, Point{13, 13}, true},
		{Point{0, 0}, Point{9, 30}, false},
		{Point{0, 25}, Point{30, 25}, false},
		{Point{0, 15}, Point{5, 15}, false},
	} {
		if got := b.crosses(c.from, c.to); got != c.want {
			t.Errorf("%v to %v: %v", c.from, c.to, got)
		}
	}
}
