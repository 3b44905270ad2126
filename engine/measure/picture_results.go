package measure

import (
	"fmt"
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"
)

// depth returns the distance of the limb's plane that one reference gives.
func (v *view) depth(c camera, r referenceView) hd.Number {
	from := c.ray(r.from)
	if r.distance {
		level := hypot(from[0], from[1])
		return hd.Add(div(hd.Mul(c.x[r.known], dot(from, c.normal)), level), c.x[r.nearer])
	}
	one := num(1)
	apart := norm(minus(c.onPlane(from, one), c.onPlane(c.ray(r.to), one)))
	return hd.Add(div(c.x[r.known], apart), c.x[r.nearer])
}

// weigh gives each reference its weight by its own error, and tests whether
// they agree. The weights are numbers from here on, so that what the references
// share is carried through rightly.
func (v *view) weigh(out *Outcome) error {
	depths := carry(func(x []hd.Number) []hd.Number {
		c := v.camera(x)
		var all []hd.Number
		for _, r := range v.references {
			all = append(all, v.depth(c, r))
		}
		return all
	}, v.readings)
	var readings []Reading
	whole := 0.0
	for i, d := range depths {
		if d.value <= 0 {
			return fmt.Errorf("references[%d]: it puts the limb %.3g m behind the camera; look at nearer, which counts from the limb towards you", i, -d.value)
		}
		sd, _ := d.sd(v.readings)
		readings = append(readings, Reading{Value: d.value, Sd: sd})
		v.weights = append(v.weights, 1/(sd*sd))
		whole += 1 / (sd * sd)
	}
	for i := range v.weights {
		v.weights[i] /= whole
	}
	if len(readings) < 2 {
		return nil
	}
	combined, err := Combine(readings)
	if err != nil {
		return err
	}
	out.Repeated = append(out.Repeated, Repeated{together, Length, combined})
	v.readings[v.extra].Sd = math.Sqrt(combined.SdWidened*combined.SdWidened - combined.SdInternal*combined.SdInternal)
	return nil
}

// all is the formula of a picture: every result in the order of v.gives.
func (v *view) all(x []hd.Number) []hd.Number {
	c := v.camera(x)
	distance := x[v.extra]
	for i, r := range v.references {
		distance = hd.Add(distance, hd.Scale(v.weights[i], v.depth(c, r)))
	}
	results := v.alongLimb(c, distance)
	for _, s := range v.spans {
		from, to := c.onPlane(c.ray(s[0]), distance), c.onPlane(c.ray(s[1]), distance)
		along, up := c.inPlane(minus(to, from))
		results = append(results, hypot(along, up))
	}
	for _, s := range v.corners {
		at := c.onPlane(c.ray(s[0]), distance)
		oneAlong, oneUp := c.inPlane(minus(c.onPlane(c.ray(s[1]), distance), at))
		otherAlong, otherUp := c.inPlane(minus(c.onPlane(c.ray(s[2]), distance), at))
		turn := hd.Sub(hd.Mul(oneAlong, otherUp), hd.Mul(oneUp, otherAlong))
		same := hd.Add(hd.Mul(oneAlong, otherAlong), hd.Mul(oneUp, otherUp))
		if turn.Real < 0 {
			turn = hd.Scale(-1, turn)
		}
		results = append(results, atan2(turn, same))
	}
	return append(results, distance)
}

// alongLimb gives thickness, length and slope of station after station.
func (v *view) alongLimb(c camera, distance hd.Number) []hd.Number {
	middles := make([]vec, len(v.stations))
	for i, s := range v.stations {
		ray := c.ray(s.edges[0])
		if s.thick {
			ray = plus(unit(ray), unit(c.ray(s.edges[1])))
		}
		middles[i] = c.onPlane(ray, hd.Add(distance, c.x[s.stray]))
	}
	var results []hd.Number
	length := num(0)
	for i, s := range v.stations {
		if s.thick {
			results = append(results, v.thickness(c, i, middles))
		}
		if i > 0 {
			along, up := c.inPlane(minus(middles[i], middles[i-1]))
			length = hd.Add(length, hypot(along, up))
			if along.Real < 0 { // a limb that grows to the left
				along = hd.Scale(-1, along)
			}
			results = append(results, length, atan2(up, along))
		}
	}
	return results
}

// thickness returns the diameter of the round limb whose two tangent planes
// through the camera hold the edges: D = 2 rho sin(A/2), rho the distance of the
// camera from its axis, A the angle between the planes. Planes along the axis do
// not care where on its edge a mark was set. Source: plain geometry.
func (v *view) thickness(c camera, i int, middles []vec) hd.Number {
	s := v.stations[i]
	one, other := c.ray(s.edges[0]), c.ray(s.edges[1])
	axis := v.axis(c, i, middles)
	away := norm(cross(middles[i], axis))
	return hd.Mul(away, norm(minus(unit(cross(one, axis)), unit(cross(other, axis)))))
}

// axis returns the direction of the limb at a station: between its neighbours
// in the plane; of a station alone the direction in the plane whose image is
// square to that of its edges.
func (v *view) axis(c camera, i int, middles []vec) vec {
	before, after := max(0, i-1), min(len(middles)-1, i+1)
	if before < after {
		along, up := c.inPlane(minus(middles[after], middles[before]))
		return unit(plus(scaled(c.level, along), vec{num(0), num(0), up}))
	}
	oneRight, oneUp := c.pinhole(v.stations[i].edges[0])
	otherRight, otherUp := c.pinhole(v.stations[i].edges[1])
	square := c.world(hd.Sub(oneUp, otherUp), hd.Sub(otherRight, oneRight), num(0))
	return unit(cross(cross(middles[i], square), c.normal))
}
