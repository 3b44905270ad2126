package space

import (
	"math"
	"testing"

	"boughline/quantity"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
	"pgregory.net/rapid"
)

func points(xy ...float64) []quantity.Vec3 {
	var list []quantity.Vec3
	for i := 0; i < len(xy); i += 2 {
		list = append(list, quantity.Vec3{X: xy[i], Y: xy[i+1]})
	}
	return list
}

// Distances between a square and things about it, by plane geometry.
func TestApart(t *testing.T) {
	square := Polygon(points(0, 0, 4, 0, 4, 4, 0, 4))
	for _, row := range []struct {
		name   string
		thing  []quantity.Vec3
		closed bool
		want   float64
	}{
		{"a point off a corner", points(7, 8), false, 5},
		{"a point within", points(1, 1), false, 0},
		{"a fence beside it", points(6, -3, 6, 9), false, 2},
		{"a fence through it", points(-1, 2, 9, 2), false, 0},
		{"a fence past a corner", points(6, 4, 4, 6), false, math.Sqrt2},
		{"a pond round it", points(-9, -9, 9, -9, 9, 9, -9, 9), true, 0},
		{"the same line, open", points(-9, -9, 9, -9, 9, 9, -9, 9), false, 5},
		{"a pond beside it", points(5, 0, 8, 0, 8, 3), true, 1},
	} {
		near(t, row.name, float64(square.Apart(row.thing, row.closed)), row.want, 1e-12)
	}
}

// The planar package of github.com/paulmach/orb gives the same distances to
// the reach of a swing, which is a polygon with a waist.
func TestDistanceMatchesOrb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		area := Reach{
			Hang: quantity.Vec3{X: draw("x0", -5, 5), Y: draw("y0", -5, 5)}, SwingAzimuth: quantity.Angle(draw("azimuth", 0, 6.3)),
			Ahead: quantity.Length(draw("ahead", 1, 9)), Behind: quantity.Length(draw("behind", 1, 9)),
			Drift: quantity.Length(draw("drift", 0, 1)), Off: quantity.Angle(draw("off", 0, 0.3)),
		}.Polygon(1, 0.5)
		p := quantity.Vec3{X: draw("x", -15, 15), Y: draw("y", -15, 15)}
		var ring orb.Ring
		for _, c := range append(area, area[0]) {
			ring = append(ring, orb.Point{c.X, c.Y})
		}
		want := 0.0
		if !planar.RingContains(ring, orb.Point{p.X, p.Y}) {
			want = planar.DistanceFrom(ring, orb.Point{p.X, p.Y})
		}
		if got := float64(area.Distance(p)); math.Abs(got-want) > 1e-9 {
			t.Fatalf("%v m, want %v m", got, want)
		}
	})
}

// Seen from above: as long as its flights, at its ends wider by the tangent of
// the angle off the line, at the waist by the drift.
func TestReachOutline(t *testing.T) {
	r := Reach{Ahead: 8, Behind: 6, Drift: 0.7, Off: 10 * quantity.Degree} // to the north
	got := r.Polygon(1, 0)
	tan := math.Tan(10 * math.Pi / 180)
	want := points(-(8*tan + 1), 8, 8*tan+1, 8, 1.7, 0, 6*tan+1, -6, -(6*tan + 1), -6, -1.7, 0)
	for i := range want {
		if got[i].Sub(want[i]).Norm() > 1e-12 {
			t.Errorf("corner %d at %v, want %v", i, got[i], want[i])
		}
	}
	if wide := r.Polygon(1, 5); wide[2].X != 5 || wide[0].X != -5 {
		t.Errorf("with a least half width of 5 m: %v", wide)
	}
}
