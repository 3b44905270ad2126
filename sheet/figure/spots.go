package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
)

// Spots draws the spot heights about a tree from above with north up, each with
// its height against the foot of the stem. A tree without spots gives nil.
func Spots(t assess.TreeFigure) *draw.Scene {
	if t.Survey.Ground == nil || len(t.Survey.Ground.Spots) == 0 {
		return nil
	}
	places := []quantity.Vec3{{}}
	least, greatest := math.Inf(1), math.Inf(-1)
	for _, s := range t.Survey.Ground.Spots {
		places = append(places, quantity.Heading(s.Azimuth.Value, 0).Scale(float64(s.Distance.Value)))
		least, greatest = math.Min(least, float64(s.Height.Value)), math.Max(greatest, float64(s.Height.Value))
	}
	v := fromAbove()
	e := v.extentOf(places)
	perMetre, tall := e.fit(innerWidth-24, innerWidth-24)
	p := newPage("spots "+t.Survey.ID, "Ground about "+nameOf(t), tall+20)
	box := p.area
	box.Max.Y -= 8
	v = v.placed(e, perMetre, box)
	foot := v.at(places[0])
	p.add(&draw.Circle{Centre: foot, Radius: 1.6, Pen: draw.Bold, Fill: draw.Cross})
	p.label(foot, "stem, 0 m")
	for i, s := range t.Survey.Ground.Spots {
		at := v.at(places[i+1])
		p.add(&draw.Circle{Centre: at, Radius: 0.7, Pen: draw.Fine})
		p.placer.Avoid(at)
		p.label(at, fmt.Sprintf("%+.2f", float64(s.Height.Value)))
	}
	p.compassAndScale(perMetre)
	return p.finish([]string{
		"Seen from above, north up.",
		fmt.Sprintf("%d spot heights, from %+.2f m to %+.2f m against the foot of the stem.", len(t.Survey.Ground.Spots), least, greatest),
	})
}
