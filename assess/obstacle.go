package assess

import (
	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// obstacle is a thing on the ground as a swing meets it.
type obstacle struct {
	*survey.Obstacle
	path string
	// corners is a single point, the corners of a line, or those of an area.
	corners     []quantity.Vec3
	low, high   quantity.Length // half its thickness
	distance    quantity.Measured[quantity.Length]
	distanceOff quantity.Length // by which the distance may be wrong
}

// obstacles lists the things that stand in the way of any hang of the tree,
// then those of this hang.
func (r *rig) obstacles() []obstacle {
	var list []obstacle
	add := func(things []survey.Obstacle, path string) {
		for i := range things {
			list = append(list, r.obstacleOf(&things[i], element(path, i)))
		}
	}
	add(r.s.Obstacles, r.path+".obstacles")
	add(r.h.Obstacles, r.at+".obstacles")
	return list
}

func (r *rig) obstacleOf(o *survey.Obstacle, path string) obstacle {
	size := resolve(r.k, o.Radius)
	found := obstacle{Obstacle: o, path: path, low: size.Low(), high: size.High(), distance: resolve(r.k, o.Distance)}
	found.distanceOff = quantity.Tail * found.distance.Sd
	found.corners = []quantity.Vec3{spotPosition(o.Azimuth.Value, found.distance.Value)}
	for _, c := range o.Corners {
		found.corners = append(found.corners, spotPosition(c.Azimuth.Value, c.Distance.Value))
	}
	return found
}

// room is the distance in plan from an area to the face of the thing.
func (o *obstacle) room(area space.Polygon, side scenario) quantity.Length {
	apart := area.Apart(o.corners, o.Area)
	if side == favourable {
		return max(0, apart-o.low+o.distanceOff)
	}
	return max(0, apart-o.high-o.distanceOff)
}

// obstacleChecker compares the room between a thing on the ground and where
// seat and let-go flights go with the outline of a body, and beside a path with
// the people on it too.
func (r *rig) obstacleChecker(o obstacle) checker {
	needed := r.rules.bodyOutline.Value
	if o.Kind == survey.Path {
		needed += r.rules.wayHalfWidth.Value
	}
	try := func(u trial, side scenario) figure {
		room := o.room(r.reach(u).Polygon(0, 0), side)
		return figure{needed, float64(room), Where{Part: o.What, Case: string(Obstructed)}}
	}
	return checker{code: Obstructed, unit: "m", cure: bySpace, try: try, terms: func(u trial, f figure) []Term {
		list := append(r.spaceTerms(u),
			Term{Symbol: "d", Name: "distance from the stem to " + o.What, Value: float64(o.distance.Value), Unit: "m", Sd: float64(o.distance.Sd), How: o.distance.How, Path: o.path},
			factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline),
			factTerm("psi", "by how much a launch may leave the swing line", r.rules.sidewaysLaunch))
		if o.Kind == survey.Path {
			list = append(list, factTerm("c_w", "half the width that people on a path take", r.rules.wayHalfWidth))
		}
		return list
	}}
}
