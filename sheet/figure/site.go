package figure

import (
	"fmt"

	"boughline/assess"
	"boughline/draw"
	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
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

// outlineOf is what a thing on the ground takes up.
func outlineOf(o assess.ObstacleFigure) []quantity.Vec3 {
	if len(o.Corners) == 1 {
		return disc(o.Corners[0], max(o.Radius, 0.2))
	}
	return o.Corners
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

// ground draws what people need of it: kept clear, waiting, the way in.
func (p *page) ground(v view, j Judged) {
	if !j.Figure.Tree.Placed {
		return
	}
	people := j.Figure.People()
	clear := v.all(j.onSite(people.Area))
	items := []draw.Item{&draw.Polygon{Points: clear, Pen: draw.Dotted, Fill: draw.Wide}}
	for _, w := range people.Ways {
		way := v.all(j.onSite([]quantity.Vec3{w.From, w.To}))
		if from, to, within := p.area.Clip(way[0], way[1]); within { // the way in may come from far
			items = append(items, &draw.Line{Points: []draw.Point{from, to}, Pen: draw.Dashed})
		}
	}
	for _, w := range people.Places {
		items = append(items, &draw.Circle{Centre: v.at(w.Centre.Add(j.Figure.Tree.At)), Radius: float64(w.Radius) * v.perMetre, Pen: draw.Fine, Fill: draw.Upright})
	}
	p.add(&draw.Group{Key: "clear " + j.Assessed.ID, Title: clearSentence(j), Items: items})
	p.things(v, j.Figure.Tree, j.Figure.Obstacles())
}

// things draws what stands or lies on the ground by its kind: solid with
// crosses, water with level lines, a path dashed.
func (p *page) things(v view, t assess.TreeFigure, things []assess.ObstacleFigure) {
	if !t.Placed {
		return
	}
	for _, o := range things {
		corners := v.all(moved(o.Corners, t.At))
		fill, pen := draw.Cross, draw.Bold
		switch o.Kind {
		case survey.Water:
			fill, pen = draw.Level, draw.Fine
		case survey.Path:
			fill, pen = draw.NoFill, draw.Dashed
		}
		var item draw.Item = &draw.Line{Points: corners, Pen: pen}
		switch {
		case len(corners) == 1:
			item = &draw.Circle{Centre: corners[0], Radius: max(0.6, float64(o.Radius)*v.perMetre), Pen: pen, Fill: fill}
		case o.Area:
			item = &draw.Polygon{Points: corners, Pen: pen, Fill: fill}
		}
		p.add(&draw.Group{Key: "thing " + o.What, Title: o.What, Items: []draw.Item{item}})
		p.placer.Avoid(corners...)
		p.label(middleOf(corners, o.Area), o.What)
	}
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

// middleOf is where a thing is named: in the middle of an area, at the middle
// corner of a line.
func middleOf(corners []draw.Point, area bool) draw.Point {
	if !area {
		return corners[len(corners)/2]
	}
	var sum draw.Point
	for _, c := range corners {
		sum = sum.Add(c.X/float64(len(corners)), c.Y/float64(len(corners)))
	}
	return sum
}

// swingLine draws the line along which a hang swings, with the shape of its
// outcome at the hang point.
func (p *page) swingLine(v view, j Judged) {
	if !j.Figure.Tree.Placed {
		p.rows = append(p.rows, row{mark: mark(j.Assessed.Outcome), words: j.Assessed.ID + ": " + meaningOfHang(j.Assessed.Outcome), group: draw.Group{Key: "hang " + j.Assessed.ID}})
		return
	}
	path := v.all(j.onSite(j.swingPath(j.Figure.Survey().Amplitude.Value)))
	p.line(draw.Accent, path...)
	hang := v.at(j.Figure.Point().Add(j.Figure.Tree.At))
	p.add(&draw.Circle{Centre: hang, Radius: 0.8, Fill: draw.Ink})
	p.labels = append(p.labels, label{at: hang, words: draw.Fit(j.Assessed.ID, draw.LabelSize, false, 36), mark: mark(j.Assessed.Outcome),
		group: draw.Group{Key: "hang " + j.Assessed.ID, Title: outcomeSentence(j.Assessed)}})
}

// siteKey explains the hatching and the shapes.
func (p *page) siteKey(hangs bool) {
	if !hangs {
		return
	}
	p.rows = append(p.rows,
		row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while a swing is in use"},
		row{mark: patch(draw.Fine, draw.Upright), words: "where people wait; dashed: the way in"})
	for _, o := range assess.Outcomes() {
		p.rows = append(p.rows, row{mark: mark(o), words: meaningOfHang(o)})
	}
}

// meaningOfHang says in a few words what the shape of an outcome stands for.
func meaningOfHang(o assess.Outcome) string {
	switch o {
	case assess.MayHang:
		return "may be put up and load-tested"
	case assess.WithinLimits:
		return "may be put up and load-tested within limits"
	case assess.Unfinished:
		return "not decided yet"
	case assess.AskArborist:
		return "ask a consulting arborist first"
	}
	return "nothing is hung here"
}

func clearSentence(j Judged) string {
	azimuth, area := j.Figure.SwingAzimuth(), j.Figure.People().Area
	ahead, behind := reachAlong(area, j.Figure.Point(), azimuth), reachAlong(area, j.Figure.Point(), azimuth+180*quantity.Degree)
	side := reachAlong(area, j.Figure.Point(), azimuth+90*quantity.Degree)
	return fmt.Sprintf("%s swings towards %s and back: kept clear up to %s ahead, %s behind, %s to each side.", j.Assessed.ID, compass(azimuth), metres(ahead), metres(behind), metres(side))
}

// reachAlong is how far an area reaches from a point in a direction.
func reachAlong(area space.Polygon, from quantity.Vec3, azimuth quantity.Angle) quantity.Length {
	heading, far := quantity.Heading(azimuth, 0), quantity.Length(0)
	for _, corner := range area {
		far = max(far, quantity.Length(corner.Sub(from).Dot(heading)))
	}
	return far
}

func siteSays(trees []assess.TreeFigure, hangs []Judged) []string {
	says := []string{"Seen from above, north up."}
	for _, t := range trees {
		text := treeSentence(t)
		if t.Placed {
			text = fmt.Sprintf("%s At %s east and %s north.", text, metres(quantity.Length(t.At.X)), metres(quantity.Length(t.At.Y)))
		}
		says = append(says, t.Survey.ID+": "+text)
	}
	for _, j := range hangs {
		says = append(says, outcomeSentence(j.Assessed), clearSentence(j))
	}
	for _, t := range trees {
		for _, o := range t.Obstacles {
			says = append(says, fmt.Sprintf("By %s: %s.", t.Survey.ID, o.What))
		}
	}
	for _, j := range hangs {
		for _, o := range j.Figure.Obstacles() {
			says = append(says, fmt.Sprintf("By %s: %s.", j.Assessed.ID, o.What))
		}
	}
	return says
}
