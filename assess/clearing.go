package assess

import (
	"math"

	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/quantity"
	"boughline/survey"
)

// keptClear is the length to keep free of people each way from the plumb
// line: the larger of the standard's and the farthest let-go landing on this
// slope, at the amplitude of space.
func (r *rig) keptClear(u trial) (ahead, behind quantity.Length) {
	l := r.clearLengths(u)
	return max(l.standard, l.letGoAhead), max(l.standard, l.letGoBehind)
}

// clearKey is all that the kept-clear length of a hang depends on.
type clearKey struct {
	amplitude quantity.Angle
	line      quantity.Length
}

// clearLengths are the figures that the kept-clear length is the larger of:
// the standard's, which holds for level ground, and how far from the plumb line
// riders who let go at the worst moment land.
type clearLengths struct{ standard, letGoAhead, letGoBehind quantity.Length }

func (r *rig) clearLengths(u trial) clearLengths {
	key := clearKey{u.amplitude, u.line}
	known, ok := r.cleared[key]
	if !ok {
		known = r.workOutClear(u)
		r.cleared[key] = known
	}
	return known
}

func (r *rig) workOutClear(u trial) clearLengths {
	rule := space.LinearRule{PerLine: r.rules.clearShare.Value, Constant: quantity.Length(r.rules.clearFirm.Value)}
	grounds := []space.Ground{{Stations: []space.Point{{}}}}
	if r.lie != nil {
		grounds = r.lie.grounds(0)
		if r.looseSurface() {
			rule.Constant = quantity.Length(r.rules.clearLoose.Value)
		}
	}
	l := clearLengths{standard: rule.For(u.line)}
	for _, ground := range grounds {
		flights, err := space.LetGo(ground, r.swingAt(u, r.highHeight(unfavourable), false))
		if err != nil { // out of the range of the flight: the standard's length is left
			continue
		}
		l.letGoAhead = max(l.letGoAhead, flights.Positive.Along)
		l.letGoBehind = max(l.letGoBehind, -flights.Negative.Along)
	}
	return l
}

// reach is where riders can come in plan, let-go flights included.
func (r *rig) reach(u trial) space.Reach {
	ahead, behind := r.keptClear(u)
	return space.Reach{
		Hang: r.hangPoint(), SwingAzimuth: r.azimuth, Ahead: ahead, Behind: behind,
		Drift: r.drift(u), Off: angle(r.rules.sidewaysLaunch),
	}
}

// seatReach is where the seat itself can come, off the line too; seatLine the
// line that it is meant to go along.
func (r *rig) seatReach(u trial, side scenario) space.Reach {
	reach := r.seatLine(u, side)
	reach.Drift, reach.Off = r.drift(u), angle(r.rules.sidewaysLaunch)
	return reach
}

func (r *rig) seatLine(u trial, side scenario) space.Reach {
	half := quantity.Length(float64(u.line) * u.amplitude.Sin())
	return space.Reach{Hang: r.on.position(float64(r.armNear(side))), SwingAzimuth: r.azimuth, Ahead: half, Behind: half}
}

// drift is how far a launch off the line comes to the side of the plumb line:
// the nearest turn of a rider who leaves the end of the line with a share of
// the speed of the swing square to it. It grows with the line. One who circles
// on, so that the swing line turns, is stopped.
func (r *rig) drift(u trial) quantity.Length {
	if known, ok := r.drifts[u.amplitude]; ok {
		return u.line * known
	}
	r.drifts[u.amplitude] = driftShare(u.amplitude, angle(r.rules.sidewaysLaunch))
	return u.line * r.drifts[u.amplitude]
}

// driftShare is the drift of a line of 1 m.
func driftShare(amplitude, off quantity.Angle) quantity.Length {
	swinging := swing.DriftingSwing{Length: 1, Mass: 1}
	aside := off.Sin() * math.Sqrt(2*quantity.StandardGravity*(1-amplitude.Cos()))
	bounds, err := swinging.Bounds(swing.SpatialState{
		Position: quantity.Vec3{X: amplitude.Sin(), Z: -amplitude.Cos()}, Velocity: quantity.Vec3{Y: aside},
	})
	if err != nil { // the line goes slack
		return quantity.Length(off.Sin())
	}
	return bounds.LeastRadius
}

// keptClearArea is the ground to be kept clear of people: where riders can
// come with their bodies about them, never narrower than the standard's room.
func (r *rig) keptClearArea(u trial) space.Polygon {
	if r.anchor != nil {
		return r.anchor.line.area(r)
	}
	least := math.Max(r.rules.clearWidth.Value/2, r.rules.sideShare.Value*float64(u.line)+r.rules.sideConstant.Value)
	return r.reach(u).Polygon(quantity.Length(r.rules.bodyOutline.Value), quantity.Length(least))
}

// people is the plan of everywhere that people are while the swing is in use.
func (r *rig) people(u trial) space.People {
	p := space.People{Area: r.keptClearArea(u)}
	for _, spot := range r.h.Waiting {
		p.Places = append(p.Places, space.Disc{Centre: spotPosition(spot.Azimuth.Value, spot.Distance.Value), Radius: quantity.Length(r.rules.waitingRadius.Value)})
	}
	way, _ := r.wayIn()
	for i, b := range way {
		a := way[max(0, i-1)] // a single spot is a strip without length
		p.Ways = append(p.Ways, space.Strip{
			From: spotPosition(a.Azimuth.Value, a.Distance.Value), To: spotPosition(b.Azimuth.Value, b.Distance.Value),
			HalfWidth: quantity.Length(r.rules.wayHalfWidth.Value),
		})
	}
	return p
}

// wayIn is the way in to the hang, or that of its tree, with its path in the
// document.
func (r *rig) wayIn() (spots []survey.Spot, path string) {
	if len(r.h.WayIn) == 0 && len(r.s.WayIn) > 0 {
		return r.s.WayIn, r.path + ".way_in"
	}
	return r.h.WayIn, r.at + ".way_in"
}

func spotPosition(azimuth quantity.Angle, distance quantity.Length) quantity.Vec3 {
	return quantity.Heading(azimuth, 0).Scale(float64(distance))
}
