package figure

import (
	"boughline/assess"
	"boughline/engine/space"
	"boughline/quantity"
)

// Spot is what the plan of a site shows of one hang: little enough to be kept
// for hundreds of them.
type Spot struct {
	ID, Tree, Member string
	Outcome          assess.Outcome
	// At is where the tree stands; Placed is false where that is not known.
	At        quantity.Vec3
	Placed    bool
	Azimuth   quantity.Angle
	Point     quantity.Vec3   // of the hang, in the frame of the tree
	Path      []quantity.Vec3 // of the seat, in the frame of the tree
	People    space.People
	Obstacles []assess.ObstacleFigure
}

// SpotOf takes from a hang what the plan of a site shows of it.
func SpotOf(j Judged) Spot {
	return Spot{
		ID: j.Assessed.ID, Tree: j.Figure.Tree.Survey.ID, Member: j.Assessed.Member, Outcome: j.Assessed.Outcome,
		At: j.Figure.Tree.At, Placed: j.Figure.Tree.Placed, Azimuth: j.Figure.SwingAzimuth(), Point: j.Figure.Point(),
		Path: j.swingPath(j.Figure.Survey().Amplitude.Value), People: j.Figure.People(), Obstacles: j.Figure.Obstacles(),
	}
}

func spotsOf(hangs []Judged) []Spot {
	list := make([]Spot, len(hangs))
	for i, j := range hangs {
		list[i] = SpotOf(j)
	}
	return list
}

// onSite moves points from the frame of the hang's tree to that of the site.
func (s Spot) onSite(points []quantity.Vec3) []quantity.Vec3 { return moved(points, s.At) }

// sentence says what follows for the hang.
func (s Spot) sentence() string { return hangSentence(s.ID, s.Member, s.Outcome) }
