package figure

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
)

// manyTrees is the number of trees from which on a plan names only those for
// which there is room right beside them, and leaves hatching and waiting places
// to the plans of the trees.
const manyTrees = 40

func crowdedSite(trees []assess.TreeFigure) bool {
	placed := 0
	for _, t := range trees {
		if t.Placed {
			placed++
		}
	}
	return placed >= manyTrees
}

// trees draws every tree and every swing, then names them: first those that
// people hang from, then by the width of their crowns.
func (p *page) trees(v view, trees []assess.TreeFigure, hangs []Spot) {
	swings := swingsOf(hangs)
	var placed []assess.TreeFigure
	for _, t := range trees {
		if t.Placed {
			placed = append(placed, t)
		} else {
			p.unplaced(t, swings[t.Survey.ID])
		}
	}
	slices.SortStableFunc(placed, func(a, b assess.TreeFigure) int {
		return cmp.Or(cmp.Compare(min(1, len(swings[b.Survey.ID])), min(1, len(swings[a.Survey.ID]))), cmp.Compare(b.CrownWidth, a.CrownWidth))
	})
	reach := reaches(v, placed)
	for i, t := range placed {
		p.standing(v, t, swings[t.Survey.ID], reach[i])
	}
	for _, t := range placed {
		p.swingLines(v, swings[t.Survey.ID])
	}
}

// swingsOf gathers hangs by their trees.
func swingsOf(hangs []Spot) map[string][]Spot {
	of := map[string][]Spot{}
	for _, j := range hangs {
		of[j.Tree] = append(of[j.Tree], j)
	}
	return of
}

// reaches is half the room that a finger has for each tree: as far as half way
// to the nearest other one.
func reaches(v view, trees []assess.TreeFigure) []float64 {
	list := make([]float64, len(trees))
	for i := range trees {
		list[i] = fingerSize / 2
		for j := range trees {
			if a, b := v.at(trees[i].At), v.at(trees[j].At); i != j {
				list[i] = math.Min(list[i], math.Max(math.Abs(a.X-b.X), math.Abs(a.Y-b.Y))/2)
			}
		}
	}
	return list
}

// unplaced lists a tree whose place is not known, with its hangs.
func (p *page) unplaced(t assess.TreeFigure, swings []Spot) {
	p.rows = append(p.rows, row{words: siteName(t) + ": place not known, not drawn", group: draw.Group{Key: "tree " + t.Survey.ID, Title: siteTitle(t, swings)}})
	for _, j := range swings {
		p.rows = append(p.rows, row{mark: mark(j.Outcome), words: j.ID + ": " + wording.Brief(j.Outcome), group: hangGroup(j)})
	}
}

// siteName is how a tree is called among others.
func siteName(t assess.TreeFigure) string {
	if t.Survey.Name == "" {
		return t.Survey.ID
	}
	return t.Survey.ID + " " + t.Survey.Name
}

// siteTitle says which tree it is and what follows for its hangs.
func siteTitle(t assess.TreeFigure, swings []Spot) string {
	text := fmt.Sprintf("%s, %s", siteName(t), t.Survey.Species)
	for _, j := range swings {
		text += fmt.Sprintf("; %s: %s", j.ID, wording.Brief(j.Outcome))
	}
	return text
}

func hangGroup(j Spot) draw.Group {
	return draw.Group{Key: "hang " + j.ID, Title: j.sentence()}
}

// standing draws one tree with its crown, its stem and, among many, the shapes
// of its outcomes.
func (p *page) standing(v view, t assess.TreeFigure, swings []Spot, reach float64) {
	at := v.at(t.At)
	group := draw.Group{Key: "tree " + t.Survey.ID, Title: siteTitle(t, swings)}
	if t.CrownWidth > 0 {
		group.Items = append(group.Items, &draw.Circle{Centre: at, Radius: float64(t.CrownWidth) / 2 * v.perMetre, Pen: draw.Dotted})
	}
	stem := max(0.9, float64(t.Members[0].Axis[0].Across)/2*v.perMetre)
	group.Items = append(group.Items, &draw.Circle{Centre: at, Radius: stem, Pen: draw.Fine, Fill: draw.Ink})
	taken := draw.Box{Min: at.Add(-stem, -stem), Max: at.Add(stem, stem)}
	if p.crowded {
		for i, j := range swings {
			group.Items = append(group.Items, mark(j.Outcome)(at.Add(markSize*float64(i), 0))...)
			taken.Min, taken.Max = at.Add(-markSize/2, -markSize/2), at.Add(markSize*(float64(i)+0.5), markSize/2)
		}
	}
	reach = max(reach, stem)
	group.Touch = draw.Box{Min: at.Add(-reach, -reach), Max: at.Add(reach, reach)}
	p.add(&group)
	p.placer.Take(taken)
	p.nameTree(at, t, group.Title)
}

// nameTree asks for room for the name of a tree, or, among many, of its number.
func (p *page) nameTree(at draw.Point, t assess.TreeFigure, title string) {
	l := label{at: at, words: draw.Fit(siteName(t), draw.LabelSize, true, 40), strong: true, least: fingerSize, group: draw.Group{Key: nameOfKey + "tree " + t.Survey.ID, Title: title}}
	if p.crowded {
		l.words, l.least = draw.Fit(t.Survey.ID, draw.LabelSize, true, 16), 0
	}
	p.labels = append(p.labels, l)
}

// swingLines draws the lines along which hangs swing, among few trees with
// their names and the shapes of their outcomes.
func (p *page) swingLines(v view, swings []Spot) {
	for _, j := range swings {
		p.line(draw.Accent, v.all(j.onSite(j.Path))...)
		if p.crowded {
			continue
		}
		hang := v.at(j.Point.Add(j.At))
		p.add(&draw.Circle{Centre: hang, Radius: 0.8, Fill: draw.Ink})
		p.labels = append(p.labels, label{at: hang, words: draw.Fit(j.ID, draw.LabelSize, false, 36), mark: mark(j.Outcome), least: fingerSize, group: hangGroup(j)})
	}
}
