package figure

import (
	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
	"boughline/survey"
)

// ground draws what people need of it: kept clear, waiting, the way in.
func (p *page) ground(v view, j Spot) {
	if !j.Placed {
		return
	}
	people, sheet := j.People, p.area
	sheet.Max.Y -= 7 // the scale bar
	clear := v.all(j.onSite(people.Area))
	if p.crowded {
		p.add(&draw.Polygon{Points: clear, Pen: draw.Dotted})
		p.things(v, j.At, j.Obstacles)
		return
	}
	items := []draw.Item{&draw.Polygon{Points: clear, Pen: draw.Dotted, Fill: draw.Wide}}
	for _, w := range people.Ways {
		way := v.all(j.onSite([]quantity.Vec3{w.From, w.To}))
		if from, to, within := sheet.Clip(way[0], way[1]); within { // the way in may come from far
			items = append(items, &draw.Line{Points: []draw.Point{from, to}, Pen: draw.Dashed})
		}
	}
	for _, w := range people.Places {
		items = append(items, &draw.Circle{Centre: v.at(w.Centre.Add(j.At)), Radius: float64(w.Radius) * v.perMetre, Pen: draw.Fine, Fill: draw.Upright})
	}
	p.add(&draw.Group{Key: "clear " + j.ID, Title: clearSentence(j), Items: items})
	p.things(v, j.At, j.Obstacles)
}

// things draws what stands or lies on the ground by its kind: solid with
// crosses, water with level lines, a path dashed.
func (p *page) things(v view, at quantity.Vec3, things []assess.ObstacleFigure) {
	for _, o := range things {
		corners := v.all(moved(o.Corners, at))
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

// outlineOf is what a thing on the ground takes up.
func outlineOf(o assess.ObstacleFigure) []quantity.Vec3 {
	if len(o.Corners) == 1 {
		return disc(o.Corners[0], max(o.Radius, 0.2))
	}
	return o.Corners
}
