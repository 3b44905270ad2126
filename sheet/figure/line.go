package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/quantity"
	"boughline/survey"
)

// Line draws a line between two anchors in its upright plane: the stems or
// limbs that hold it, the line empty and with the people at rest in its middle,
// and the pull at each end in words. The error says that there is nothing to
// draw: a line that cannot be worked out, or one that hangs straight down.
func Line(l assess.Line) (*draw.Scene, error) {
	if l.Shape == nil || len(l.Shape.Loaded) < 2 || len(l.Ends) != 2 {
		return nil, fmt.Errorf("line %q: there is no line between two anchors to draw", l.ID)
	}
	f := &lineDrawing{l: l, view: view{right: quantity.Vec3{X: 1}, up: quantity.Vec3{Z: 1}}}
	perMetre, tall := f.extent().fit(innerWidth-8, 70)
	f.page = newPage("line "+l.ID, fmt.Sprintf("%s: %s, seen from its side", l.ID, wording.LineKind(l.Kind)), tall+26)
	box := f.area
	box.Min.Y += 14
	box.Max.Y -= 12
	f.view = f.view.placed(f.extent(), perMetre, box)
	f.land()
	f.holds()
	f.ropes()
	f.fixedItem(draw.ScaleBar(draw.Point{X: f.area.Min.X, Y: f.area.Max.Y - 2}, perMetre, innerWidth))
	for _, e := range l.Ends {
		f.rows = append(f.rows, row{words: wording.LinePull(e)})
	}
	return f.finish(f.says()), nil
}

type lineDrawing struct {
	*page
	view
	l assess.Line
}

// stemStub is how far a stem is drawn above its anchor, m.
const stemStub = 0.7

func (f *lineDrawing) floor() [][2]float64 {
	span := float64(f.l.Shape.Span)
	if len(f.l.Shape.Ground) < 2 {
		return [][2]float64{{-0.8, 0}, {span + 0.8, 0}}
	}
	ground := f.l.Shape.Ground
	first, last := ground[0], ground[len(ground)-1]
	list := [][2]float64{{math.Min(-0.8, first[0]), first[1]}}
	list = append(list, ground...)
	return append(list, [2]float64{math.Max(span+0.8, last[0]), last[1]})
}

func (f *lineDrawing) extent() extent {
	var points []quantity.Vec3
	for _, list := range [][][2]float64{f.floor(), f.l.Shape.Loaded, f.l.Shape.Empty} {
		for _, p := range list {
			points = append(points, spot(p[0], p[1]))
		}
	}
	for i := range f.l.Ends {
		points = append(points, spot(f.end(i)[0], f.end(i)[1]+stemStub))
	}
	return f.extentOf(points)
}

// end is where the line is made fast.
func (f *lineDrawing) end(i int) [2]float64 {
	if i == 0 {
		return f.l.Shape.Loaded[0]
	}
	return f.l.Shape.Loaded[len(f.l.Shape.Loaded)-1]
}

func (f *lineDrawing) over(p [2]float64) draw.Point { return f.at(spot(p[0], p[1])) }

func (f *lineDrawing) land() {
	var surface []draw.Point
	for _, p := range f.floor() {
		surface = append(surface, f.over(p))
	}
	if len(f.l.Shape.Ground) == 0 {
		f.line(draw.Dashed, surface...)
		f.label(surface[0].Add(8, -2), "ground not surveyed, drawn level")
		return
	}
	f.earth(surface)
}

// holds draws a stem up to above its anchor, or the round of a limb.
func (f *lineDrawing) holds() {
	floor := f.floor()
	for i, e := range f.l.Ends {
		at, thick := f.end(i), float64(e.Thick)
		if e.Member != "stem" {
			radius := math.Max(1.4, thick/2*f.perMetre)
			f.add(&draw.Circle{Centre: f.over(at), Radius: radius, Pen: draw.Bold, Fill: draw.Slant})
			continue
		}
		outer, foot := at[0]-thick, floor[0][1]
		if i == 1 {
			outer, foot = at[0]+thick, floor[len(floor)-1][1]
		}
		top := at[1] + stemStub
		f.add(&draw.Polygon{Points: []draw.Point{
			f.over([2]float64{outer, foot}), f.over([2]float64{outer, top}), f.over([2]float64{at[0], top}), f.over([2]float64{at[0], foot}),
		}, Pen: draw.Bold, Fill: draw.Upright})
		left, right := math.Min(outer, at[0]), math.Max(outer, at[0])
		f.placer.Take(draw.Box{Min: f.over([2]float64{left, top}), Max: f.over([2]float64{right, foot})}.Grown(0.6))
	}
}

func (f *lineDrawing) ropes() {
	s := f.l.Shape
	all := func(list [][2]float64) []draw.Point {
		var points []draw.Point
		for _, p := range list {
			points = append(points, f.over(p))
		}
		return points
	}
	if len(s.Empty) > 0 {
		f.line(draw.Dashed, all(s.Empty)...)
		f.rows = append(f.rows, row{mark: stroke(draw.Dashed), words: "the line empty"})
	}
	f.wall(draw.Accent, all(s.Loaded)...)
	f.rows = append(f.rows, row{mark: stroke(draw.Accent), words: "with the people at rest in the middle"})
	middle := s.Loaded[len(s.Loaded)/2]
	chord := s.Loaded[0][1] + float64(s.Rise)*middle[0]/float64(s.Span)
	f.dimension(f.over([2]float64{middle[0], chord}), f.over(middle), "sag "+metres(s.Sag))
	f.label(f.over([2]float64{float64(s.Span) / 2, math.Max(s.Loaded[0][1], f.end(1)[1]) + 0.2}), "span "+metres(s.Span))
	for i, e := range f.l.Ends {
		f.label(f.over(f.end(i)), wording.Quantity(float64(e.AtRest), "N"))
	}
}

func (f *lineDrawing) says() []string {
	says := []string{wording.LineTitle(f.l) + ": " + wording.LineShape(f.l) + "."}
	for _, e := range f.l.Ends {
		says = append(says, fmt.Sprintf("Anchor %s above the ground. %s.", metres(e.Height), wording.LinePull(e)))
	}
	if len(f.l.Shape.Ground) == 0 {
		says = append(says, "The ground was not surveyed and is drawn level.")
	}
	if f.l.Kind == survey.HammockLine {
		says = append(says, "The body is drawn straight between its straps.")
	}
	return append(says, wording.Outcome(f.l.Outcome))
}
