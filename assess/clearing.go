package assess

import (
	"math"

	"boughline/engine/space"
	"boughline/quantity"
)

// keptClear is the length to keep free of people each way from the plumb
// line: the larger of the standard's and the farthest let-go landing on this
// slope, at the amplitude of space.
func (r *rig) keptClear(u trial) (ahead, behind quantity.Length) {
	key := clearKey{u.amplitude, u.line}
	if known, ok := r.cleared[key]; ok {
		return known[0], known[1]
	}
	ahead, behind = r.workOutClear(u)
	r.cleared[key] = [2]quantity.Length{ahead, behind}
	return ahead, behind
}

// clearKey is all that the kept-clear length of a hang depends on.
type clearKey struct {
	amplitude quantity.Angle
	line      quantity.Length
}

func (r *rig) workOutClear(u trial) (ahead, behind quantity.Length) {
	rule := space.LinearRule{PerLine: r.rules.clearShare.Value, Constant: quantity.Length(r.rules.clearFirm.Value)}
	ground := space.Ground{Stations: []space.Point{{}}}
	if r.h.Ground != nil {
		ground = r.ground(0)
		if r.looseSurface() {
			rule.Constant = quantity.Length(r.rules.clearLoose.Value)
		}
	}
	ahead, behind = rule.For(u.line), rule.For(u.line)
	flights, err := space.LetGo(ground, r.swingAt(u, r.highHeight(unfavourable), false))
	if err != nil { // out of the range of the flight: the standard's length is left
		return ahead, behind
	}
	return space.KeptClear(flights.Positive.Along, u.line, rule), space.KeptClear(flights.Negative.Along, u.line, rule)
}

// band is the ground to be kept clear: along the swing line, and as wide as
// bodies and the standard's room to the side.
func (r *rig) band(u trial) space.People {
	ahead, behind := r.keptClear(u)
	return space.People{
		Hang: r.hangPoint(), SwingAzimuth: r.azimuth, Ahead: ahead, Behind: behind,
		HalfWidth: quantity.Length(math.Max(r.rules.bodyOutline.Value, r.rules.sideShare.Value*float64(u.line)+r.rules.sideConstant.Value)),
	}
}

// people is the plan of everywhere that people are while the swing is in use.
func (r *rig) people(u trial) space.People {
	p := r.band(u)
	for _, spot := range r.h.Waiting {
		p.Places = append(p.Places, space.Disc{Centre: spotPosition(spot.Azimuth.Value, spot.Distance.Value), Radius: quantity.Length(r.rules.waitingRadius.Value)})
	}
	for i, b := range r.h.WayIn {
		a := r.h.WayIn[max(0, i-1)] // a single spot is a strip without length
		p.Ways = append(p.Ways, space.Strip{
			From: spotPosition(a.Azimuth.Value, a.Distance.Value), To: spotPosition(b.Azimuth.Value, b.Distance.Value),
			HalfWidth: quantity.Length(r.rules.wayHalfWidth.Value),
		})
	}
	return p
}

func spotPosition(azimuth quantity.Angle, distance quantity.Length) quantity.Vec3 {
	return quantity.Heading(azimuth, 0).Scale(float64(distance))
}
