package space

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Point is one station of a ground profile.
type Point struct {
	Along  quantity.Length // from the plumb line
	Height quantity.Length // any level datum, the same for all stations
}

// Ground is the profile of the ground along the swing line: straight between
// its stations, level beyond the first and the last. Stations run in rising
// order of Along. A wall or step takes two stations a little apart.
type Ground struct{ Stations []Point }

// At returns the height of the ground, NaN for a ground without stations.
func (g Ground) At(along quantity.Length) quantity.Length {
	n := len(g.Stations)
	if n == 0 {
		return quantity.Length(math.NaN())
	}
	k := g.above(float64(along))
	switch k {
	case 0:
		return g.Stations[0].Height
	case n:
		return g.Stations[n-1].Height
	}
	a, b := g.Stations[k-1], g.Stations[k]
	return a.Height + (b.Height-a.Height)*(along-a.Along)/(b.Along-a.Along)
}

// Straightened leaves out the stations at which the slope does not change.
func (g Ground) Straightened() Ground {
	var kept []Point
	for i, p := range g.Stations {
		if i > 0 && i < len(g.Stations)-1 && straight(kept[len(kept)-1], p, g.Stations[i+1]) {
			continue
		}
		kept = append(kept, p)
	}
	return Ground{kept}
}

// straight reports whether b lies on the line from a to c, to rounding.
func straight(a, b, c Point) bool {
	share := (b.Along - a.Along) / (c.Along - a.Along)
	return math.Abs(float64(a.Height+share*(c.Height-a.Height)-b.Height)) < levelWithin
}

// Mirrored returns the profile seen from the other side of the swing line.
func (g Ground) Mirrored() Ground {
	n := len(g.Stations)
	turned := make([]Point, n)
	for i, p := range g.Stations {
		turned[n-1-i] = Point{Along: -p.Along, Height: p.Height}
	}
	return Ground{Stations: turned}
}

// above returns the number of stations at or before x. Profiles are short, so
// a plain walk beats a search.
func (g Ground) above(x float64) int {
	k := 0
	for k < len(g.Stations) && float64(g.Stations[k].Along) <= x {
		k++
	}
	return k
}

// piece is the straight line y = height + slope (x - along).
type piece struct {
	along, height, slope float64
	end                  float64 // where the piece ends, +Inf for the last
}

// pieceFrom returns the piece that starts at station k-1; k = 0 is the level
// piece before the first station.
func (g Ground) pieceFrom(k int) piece {
	n := len(g.Stations)
	if k == 0 {
		first := g.Stations[0]
		return piece{float64(first.Along), float64(first.Height), 0, float64(first.Along)}
	}
	a := g.Stations[k-1]
	if k == n {
		return piece{float64(a.Along), float64(a.Height), 0, math.Inf(1)}
	}
	b := g.Stations[k]
	slope := float64((b.Height - a.Height) / (b.Along - a.Along))
	return piece{float64(a.Along), float64(a.Height), slope, float64(b.Along)}
}

func (g Ground) validate() error {
	if len(g.Stations) == 0 {
		return fmt.Errorf("ground.stations: there are none; expected at least one point of the profile")
	}
	for i, p := range g.Stations {
		if !finite(p.Along) || !finite(p.Height) {
			return fmt.Errorf("ground.stations[%d]: (%v, %v) is not finite; expected lengths in m", i, p.Along, p.Height)
		}
		if i > 0 && p.Along <= g.Stations[i-1].Along {
			return fmt.Errorf("ground.stations[%d].along: %v m does not lie beyond %v m; expected rising stations, a wall as two of them a little apart",
				i, p.Along, g.Stations[i-1].Along)
		}
	}
	return nil
}

func finite(q quantity.Length) bool {
	return !math.IsNaN(float64(q)) && !math.IsInf(float64(q), 0)
}
