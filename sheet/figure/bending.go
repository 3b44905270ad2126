package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
)

// Bending draws the bending moment and the fibre stress along the load path
// from the face of the stem to the hang point, the stress against what the
// wood bears. It is the same arithmetic as the checks of limb and union.
func Bending(j Judged) *draw.Scene {
	stations := outwards(j.Figure.Bending())
	end := math.Max(0.25, stations[len(stations)-1].x) // a hang at the very foot has one section
	p := newPage("bending "+j.Assessed.ID, j.Assessed.ID+": bending along the limb against its strength", 120)
	p.backed = true
	left, width := p.area.Min.X+13, innerWidth-17
	moment := chart{draw.BoxAt(draw.Point{X: left, Y: p.area.Min.Y + 10}, width, 34), 0, end, 0, 0}
	stress := chart{draw.BoxAt(draw.Point{X: left, Y: p.area.Min.Y + 68}, width, 40), 0, end, 0, 0}
	unit := momentUnit(stations)
	total := along(stations, func(s station) float64 { return float64(s.Moment) / unit.si })
	self := along(stations, func(s station) float64 { return float64(s.Self) / unit.si })
	fibre := along(stations, func(s station) float64 { return float64(s.Stress) / 1e6 })
	bears := along(stations, func(s station) float64 { return float64(s.Strength) / 1e6 })
	moment.up = 1.15 * highest(total)
	stress.up = 1.15 * math.Max(highest(bears), math.Min(highest(fibre), mostShown*highest(bears)))
	p.under(moment, draw.Slant, total)
	p.under(moment, draw.BackSlant, self)
	p.curve(moment, draw.Bold, total)
	p.curve(moment, draw.Fine, self)
	p.axes(moment, "m from the stem", "moment, "+unit.name)
	p.under(stress, draw.Slant, fibre)
	p.curve(stress, draw.Bold, fibre)
	p.curve(stress, draw.Dashed, bears)
	p.axes(stress, "m from the stem", "stress, MPa")
	p.labelCurve(moment, total, 0.3, "riders and own weight")
	p.labelCurve(moment, self, 0.15, "own weight alone")
	p.labelCurve(stress, bears, 0.6, "design strength")
	worst := worstOf(stations)
	at := stress.held(worst.x, float64(worst.Stress)/1e6)
	p.add(&draw.Circle{Centre: at, Radius: 1.1, Fill: draw.Ink})
	p.label(at, fmt.Sprintf("%s of %s, margin %s", value(float64(worst.Stress), "Pa"), value(float64(worst.Strength), "Pa"), wording.Margin(worst.margin())))
	if highest(fibre) > stress.up {
		p.rows = append(p.rows, row{words: fmt.Sprintf("The stress goes on above the drawing, up to %s.", value(highest(fibre)*1e6, "Pa"))})
	}
	p.unions(stress, stations)
	return p.finish(bendingSays(j, stations, worst))
}

// mostShown is how many times the strength the axis of stress goes up to: what
// lies beyond is far too much however it is drawn.
const mostShown = 4

// scale is a unit for an axis.
type scale struct {
	si   float64
	name string
}

// momentUnit keeps the figures on the axis of the moment short.
func momentUnit(stations []station) scale {
	most := 0.0
	for _, s := range stations {
		most = math.Max(most, float64(s.Moment))
	}
	if most >= 1e6 {
		return scale{1e6, "MN m"}
	}
	return scale{1e3, "kN m"}
}

// along is a figure of every station over its distance from the stem.
func along(stations []station, figure func(station) float64) [][2]float64 {
	list := make([][2]float64, len(stations))
	for i, s := range stations {
		list[i] = [2]float64{s.x, figure(s)}
	}
	return list
}

// station is a section with its distance from the stem along the load path.
type station struct {
	assess.BendingStation
	x float64
}

func (s station) margin() float64 {
	if s.Stress <= 0 {
		return math.Inf(1)
	}
	return float64(s.Strength / s.Stress)
}

// outwards strings the limbs of a load path together, the one on the stem
// first.
func outwards(limbs [][]assess.BendingStation) []station {
	var list []station
	start := 0.0
	for i := len(limbs) - 1; i >= 0; i-- {
		for _, s := range limbs[i] {
			list = append(list, station{s, start + float64(s.Along)})
		}
		start = list[len(list)-1].x
	}
	return list
}

func highest(points [][2]float64) float64 {
	top := 1e-9
	for _, p := range points {
		top = math.Max(top, p[1])
	}
	return top
}

func worstOf(stations []station) station {
	worst := stations[0]
	for _, s := range stations {
		if s.margin() < worst.margin() {
			worst = s
		}
	}
	return worst
}

// labelCurve names a curve at a share of its length.
func (p *page) labelCurve(c chart, points [][2]float64, share float64, words string) {
	at := points[int(share*float64(len(points)-1))]
	p.label(c.at(at[0], at[1]), words)
}

// unions marks where one limb grows from another.
func (p *page) unions(c chart, stations []station) {
	for _, s := range stations {
		if !s.Union {
			continue
		}
		foot := c.at(s.x, 0)
		p.add(&draw.Polygon{Points: []draw.Point{foot, foot.Add(-1.4, 2.4), foot.Add(1.4, 2.4)}, Pen: draw.Fine, Fill: draw.Ink})
		p.rows = append(p.rows, row{mark: func(c draw.Point) []draw.Item {
			return []draw.Item{&draw.Polygon{Points: []draw.Point{c.Add(0, -1.2), c.Add(-1.4, 1.2), c.Add(1.4, 1.2)}, Fill: draw.Ink}}
		}, words: fmt.Sprintf("union of %s at %.2f m", s.Member, s.x)})
	}
}

func bendingSays(j Judged, stations []station, worst station) []string {
	first, last := stations[0], stations[len(stations)-1]
	return []string{
		fmt.Sprintf("From the stem to the last section before the hang point, %.2f m out: riders swinging to %s with their load factor, at the unfavourable 5 %% values, in still air.", last.x, degrees(j.Figure.DesignAmplitude())),
		fmt.Sprintf("At the stem the moment is %s, of which own weight %s.", value(float64(first.Moment), "N m"), value(float64(first.Self), "N m")),
		fmt.Sprintf("The least margin is %s: %s against %s at %.2f m along %s, where the limb is %s thick inside its bark.",
			wording.Margin(worst.margin()), value(float64(worst.Stress), "Pa"), value(float64(worst.Strength), "Pa"), float64(worst.Along), worst.Member, millimetres(worst.Diameter)),
		outcomeSentence(j.Assessed),
	}
}
