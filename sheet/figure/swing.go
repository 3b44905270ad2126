package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/draw"
	"boughline/engine/space"
	"boughline/quantity"
)

// Swing draws a hang in the upright plane of its line: the slope, the path of
// the seat at the amplitude asked for and at that of space, the clearances,
// the let-go flights with their landings, the greatest height of fall and the
// ground to be kept clear. The error says why space cannot be worked out.
func Swing(j Judged) (*draw.Scene, error) {
	s, err := j.Figure.Space()
	if err != nil {
		return nil, err
	}
	f := newProfile(s)
	perMetre, tall := f.extent().fit(innerWidth-14, 105)
	title := fmt.Sprintf("%s: the swing over the ground, seen towards %s", j.Assessed.ID, compass(j.Figure.SwingAzimuth()-90*quantity.Degree))
	f.page = newPage("swing "+j.Assessed.ID, title, tall+31)
	box := f.area
	box.Min.Y += 8
	box.Max.Y -= 20
	f.view = f.view.placed(f.extent(), perMetre, box)
	f.land()
	f.flights()
	f.keptClear()
	f.sweep()
	f.dimensions()
	f.rows = append(f.rows,
		row{mark: stroke(draw.Dotted), words: "let-go flights that land farthest"},
		row{mark: stroke(draw.Dashed), words: fmt.Sprintf("path of the seat up to %s, at which space is judged", degrees(s.Full))})
	f.fixedItem(draw.ScaleBar(draw.Point{X: f.area.Min.X, Y: f.area.Max.Y - 2}, perMetre, innerWidth))
	return f.finish(swingSays(j, s)), nil
}

// profile is the drawing of a swing in its plane.
type profile struct {
	*page
	view
	s      assess.SpaceFigure
	ground space.Ground
	far    float64 // how far each way the ground is drawn, m
}

func newProfile(s assess.SpaceFigure) *profile {
	f := &profile{s: s, ground: space.Ground{Stations: s.Ground}}
	if len(s.Ground) == 0 {
		f.ground.Stations = []space.Point{{}}
	}
	f.view = view{right: quantity.Vec3{X: 1}, up: quantity.Vec3{Z: 1}}
	f.far = math.Max(float64(max(s.ClearAhead, s.ClearBehind)), float64(s.Line)*s.Full.Sin()) + 0.5
	return f
}

// spot is a place in the plane of the swing.
func spot(along, height float64) quantity.Vec3 { return quantity.Vec3{X: along, Z: height} }

func (f *profile) top() float64 { return float64(f.ground.At(0) + f.s.Hang) }

func (f *profile) over(along, height float64) draw.Point { return f.at(spot(along, height)) }

func (f *profile) floor(along float64) float64 { return float64(f.ground.At(quantity.Length(along))) }

func (f *profile) extent() extent {
	points := []quantity.Vec3{spot(0, f.top()), spot(0, f.top()-float64(f.s.Line+f.s.FootReach))}
	for _, list := range [...][]space.Point{f.surface(), f.s.Ahead.Path, f.s.Behind.Path} {
		for _, p := range list {
			points = append(points, spot(float64(p.Along), float64(p.Height)))
		}
	}
	for _, n := range [...]space.Nearest{f.s.Seat, f.s.Foot} {
		points = append(points, spot(float64(n.Along), f.floor(float64(n.Along))+float64(n.Clearance)))
	}
	return f.extentOf(points)
}

// surface is the ground as far as it is drawn.
func (f *profile) surface() []space.Point {
	edge := func(x float64) space.Point {
		return space.Point{Along: quantity.Length(x), Height: quantity.Length(f.floor(x))}
	}
	list := []space.Point{edge(-f.far)}
	for _, p := range f.ground.Stations {
		if math.Abs(float64(p.Along)) < f.far {
			list = append(list, p)
		}
	}
	return append(list, edge(f.far))
}

// land draws the ground and the limb.
func (f *profile) land() {
	var surface []draw.Point
	for _, p := range f.surface() {
		surface = append(surface, f.over(float64(p.Along), float64(p.Height)))
	}
	if len(f.s.Ground) == 0 {
		f.line(draw.Dashed, surface...)
		f.label(f.over(-f.far*0.7, 0), "ground not surveyed, drawn level")
	} else {
		f.earth(surface)
	}
	const limb = 2.2
	centre := f.over(0, f.top()).Add(0, -limb)
	f.add(&draw.Circle{Centre: centre, Radius: limb, Pen: draw.Bold, Fill: draw.Slant})
	f.placer.Take(draw.Box{Min: centre.Add(-limb, -limb), Max: centre.Add(limb, limb)}.Grown(0.6))
}

// sweep draws the line, the seat and its paths.
func (f *profile) sweep() {
	line, top := float64(f.s.Line), f.top()
	hang, rest := f.over(0, top), f.over(0, top-line)
	f.wall(draw.Accent, hang, rest)
	f.wall(draw.Fine, rest, f.over(0, top-line-float64(f.s.FootReach)))
	f.add(&draw.Line{Points: []draw.Point{rest.Add(-2, 0), rest.Add(2, 0)}, Pen: draw.Bold})
	f.arcOf(f.s.Full, draw.Dashed)
	if f.s.Declared < f.s.Full {
		f.arcOf(f.s.Declared, draw.Bold)
	}
	for _, side := range [...]float64{-1, 1} {
		end := f.over(side*line*f.s.Full.Sin(), top-line*f.s.Full.Cos())
		f.line(draw.Hair, hang, end)
		f.add(&draw.Circle{Centre: end, Radius: 0.9, Pen: draw.Fine, Fill: draw.Paper})
	}
	f.label(f.over(line*f.s.Full.Sin(), top-line*f.s.Full.Cos()), degrees(f.s.Full))
	if f.s.Declared < f.s.Full {
		f.label(f.over(line*f.s.Declared.Sin(), top-line*f.s.Declared.Cos()), degrees(f.s.Declared)+" asked for")
	}
	f.label(f.over(0, top-line/2), "line "+metres(f.s.Line))
}

// arcOf draws the path of the seat up to an amplitude on both sides.
func (f *profile) arcOf(a quantity.Angle, pen draw.Pen) {
	f.add(&draw.Arc{Centre: f.over(0, f.top()), Radius: float64(f.s.Line) * f.perMetre, From: math.Pi/2 - float64(a), To: math.Pi/2 + float64(a), Pen: pen})
	const steps = 8
	var points []draw.Point
	for i := -steps; i <= steps; i++ {
		sin, cos := math.Sincos(float64(a) * float64(i) / steps)
		points = append(points, f.over(float64(f.s.Line)*sin, f.top()-float64(f.s.Line)*cos))
	}
	f.placer.Forbid(points...)
}

func (f *profile) flights() {
	for _, flight := range [...]assess.Flight{f.s.Ahead, f.s.Behind} {
		var points []draw.Point
		for _, p := range flight.Path {
			points = append(points, f.over(float64(p.Along), float64(p.Height)))
		}
		f.line(draw.Dotted, points...)
		last := points[len(points)-1]
		f.add(draw.Arrow(points[len(points)-3], last, 2.6))
	}
}

// dimensions draws the least clearances and the greatest height of fall.
func (f *profile) dimensions() {
	clear := func(x float64, low, high quantity.Length, words string) {
		from, to := f.over(x, float64(low)), f.over(x, float64(high))
		f.placer.Forbid(from, to)
		f.dimension(from, to, words)
	}
	seat, foot := f.s.Seat, f.s.Foot
	lift := func(n space.Nearest) (x float64, low, high quantity.Length) {
		ground := f.ground.At(n.Along)
		return float64(n.Along), ground, ground + n.Clearance
	}
	x, low, high := lift(seat)
	clear(x-0.9*4/f.perMetre, low, high, "seat "+roomWords(seat.Clearance))
	if f.s.FootReach > 0 {
		x, low, high = lift(foot)
		clear(x+0.9*4/f.perMetre, low, high, "feet "+roomWords(foot.Clearance))
	}
	at := f.s.FallAt
	ground := f.ground.At(at.Along)
	clear(float64(at.Along), ground, ground+at.Height, "fall "+metres(f.s.Fall))
	name := "limb " + metres(f.s.Hang) + " up"
	if !f.s.Measured {
		name += ", not measured"
	}
	f.label(f.over(0, f.top()).Add(0, -2), name)
}

// keptClear draws the ground that is kept clear as dimensions below it.
func (f *profile) keptClear() {
	lowest := math.Inf(-1)
	for _, p := range f.surface() {
		lowest = math.Max(lowest, f.over(float64(p.Along), float64(p.Height)).Y)
	}
	y := lowest + 5
	middle := draw.Point{X: f.over(0, 0).X, Y: y}
	for _, side := range [...]struct {
		end   float64
		lands quantity.Length
	}{{-float64(f.s.ClearBehind), f.s.LandsBehind}, {float64(f.s.ClearAhead), f.s.LandsAhead}} {
		edge := draw.Point{X: f.over(side.end, 0).X, Y: y}
		f.placer.Forbid(middle, edge)
		f.add(draw.Dimension(middle, edge)...)
		outer := draw.Point{X: middle.X + 0.68*(edge.X-middle.X), Y: y} // leaves room for the clearances in the middle
		f.label(outer, fmt.Sprintf("clear %s; let go, lands %s out", metres(quantity.Length(math.Abs(side.end))), metres(side.lands)))
	}
}
