package figure

import (
	"math"

	"boughline/draw"
	"boughline/quantity"
)

// view looks at the site from one side: parallel rays, true to scale in the
// plane of the paper.
type view struct {
	right, up quantity.Vec3 // unit vectors of the site along the paper
	perMetre  float64       // mm of paper
	origin    draw.Point    // where the origin of the site lies
}

// from looks level along an azimuth.
func lookingAlong(azimuth quantity.Angle) view {
	return view{right: quantity.Heading(azimuth+90*quantity.Degree, 0), up: quantity.Vec3{Z: 1}}
}

// fromAbove looks down with north up.
func fromAbove() view { return view{right: quantity.Vec3{X: 1}, up: quantity.Vec3{Y: 1}} }

func (v view) at(p quantity.Vec3) draw.Point {
	return v.origin.Add(p.Dot(v.right)*v.perMetre, -p.Dot(v.up)*v.perMetre)
}

func (v view) all(points []quantity.Vec3) []draw.Point {
	list := make([]draw.Point, len(points))
	for i, p := range points {
		list[i] = v.at(p)
	}
	return list
}

// extent is what a view has to show.
type extent struct{ low, high draw.Point }

// extentOf returns the extent of points in metres, Y downwards.
func (v view) extentOf(points []quantity.Vec3) extent {
	v.perMetre, v.origin = 1, draw.Point{}
	e := extent{draw.Point{X: math.Inf(1), Y: math.Inf(1)}, draw.Point{X: math.Inf(-1), Y: math.Inf(-1)}}
	for _, p := range v.all(points) {
		e.low = draw.Point{X: math.Min(e.low.X, p.X), Y: math.Min(e.low.Y, p.Y)}
		e.high = draw.Point{X: math.Max(e.high.X, p.X), Y: math.Max(e.high.Y, p.Y)}
	}
	return e
}

// leastShown keeps a drawing of a few twigs from being blown up beyond reason, m,
// and leastTall leaves room for words in a flat one, mm.
const (
	leastShown = 2.0
	leastTall  = 20.0
)

// fit returns the scale at which an extent fits an area of the paper, and the
// height that it takes there.
func (e extent) fit(width, height float64) (perMetre, tall float64) {
	perMetre = math.Min(width/math.Max(leastShown, e.high.X-e.low.X), height/math.Max(leastShown, e.high.Y-e.low.Y))
	return perMetre, math.Max(leastTall, (e.high.Y-e.low.Y)*perMetre)
}

// placed puts the view in the middle of a box.
func (v view) placed(e extent, perMetre float64, box draw.Box) view {
	centre := box.Centre()
	v.perMetre = perMetre
	v.origin = centre.Add(-(e.low.X+e.high.X)/2*perMetre, -(e.low.Y+e.high.Y)/2*perMetre)
	return v
}
