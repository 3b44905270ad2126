package figure

import (
	"math"
	"strconv"

	"boughline/draw"
)

// chart is a pair of axes in a box of the paper.
type chart struct {
	box                  draw.Box
	left, right, low, up float64
}

func (c chart) at(x, y float64) draw.Point {
	return draw.Point{
		X: c.box.Min.X + (x-c.left)/(c.right-c.left)*c.box.Width(),
		Y: c.box.Max.Y - (y-c.low)/(c.up-c.low)*c.box.Height(),
	}
}

// held is at, kept within the box.
func (c chart) held(x, y float64) draw.Point {
	return c.at(math.Min(math.Max(x, c.left), c.right), math.Min(math.Max(y, c.low), c.up))
}

// ticks are round numbers between two ends, about a wanted number of them.
func ticks(low, high float64, wanted int) []float64 {
	step := draw.RoundBelow((high - low) / float64(wanted) * 1.6)
	var list []float64
	for k := math.Ceil(low/step - 1e-9); k*step <= high+1e-9*step; k++ {
		list = append(list, k*step)
	}
	return list
}

// axes draws the axes with round figures and the names of both quantities.
func (p *page) axes(c chart, across, upwards string) {
	p.wall(draw.Fine, c.at(c.left, c.up), c.at(c.left, c.low), c.at(c.right, c.low))
	for _, x := range ticks(c.left, c.right, 6) {
		at := c.at(x, c.low)
		p.add(&draw.Line{Points: []draw.Point{at, at.Add(0, 1.2)}, Pen: draw.Fine})
		p.fixed(&draw.Text{At: at.Add(0, 5), Words: plain(x), Size: draw.LabelSize, Anchor: draw.Middle})
	}
	if upwards != "" {
		for _, y := range ticks(c.low, c.up, 4) {
			at := c.at(c.left, y)
			p.add(&draw.Line{Points: []draw.Point{at, at.Add(-1.2, 0)}, Pen: draw.Fine})
			p.fixed(&draw.Text{At: at.Add(-1.8, 1.3), Words: plain(y), Size: draw.LabelSize, Anchor: draw.End})
		}
		p.fixed(&draw.Text{At: draw.Point{X: p.area.Min.X, Y: c.box.Min.Y - 4.5}, Words: upwards, Size: draw.LabelSize})
	}
	p.fixed(&draw.Text{At: draw.Point{X: c.box.Max.X, Y: c.box.Max.Y + 9.5}, Words: across, Size: draw.LabelSize, Anchor: draw.End})
}

// plain writes a tick without trailing noise.
func plain(x float64) string {
	return strconv.FormatFloat(math.Round(x*1e6)/1e6+0, 'g', 4, 64) // -0 + 0 is 0
}

// curve joins points of a chart.
func (p *page) curve(c chart, pen draw.Pen, points [][2]float64) {
	line := make([]draw.Point, len(points))
	for i, xy := range points {
		line[i] = c.held(xy[0], xy[1])
	}
	p.wall(pen, line...)
}

// under fills the area between a curve and a level.
func (p *page) under(c chart, fill draw.Fill, points [][2]float64) {
	if len(points) == 0 {
		return
	}
	outline := []draw.Point{c.at(points[0][0], c.low)}
	for _, xy := range points {
		outline = append(outline, c.held(xy[0], xy[1]))
	}
	p.add(&draw.Polygon{Points: append(outline, c.at(points[len(points)-1][0], c.low)), Fill: fill})
}
