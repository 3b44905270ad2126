package figure

import (
	"fmt"
	"math"

	"boughline/draw"
)

// ChanceInput is a chance to be drawn, as plain numbers.
type ChanceInput struct {
	Key, Title string
	// Load and Strength are densities over one quantity, points in rising
	// order; either may be empty.
	Load, Strength []DensityPoint
	Quantity       string // what they are densities of, with its unit
	// Beta is the reliability index with the band of what is not known of it,
	// Target the least that is asked.
	Beta, Low, High, Target float64
	Notes                   []string
}

// DensityPoint is a value and how dense the chance lies there; the scale of
// the density does not count.
type DensityPoint struct{ Value, Density float64 }

// Chance draws load and strength as two distributions with what they share
// hatched across, and the reliability index with its band against its limit.
func Chance(in ChanceInput) *draw.Scene {
	tall := 31.0
	densities := len(in.Load) > 1 && len(in.Strength) > 1
	if densities {
		tall += 62
	}
	p := newPage("chance "+in.Key, in.Title, tall)
	p.backed = true
	top := p.area.Min.Y
	if densities {
		p.densities(in, draw.BoxAt(draw.Point{X: p.area.Min.X + 3, Y: top + 6}, innerWidth-8, 40))
		top += 62
	}
	p.index(in, draw.BoxAt(draw.Point{X: p.area.Min.X + 5, Y: top + 12}, innerWidth-12, 8))
	return p.finish(chanceSays(in))
}

func (p *page) densities(in ChanceInput, box draw.Box) {
	c := chart{box: box, left: math.Min(in.Load[0].Value, in.Strength[0].Value),
		right: math.Max(in.Load[len(in.Load)-1].Value, in.Strength[len(in.Strength)-1].Value), up: 1.15}
	load, strength := levelled(in.Load), levelled(in.Strength)
	p.under(c, draw.Slant, load)
	p.under(c, draw.BackSlant, strength)
	p.curve(c, draw.Bold, load)
	p.curve(c, draw.Fine, strength)
	p.axes(c, in.Quantity, "")
	p.label(peakOf(c, load), "load")
	p.label(peakOf(c, strength), "strength")
}

// levelled scales a density to a greatest value of 1.
func levelled(points []DensityPoint) [][2]float64 {
	top := 0.0
	for _, d := range points {
		top = math.Max(top, d.Density)
	}
	list := make([][2]float64, len(points))
	for i, d := range points {
		list[i] = [2]float64{d.Value, d.Density / math.Max(top, math.SmallestNonzeroFloat64)}
	}
	return list
}

func peakOf(c chart, points [][2]float64) draw.Point {
	best := points[0]
	for _, xy := range points {
		if xy[1] > best[1] {
			best = xy
		}
	}
	return c.at(best[0], best[1])
}

// index draws the reliability index on a line from 0, the target as an upright
// bar with what falls short of it hatched.
func (p *page) index(in ChanceInput, box draw.Box) {
	right := math.Ceil(math.Max(in.Target, math.Max(in.Beta, in.High))) + 1
	c := chart{box: box, left: math.Min(0, math.Floor(math.Min(in.Low, in.Beta))), right: right, up: 1}
	p.add(&draw.Polygon{Points: []draw.Point{c.at(c.left, 0), c.at(c.left, 1), c.at(in.Target, 1), c.at(in.Target, 0)}, Fill: draw.Wide})
	p.line(draw.Bold, c.at(in.Target, -0.15), c.at(in.Target, 1.4))
	if in.High > in.Low {
		low, high := c.at(in.Low, 0.5), c.at(in.High, 0.5)
		p.add(draw.Dimension(low, high)...)
		p.placer.Avoid(low, high)
	}
	at := c.at(in.Beta, 0.5)
	p.add(&draw.Polygon{Points: []draw.Point{at.Add(0, -2), at.Add(2, 0), at.Add(0, 2), at.Add(-2, 0)}, Pen: draw.Fine, Fill: draw.Ink})
	p.axes(c, "reliability index over a year", "")
	p.label(c.at(in.Target, 1.4), fmt.Sprintf("at least %.2f", in.Target))
	p.label(at.Add(0, -2), fmt.Sprintf("here %.2f", floorTo(in.Beta, 2)))
}

// floorTo cuts a number to a number of places, never up.
func floorTo(x float64, places int) float64 {
	scale := math.Pow10(places)
	return math.Floor(x*scale+1e-9) / scale
}

func chanceSays(in ChanceInput) []string {
	relation := "which meets it"
	if in.Beta < in.Target {
		relation = "which falls short of it"
	}
	says := []string{fmt.Sprintf("%s: reliability index %.2f, asked at least %.2f, %s.", in.Title, floorTo(in.Beta, 2), in.Target, relation)}
	if in.High > in.Low {
		says = append(says, fmt.Sprintf("Nine times in ten it lies between %.2f and %.2f.", floorTo(in.Low, 2), in.High))
	}
	return append(says, append(in.Notes, "It covers the loads and strengths that are modelled, not defects that nobody saw.")...)
}
