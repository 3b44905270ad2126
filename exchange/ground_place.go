package exchange

import (
	"math"

	"boughline/quantity"
	"boughline/survey"
)

// spot is a place on a site, east and north of its origin, m.
type spot struct{ east, north float64 }

// treeSpot is where a tree stands, false where nobody measured it.
func treeSpot(t *survey.Tree) (spot, bool) {
	if t.East == nil || t.North == nil {
		return spot{}, false
	}
	return spot{float64(t.East.Value), float64(t.North.Value)}, true
}

// beside is a place at a side and distance.
func (s spot) beside(side quantity.Angle, distance quantity.Length) spot {
	return spot{s.east + float64(distance)*side.Sin(), s.north + float64(distance)*side.Cos()}
}

// findingSpot is where a finding lies in plan: at its side and distance, or
// with its tree; own tells which.
func findingSpot(t *survey.Tree, f *survey.Finding) (at spot, own, ok bool) {
	at, ok = treeSpot(t)
	if !ok || f.Side == nil || f.Distance == nil {
		return at, false, ok
	}
	return at.beside(f.Side.Value, f.Distance.Value), true, true
}

// hazardSpot is where a hazard lies, false where it has no place.
func hazardSpot(s *survey.Survey, h *survey.Hazard) (spot, bool) {
	if h.East != nil && h.North != nil {
		return spot{float64(h.East.Value), float64(h.North.Value)}, true
	}
	for i := range s.Trees {
		if t := &s.Trees[i]; t.ID == h.Tree && h.Side != nil && h.Distance != nil {
			at, ok := treeSpot(t)
			return at.beside(h.Side.Value, h.Distance.Value), ok
		}
	}
	return spot{}, false
}

// NearestTree is the tree of a site that stands nearest to a position, and how
// far from it; false where no tree has a place.
func NearestTree(s *survey.Survey, origin, at Position) (id string, apart quantity.Length, ok bool) {
	east, north := origin.Offset(at)
	for i := range s.Trees {
		tree, known := treeSpot(&s.Trees[i])
		if !known {
			continue
		}
		d := quantity.Length(math.Hypot(float64(east)-tree.east, float64(north)-tree.north))
		if !ok || d < apart {
			id, apart, ok = s.Trees[i].ID, d, true
		}
	}
	return id, apart, ok
}
