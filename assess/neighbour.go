package assess

import (
	"math"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// neighbour is another tree of the site, moved into the frame of the tree that
// is judged.
type neighbour struct {
	*tree
	offset quantity.Vec3
}

// neighbours lists the other trees whose place on the site is known and that
// stand near enough to fall where the people of a hang may be. Where the place of either is
// not known, the look at the surroundings stands for it.
func (t *tree) neighbours() []neighbour {
	here, ok := placeOf(t.s)
	if !ok {
		return nil
	}
	var list []neighbour
	for _, other := range t.site {
		there, placed := placeOf(other.s)
		offset := there.Sub(here)
		if placed && other.s != t.s && math.Hypot(offset.X, offset.Y) <= float64(other.tall)+aroundHang {
			list = append(list, neighbour{other, offset})
		}
	}
	return list
}

// aroundHang is how far from the stem the people of a hang may be, m: a limb, a
// let-go flight, and the way in near by.
const aroundHang = 60

func placeOf(s *survey.Tree) (at quantity.Vec3, known bool) {
	if s.East == nil || s.North == nil {
		return at, false
	}
	return quantity.Vec3{X: float64(s.East.Value), Y: float64(s.North.Value)}, true
}

// neighbourReasons judges the findings on other trees that could come down
// where the people of this hang are. What stays within its own ground is no
// business of this hang.
func (r *rig) neighbourReasons(people space.People) []Reason {
	var list []Reason
	for _, n := range r.neighbours() {
		there := people.Moved(n.offset.Scale(-1))
		for i := range n.s.Findings {
			f := &n.s.Findings[i]
			sign, ok := r.k.Sign(f.Sign)
			if !ok || !n.reaches(f, sign, there) {
				continue
			}
			reason := n.signReason(f, sign, signs.Placement{AbovePeople: true}, element(n.path+".findings", i))
			if reason.Remark {
				continue
			}
			reason.OnTree = nameOf(n.s)
			list = append(list, reason)
		}
	}
	return list
}

// reaches reports whether what a finding on a neighbour may bring down reaches
// people: the whole tree for a sign of the whole tree, the part beyond the
// finding otherwise.
func (n neighbour) reaches(f *survey.Finding, sign signs.Sign, people space.People) bool {
	if sign.Scope == signs.Place {
		return false
	}
	if sign.Scope == signs.Tree {
		return people.Near(quantity.Vec3{}, n.tall)
	}
	if s, ok := n.shapes[f.Member]; ok {
		return n.overhangs(s, findingFrom(n.k, f), people)
	}
	return n.spotAbove(f, people)
}

// height is that of the tree, or the highest of its surveyed points.
func (t *tree) height() quantity.Length {
	highest := 0.0
	for _, s := range t.order {
		for _, p := range s.points {
			highest = math.Max(highest, p.Z)
		}
	}
	if t.s.Height != nil {
		return max(quantity.Length(highest), resolve(t.k, *t.s.Height).High())
	}
	return quantity.Length(highest)
}

func nameOf(s *survey.Tree) string {
	if s.Name != "" {
		return s.Name
	}
	return s.ID
}
