package hangsearch

import (
	"cmp"
	"slices"

	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// compare puts the better place first: by what follows for its best hang, then
// by the aim; those without a hang last, the nearest miss first.
func (p Place) compare(other Place, aim Aim) int {
	a, b := p.Best, other.Best
	switch {
	case a == nil && b == nil:
		return cmp.Compare(other.Miss.Bind.Margin, p.Miss.Bind.Margin)
	case a == nil:
		return 1
	case b == nil:
		return -1
	}
	return cmp.Or(cmp.Compare(a.Outcome, b.Outcome), cmp.Compare(b.by(aim), a.by(aim)), cmp.Compare(b.Least.Margin, a.Least.Margin))
}

// by is the value of a hang by an aim, the more the better.
func (f *Found) by(aim Aim) float64 {
	switch aim {
	case LowestFall:
		return -float64(f.Fall)
	case MostInHand:
		return f.Least.Margin
	}
	return float64(f.Hang.Line.Value)
}

func (t *Tree) rank(aim Aim) {
	slices.SortStableFunc(t.Places, func(a, b Place) int { return a.compare(b, aim) })
}

// rank puts the trees in order by their best places.
func (r *Result) rank(aim Aim) {
	slices.SortStableFunc(r.Trees, func(a, b Tree) int {
		switch {
		case len(a.Places) == 0 || len(b.Places) == 0:
			return cmp.Compare(len(b.Places), len(a.Places))
		}
		return a.Places[0].compare(b.Places[0], aim)
	})
}

// ground is what the best hang of a tree keeps clear, on the site.
type ground struct {
	area   space.Polygon
	placed bool // the place of the tree on the site is known
}

func groundOf(t *survey.Tree, best *Place) ground {
	g := ground{placed: t.East != nil && t.North != nil}
	if !g.placed {
		return g
	}
	foot := quantity.Vec3{X: float64(t.East.Value), Y: float64(t.North.Value)}
	for _, corner := range best.Best.area {
		g.area = append(g.area, corner.Add(foot))
	}
	return g
}

// findOverlaps names, tree by tree from the best on, those before it that need
// the same ground.
func (r *Result) findOverlaps(areas map[string]ground) {
	for i := range r.Trees {
		here, ok := areas[r.Trees[i].ID]
		if !ok || !here.placed {
			continue
		}
		for _, before := range r.Trees[:i] {
			there, ok := areas[before.ID]
			if ok && there.placed && here.area.Apart(there.area, true) == 0 {
				r.Trees[i].Overlaps = append(r.Trees[i].Overlaps, before.ID)
			}
		}
	}
}
