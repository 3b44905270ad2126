package figure

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/quantity"
)

// Site draws a site from above with north up: its trees with their crowns, the
// swing lines, the ground to be kept clear, where people wait and come in,
// fences, water and paths. Trees whose place is not known are listed below.
func Site(name string, trees []assess.TreeFigure, hangs []Judged) *draw.Scene {
	v := fromAbove()
	e := v.extentOf(siteExtent(trees, hangs))
	perMetre, tall := e.fit(innerWidth-8, 150)
	p := newPage("site "+name, name+" from above", tall+24)
	box := p.area
	box.Min.Y += 4
	box.Max.Y -= 10
	v = v.placed(e, perMetre, box)
	for _, j := range hangs {
		p.ground(v, j)
	}
	for _, t := range trees {
		p.things(v, t, t.Obstacles)
	}
	for _, t := range trees {
		p.standing(v, t)
	}
	for _, j := range hangs {
		p.swingLine(v, j)
	}
	p.compassAndScale(perMetre)
	p.siteKey(len(hangs) > 0)
	return p.finish(siteSays(trees, hangs))
}

// siteExtent lists what has to be seen.
func siteExtent(trees []assess.TreeFigure, hangs []Judged) []quantity.Vec3 {
	points := []quantity.Vec3{{}}
	if len(trees) > 0 && trees[0].Placed {
		points[0] = trees[0].At
	}
	for _, t := range trees {
		if t.Placed {
			points = append(points, disc(t.At, max(t.CrownWidth/2, 1))...)
			for _, o := range t.Obstacles {
				points = append(points, moved(outlineOf(o), t.At)...)
			}
		}
	}
	for _, j := range hangs {
		if !j.Figure.Tree.Placed {
			continue
		}
		people := j.Figure.People()
		points = append(points, j.onSite(people.Area)...)
		for _, o := range j.Figure.Obstacles() {
			points = append(points, j.onSite(outlineOf(o))...)
		}
		for _, w := range people.Places {
			points = append(points, j.onSite(disc(w.Centre, w.Radius))...)
		}
	}
	return points
}

// onSite moves points from the frame of the hang's tree to that of the site.
func (j Judged) onSite(points []quantity.Vec3) []quantity.Vec3 {
	return moved(points, j.Figure.Tree.At)
}

func moved(points []quantity.Vec3, by quantity.Vec3) []quantity.Vec3 {
	list := make([]quantity.Vec3, len(points))
	for i, p := range points {
		list[i] = p.Add(by)
		list[i].Z = 0
	}
	return list
}

// standing draws one tree.
func (p *page) standing(v view, t assess.TreeFigure) {
	if !t.Placed {
		p.rows = append(p.rows, row{words: fmt.Sprintf("%s %s: place not known, not drawn", t.Survey.ID, t.Survey.Name), group: draw.Group{Key: "tree " + t.Survey.ID}})
		return
	}
	at := v.at(t.At)
	items := []draw.Item{}
	if t.CrownWidth > 0 {
		items = append(items, &draw.Circle{Centre: at, Radius: float64(t.CrownWidth) / 2 * v.perMetre, Pen: draw.Dotted})
	}
	stem := max(0.9, float64(t.Members[0].Axis[0].Across)/2*v.perMetre)
	items = append(items, &draw.Circle{Centre: at, Radius: stem, Pen: draw.Fine, Fill: draw.Ink})
	p.add(&draw.Group{Key: "tree " + t.Survey.ID, Title: treeSentence(t), Items: items})
	p.placer.Take(draw.Box{Min: at.Add(-stem, -stem), Max: at.Add(stem, stem)})
	p.labels = append(p.labels, label{at: at, words: draw.Fit(t.Survey.ID, draw.LabelSize, true, 24), strong: true})
}

// swingLine draws the line along which a hang swings, with the shape of its
// outcome at the hang point.
func (p *page) swingLine(v view, j Judged) {
	if !j.Figure.Tree.Placed {
		p.rows = append(p.rows, row{mark: mark(j.Assessed.Outcome), words: j.Assessed.ID + ": " + wording.Brief(j.Assessed.Outcome), group: draw.Group{Key: "hang " + j.Assessed.ID}})
		return
	}
	path := v.all(j.onSite(j.swingPath(j.Figure.Survey().Amplitude.Value)))
	p.line(draw.Accent, path...)
	hang := v.at(j.Figure.Point().Add(j.Figure.Tree.At))
	p.add(&draw.Circle{Centre: hang, Radius: 0.8, Fill: draw.Ink})
	p.labels = append(p.labels, label{at: hang, words: draw.Fit(j.Assessed.ID, draw.LabelSize, false, 36), mark: mark(j.Assessed.Outcome),
		group: draw.Group{Key: "hang " + j.Assessed.ID, Title: outcomeSentence(j.Assessed)}})
}
