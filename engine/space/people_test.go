package space

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// A swing to the east over a hang point at (1, 2): distances by plane geometry.
var people = People{
	Hang: quantity.Vec3{X: 1, Y: 2, Z: 5}, SwingAzimuth: 90 * quantity.Degree,
	Ahead: 7, Behind: 5, HalfWidth: 2,
	Places: []Disc{{quantity.Vec3{X: 1, Y: 12}, 1.5}},
	Ways:   []Strip{{quantity.Vec3{X: 1, Y: 12}, quantity.Vec3{X: -9, Y: 12}, 0.5}},
}

func TestDistanceToPeople(t *testing.T) {
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
		turned := people
		turned.SwingAzimuth += quantity.Angle(turn)
		turned.Places = []Disc{{about(people.Hang, people.Places[0].Centre, turn), 1.5}}
		way := people.Ways[0]
		turned.Ways = []Strip{{about(people.Hang, way.From, turn), about(people.Hang, way.To, turn), way.HalfWidth}}
		if d := turned.Distance(about(people.Hang, point, turn)) - people.Distance(point); math.Abs(float64(d)) > 1e-9 {
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
