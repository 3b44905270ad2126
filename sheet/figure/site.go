package figure

import (
	"boughline/assess"
	"boughline/draw"
	"boughline/quantity"
)

// Site draws a site from above with north up: its trees with their crowns and
// names, the swing lines with the shapes of their outcomes, the ground to be
// kept clear, where people wait and come in, fences, water and paths. Trees whose
// place is not known are listed below. Where trees stand too close for their
// names, the lesser ones are left out; every tree keeps its mark and its link.
func Site(name string, trees []assess.TreeFigure, hangs []Judged) *draw.Scene {
	return SiteWith(name, trees, spotsOf(hangs))
}

// SiteWith draws the same from spots that were taken before.
func SiteWith(name string, trees []assess.TreeFigure, hangs []Spot) *draw.Scene {
	v := fromAbove()
	e := v.extentOf(siteExtent(trees, hangs))
	perMetre, tall := e.fit(innerWidth-8, 150)
	p := newPage("site "+name, name+" from above", tall+24)
	box := p.area
	box.Min.Y += 4
	box.Max.Y -= 10
	v = v.placed(e, perMetre, box)
	p.crowded = crowdedSite(trees)
	for _, j := range hangs {
		p.ground(v, j)
	}
	for _, t := range trees {
		if t.Placed {
			p.things(v, t.At, t.Obstacles)
		}
	}
	p.trees(v, trees, hangs)
	p.compassAndScale(perMetre)
	p.siteKey(hangs)
	return p.finish(siteSays(trees, hangs))
}

// siteExtent lists what has to be seen.
func siteExtent(trees []assess.TreeFigure, hangs []Spot) []quantity.Vec3 {
	points := []quantity.Vec3{{}}
	if len(trees) > 0 && trees[0].Placed {
		points[0] = trees[0].At
	}
	for _, t := range trees {
		if t.Placed {
			points = append(points, disc(t.At, max(t.CrownWidth/2, 1))...)
			for _, o := range t.Obstacles {
				points = append(points, moved(outlineOf(o), t.At)...)
			}
		}
	}
	for _, j := range hangs {
		if !j.Placed {
			continue
		}
		points = append(points, j.onSite(j.People.Area)...)
		for _, o := range j.Obstacles {
			points = append(points, j.onSite(outlineOf(o))...)
		}
		for _, w := range j.People.Places {
			points = append(points, j.onSite(disc(w.Centre, w.Radius))...)
		}
	}
	return points
}

func moved(points []quantity.Vec3, by quantity.Vec3) []quantity.Vec3 {
	list := make([]quantity.Vec3, len(points))
	for i, p := range points {
		list[i] = p.Add(by)
		list[i].Z = 0
	}
	return list
}
