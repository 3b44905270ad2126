package figure

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/engine/section"
	"boughline/quantity"
)

// SectionInput is a cross-section to be drawn, by outlines in metres with Y
// upwards.
type SectionInput struct {
	Key, Title string
	// Outline is over bark, Wood inside it; Wood may be nil.
	Outline, Wood section.Ring
	Cavities      []section.Ring
	// Notes are sentences with figures that belong to it.
	Notes []string
}

// Section draws a cross-section: wood open, bark hatched both slants,
// decay and cavities as a grid, the greatest extents dimensioned.
func Section(in SectionInput) *draw.Scene {
	v := view{right: quantity.Vec3{X: 1}, up: quantity.Vec3{Y: 1}}
	outline := space3(in.Outline)
	e, shown := v.extentOf(outline), outline
	for _, c := range in.Cavities { // one may break through the edge
		shown = append(shown, space3(c)...)
	}
	all := v.extentOf(shown)
	span := math.Max(all.high.X-all.low.X, all.high.Y-all.low.Y)
	perMetre := 66 / math.Max(0.01, span)
	p := newPage("section "+in.Key, in.Title, (all.high.Y-all.low.Y)*perMetre+22)
	box := p.area
	box.Max.Y -= 14
	v = v.placed(all, perMetre, box)
	p.add(&draw.Polygon{Points: v.all(outline), Pen: draw.Bold, Fill: draw.Paper})
	if in.Wood != nil {
		p.add(&draw.Polygon{Points: v.all(outline), Fill: draw.Cross}, &draw.Polygon{Points: v.all(space3(in.Wood)), Pen: draw.Fine, Fill: draw.Paper})
		p.label(v.at(between(outline, space3(in.Wood))), "bark")
	}
	for i, c := range in.Cavities {
		hollow := space3(c)
		p.add(&draw.Polygon{Points: v.all(hollow), Fill: draw.Paper}, &draw.Polygon{Points: v.all(hollow), Pen: draw.Bold, Fill: draw.Grid})
		p.placer.Avoid(v.all(hollow)...)
		p.label(v.at(centreOf(hollow)), fmt.Sprintf("decay %d", i+1))
	}
	p.extents(v, e, outline)
	p.fixedItem(draw.ScaleBar(draw.Point{X: p.area.Min.X, Y: p.area.Max.Y - 2}, perMetre, innerWidth))
	return p.finish(sectionSays(in, e))
}

// extents dimensions the width below and the height beside the outline.
func (p *page) extents(v view, e extent, outline []quantity.Vec3) {
	low, high := v.at(quantity.Vec3{X: e.low.X, Y: -e.high.Y}), v.at(quantity.Vec3{X: e.high.X, Y: -e.low.Y})
	p.placer.Avoid(v.all(append(outline, outline[0]))...)
	p.dimension(draw.Point{X: low.X, Y: low.Y + 4}, draw.Point{X: high.X, Y: low.Y + 4}, millimetres(quantity.Length(e.high.X-e.low.X)))
	p.dimension(draw.Point{X: high.X + 4, Y: low.Y}, draw.Point{X: high.X + 4, Y: high.Y}, millimetres(quantity.Length(e.high.Y-e.low.Y)))
}

func sectionSays(in SectionInput, e extent) []string {
	says := []string{fmt.Sprintf("%s: %s wide and %s high.", in.Title, millimetres(quantity.Length(e.high.X-e.low.X)), millimetres(quantity.Length(e.high.Y-e.low.Y)))}
	for i, c := range in.Cavities {
		d := view{right: quantity.Vec3{X: 1}, up: quantity.Vec3{Y: 1}}.extentOf(space3(c))
		says = append(says, fmt.Sprintf("Decay %d: %s by %s.", i+1, millimetres(quantity.Length(d.high.X-d.low.X)), millimetres(quantity.Length(d.high.Y-d.low.Y))))
	}
	return append(says, in.Notes...)
}

func space3(r section.Ring) []quantity.Vec3 {
	list := make([]quantity.Vec3, len(r))
	for i, p := range r {
		list[i] = quantity.Vec3{X: float64(p.X), Y: float64(p.Y)}
	}
	return list
}

func centreOf(points []quantity.Vec3) quantity.Vec3 {
	var sum quantity.Vec3
	for _, p := range points {
		sum = sum.Add(p)
	}
	return sum.Scale(1 / float64(len(points)))
}

// between is a place half way between two rings, up and to the right.
func between(outer, inner []quantity.Vec3) quantity.Vec3 {
	corner := func(points []quantity.Vec3) quantity.Vec3 {
		best := points[0]
		for _, p := range points {
			if p.X+p.Y > best.X+best.Y {
				best = p
			}
		}
		return best
	}
	return corner(outer).Add(corner(inner)).Scale(0.5)
}

// SectionOf draws the section of a hang's limb at an arc length, as measured:
// sound wood inside its bark.
func SectionOf(j Judged, along quantity.Length) *draw.Scene {
	s := j.Figure.Section(along)
	ellipse := func(across, upright quantity.Length) section.Ring {
		return section.Ellipse(section.Point{}, max(across, 0.002)/2, max(upright, 0.002)/2, 0)
	}
	return Section(SectionInput{
		Key:   fmt.Sprintf("%s %.0f", j.Assessed.ID, float64(along)*1000),
		Title: fmt.Sprintf("Limb %s cut %s from its foot", s.Member, metres(along)), Outline: ellipse(s.Across, s.Upright),
		Wood: ellipse(s.Across-2*s.Bark, s.Upright-2*s.Bark), Notes: sectionNotes(s),
	})
}

func sectionNotes(s assess.SectionFigure) []string {
	return []string{
		fmt.Sprintf("Bark %s on each side.", millimetres(s.Bark)),
		fmt.Sprintf("Checks take %s upright and %s across inside the bark, the unfavourable 5 %% values.", millimetres(s.ThinUpright), millimetres(s.ThinAcross)),
	}
}

// SectionWorst draws the section of a hang's limb that has the least in hand
// against bending.
func SectionWorst(j Judged) *draw.Scene {
	worst := worstOf(outwards(j.Figure.Bending()[:1]))
	scene := SectionOf(j, worst.Along)
	scene.Says = append(scene.Says, fmt.Sprintf("Of all sections of this limb it has the least in hand against bending: margin %s.", wording.Margin(worst.margin())),
		"It is drawn and reckoned as sound wood: no decay has been measured in it.")
	return scene
}
