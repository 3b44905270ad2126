package space

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// plan is a swing to the east over a hang point at (1, 2): distances by plane
// geometry.
func plan(turn float64) People {
	reach := Reach{
		Hang: quantity.Vec3{X: 1, Y: 2, Z: 5}, SwingAzimuth: 90*quantity.Degree + quantity.Angle(turn),
		Ahead: 7, Behind: 5, Drift: 1,
	}
	turned := func(x, y float64) quantity.Vec3 { return about(reach.Hang, quantity.Vec3{X: x, Y: y}, turn) }
	return People{
		Area:   reach.Polygon(1, 2),
		Places: []Disc{{turned(1, 12), 1.5}},
		Ways:   []Strip{{turned(1, 12), turned(-9, 12), 0.5}},
	}
}

func TestDistanceToPeople(t *testing.T) {
	people := plan(0)
	for _, row := range []struct{ x, y, want float64 }{
		{1, 2, 0}, {7.9, 3.9, 0}, // on the band
		{9, 2, 1}, {-6, 2, 2}, // beyond its ends at 8 and -4
		{1, 5, 1}, {1, -3, 3}, // beside it
		{11, 8, 5},                      // off a corner: 3, 4
		{1, 14, 0.5},                    // beside the waiting place
		{-5, 11, 0.5},                   // beside the way in
		{-9, 11.4, 0.1}, {-10, 12, 0.5}, // round its end
	} {
		got := people.Distance(quantity.Vec3{X: row.x, Y: row.y, Z: 9})
		near(t, "distance", float64(got), row.want, 1e-12)
	}
	if !people.Near(quantity.Vec3{X: 9, Y: 2}, 1.2) || people.Near(quantity.Vec3{X: 9, Y: 2}, 0.8) {
		t.Error("wood 1 m beyond the band: reached with 1.2 m, not with 0.8 m")
	}
}

// Turning the site about the hang point changes no distance.
func TestDistanceToPeopleTurnsWithTheSite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		turn := rapid.Float64Range(-4, 4).Draw(t, "turn")
		point := quantity.Vec3{X: rapid.Float64Range(-20, 20).Draw(t, "x"), Y: rapid.Float64Range(-20, 20).Draw(t, "y")}
		if d := plan(turn).Distance(about(quantity.Vec3{X: 1, Y: 2}, point, turn)) - plan(0).Distance(point); math.Abs(float64(d)) > 1e-9 {
			t.Fatalf("the distance changes by %v m", d)
		}
	})
}

// about turns p clockwise in plan about the centre.
func about(centre, p quantity.Vec3, turn float64) quantity.Vec3 {
	sin, cos := math.Sincos(turn)
	d := p.Sub(centre)
	return centre.Add(quantity.Vec3{X: d.X*cos + d.Y*sin, Y: -d.X*sin + d.Y*cos})
}

// Moving the origin moves everything and changes no distance.
func TestPeopleSeenFromElsewhere(t *testing.T) {
	by := quantity.Vec3{X: 3, Y: -8}
	for _, p := range []quantity.Vec3{{X: 1, Y: 2}, {X: 12, Y: 3}, {X: 1, Y: 15}, {X: -12, Y: 9}} {
		near(t, "distance", float64(plan(0).Moved(by).Distance(p.Add(by))), float64(plan(0).Distance(p)), 1e-12)
	}
}
