package figure

import (
	"fmt"

	"boughline/assess"
	"boughline/draw"
	"boughline/engine/space"
	"boughline/quantity"
)

// Feature is something else on the ground of a site: a path, water, a fence.
type Feature struct {
	Name   string
	Kind   FeatureKind
	Points []quantity.Vec3 // in the frame of the site
}

// FeatureKind says how a feature is drawn.
type FeatureKind int

// The kinds of feature.
const (
	Path  FeatureKind = iota // a dashed line
	Water                    // level hatching, or a bold dashed line for a stream
	Fence                    // a line with posts
)

// Site draws a site from above with north up: its trees with their crowns, the
// swing lines, the ground to be kept clear, where people wait and come in,
// obstacles and features. Trees whose place is not known are listed below.
func Site(name string, trees []assess.TreeFigure, hangs []Judged, features []Feature) *draw.Scene {
	v := fromAbove()
	e := v.extentOf(siteExtent(trees, hangs, features))
	perMetre, tall := e.fit(innerWidth-8, 150)
	p := newPage("site "+name, name+" from above", tall+24)
	box := p.area
	box.Min.Y += 4
	box.Max.Y -= 10
	v = v.placed(e, perMetre, box)
	for _, f := range features {
		p.feature(v, f)
	}
	for _, j := range hangs {
		p.ground(v, j)
	}
	for _, t := range trees {
		p.standing(v, t)
	}
	for _, j := range hangs {
		p.swingLine(v, j)
	}
	p.compassAndScale(perMetre)
	p.siteKey(len(hangs) > 0)
	return p.finish(siteSays(trees, hangs, features))
}

// siteExtent lists what has to be seen.
func siteExtent(trees []assess.TreeFigure, hangs []Judged, features []Feature) []quantity.Vec3 {
	points := []quantity.Vec3{{}}
	if len(trees) > 0 && trees[0].Placed {
		points[0] = trees[0].At
	}
	for _, t := range trees {
		if t.Placed {
			points = append(points, disc(t.At, max(t.CrownWidth/2, 1))...)
		}
	}
	for _, j := range hangs {
		if !j.Figure.Tree.Placed {
			continue
		}
		people := j.Figure.People()
		points = append(points, j.onSite(band(people))...)
		for _, w := range people.Places {
			points = append(points, j.onSite(disc(w.Centre, w.Radius))...)
		}
	}
	for _, f := range features {
		points = append(points, f.Points...)
	}
	return points
}

// onSite moves points from the frame of the hang's tree to that of the site.
func (j Judged) onSite(points []quantity.Vec3) []quantity.Vec3 {
	list := make([]quantity.Vec3, len(points))
	for i, p := range points {
		list[i] = p.Add(j.Figure.Tree.At)
		list[i].Z = 0
	}
	return list
}

// band is the ground to be kept clear along a swing line as a rectangle.
func band(p space.People) []quantity.Vec3 {
	ahead, side := quantity.Heading(p.SwingAzimuth, 0), quantity.Heading(p.SwingAzimuth+90*quantity.Degree, 0)
	corner := func(along, across quantity.Length) quantity.Vec3 {
		return p.Hang.Add(ahead.Scale(float64(along))).Add(side.Scale(float64(across)))
	}
	w := p.HalfWidth
	return []quantity.Vec3{corner(p.Ahead, w), corner(p.Ahead, -w), corner(-p.Behind, -w), corner(-p.Behind, w)}
}

// ground draws what people need of it: kept clear, waiting, the way in.
func (p *page) ground(v view, j Judged) {
	if !j.Figure.Tree.Placed {
		return
	}
	people := j.Figure.People()
	clear := v.all(j.onSite(band(people)))
	items := []draw.Item{&draw.Polygon{Points: clear, Pen: draw.Dotted, Fill: draw.Wide}}
	for _, w := range people.Ways {
		items = append(items, &draw.Line{Points: v.all(j.onSite([]quantity.Vec3{w.From, w.To})), Pen: draw.Dashed})
	}
	for _, w := range people.Places {
		items = append(items, &draw.Circle{Centre: v.at(w.Centre.Add(j.Figure.Tree.At)), Radius: float64(w.Radius) * v.perMetre, Pen: draw.Fine, Fill: draw.Level})
	}
	for _, o := range j.Figure.Survey().Obstacles {
		at := j.Figure.Tree.At.Add(quantity.Heading(o.Azimuth.Value, 0).Scale(float64(o.Distance.Value)))
		items = append(items, &draw.Circle{Centre: v.at(at), Radius: max(0.6, float64(o.Radius.Value)*v.perMetre), Pen: draw.Bold, Fill: draw.Cross})
		p.label(v.at(at), o.What)
	}
	p.add(&draw.Group{Key: "clear " + j.Assessed.ID, Title: clearSentence(j), Items: items})
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

// feature draws a path, water or a fence.
func (p *page) feature(v view, f Feature) {
	points := v.all(f.Points)
	if len(points) == 0 {
		return
	}
	var items []draw.Item
	switch f.Kind {
	case Path:
		items = append(items, &draw.Line{Points: points, Pen: draw.Dashed})
	case Water:
		items = append(items, &draw.Polygon{Points: points, Pen: draw.Fine, Fill: draw.Level})
	case Fence:
		items = append(items, &draw.Line{Points: points, Pen: draw.Fine})
		for _, post := range points {
			items = append(items, &draw.Line{Points: []draw.Point{post.Add(-1, -1), post.Add(1, 1)}, Pen: draw.Fine}, &draw.Line{Points: []draw.Point{post.Add(-1, 1), post.Add(1, -1)}, Pen: draw.Fine})
		}
	}
	p.add(&draw.Group{Key: "feature " + f.Name, Title: f.Name, Items: items})
	p.placer.Avoid(points...)
	p.label(points[len(points)/2], f.Name)
}

// siteKey explains the hatching and the shapes.
func (p *page) siteKey(hangs bool) {
	if !hangs {
		return
	}
	patch := func(pen draw.Pen, fill draw.Fill) func(draw.Point) []draw.Item {
		return func(c draw.Point) []draw.Item {
			return []draw.Item{&draw.Polygon{Points: square(c, 2.2), Pen: pen, Fill: fill}}
		}
	}
	p.rows = append(p.rows,
		row{mark: patch(draw.Dotted, draw.Wide), words: "kept clear while a swing is in use"},
		row{mark: patch(draw.Fine, draw.Level), words: "where people wait; dashed: the way in"})
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
	p := j.Figure.People()
	return fmt.Sprintf("%s swings towards %s and back: kept clear %s ahead, %s behind, %s to each side.", j.Assessed.ID, compass(p.SwingAzimuth), metres(p.Ahead), metres(p.Behind), metres(p.HalfWidth))
}

func siteSays(trees []assess.TreeFigure, hangs []Judged, features []Feature) []string {
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
	for _, f := range features {
		says = append(says, f.Name+".")
	}
	return says
}
