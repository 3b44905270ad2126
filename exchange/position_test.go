package exchange_test

import (
	"math"
	"testing"

	"boughline/exchange"
	"boughline/quantity"

	"pgregory.net/rapid"
)

// TestLengthOfADegree compares with the lengths of a degree of latitude and of
// longitude on WGS 84, m: 110 574 and 111 320 at the equator, 111 132 and
// 78 847 at 45 degrees, 111 412 and 55 800 at 60 degrees (tables of the
// ellipsoid, printed in many atlases; from memory).
func TestLengthOfADegree(t *testing.T) {
	for _, c := range []struct{ latitude, north, east float64 }{{0, 110574, 111320}, {45, 111132, 78847}, {60, 111412, 55800}} {
		p := exchange.Position{Latitude: c.latitude, Longitude: 7}
		const part = 0.01
		_, north := exchange.Position{Latitude: c.latitude - part/2, Longitude: 7}.Offset(exchange.Position{Latitude: c.latitude + part/2, Longitude: 7})
		east, _ := p.Offset(exchange.Position{Latitude: c.latitude, Longitude: 7 + part})
		if math.Abs(float64(north)/part-c.north) > 1 || math.Abs(float64(east)/part-c.east) > 1 {
			t.Errorf("at %g: %.1f north and %.1f east for a degree; expected %g and %g", c.latitude, north/part, east/part, c.north, c.east)
		}
	}
}

func TestMovedIsTheInverseOfOffset(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := exchange.Position{Latitude: rapid.Float64Range(-89, 89).Draw(t, "latitude"), Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude")}
		e, n := rapid.Float64Range(-5000, 5000).Draw(t, "east"), rapid.Float64Range(-5000, 5000).Draw(t, "north")
		to := p.Moved(quantity.Length(e), quantity.Length(n))
		if to.Longitude < -180 || to.Longitude > 180 {
			t.Fatalf("longitude %g", to.Longitude)
		}
		if east, north := p.Offset(to); math.Abs(float64(east)-e) > 1e-5 || math.Abs(float64(north)-n) > 1e-5 {
			t.Errorf("back at %g, %g of %g, %g", east, north, e, n)
		}
	})
}
