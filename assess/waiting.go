package assess

import (
	"math"

	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// waitingPlace proposes where people wait: outside the ground that is kept
// clear, under as few limbs as can be, and then as near to the way in as can be.
func (r *rig) waitingPlace(u trial) survey.Spot {
	area, radius := r.keptClearArea(u), quantity.Length(r.rules.waitingRadius.Value)
	var best quantity.Vec3
	least, nearest := math.MaxInt, math.Inf(1)
	for bearing := quantity.Angle(0); bearing < 345*quantity.Degree; bearing += waitingStep {
		at := r.clearOf(area, bearing, radius+waitingRoom)
		above := len(r.limbsAbove(space.People{Area: space.Polygon{at}, Places: []space.Disc{{Centre: at, Radius: radius}}}))
		if far := r.fromWayIn(at); above < least || above == least && far < nearest-1e-9 {
			best, least, nearest = at, above, far
		}
	}
	degrees := math.Round(math.Mod(quantity.Angle(math.Atan2(best.X, best.Y)).Degrees()+360, 360))
	distance := math.Ceil(10*math.Hypot(best.X, best.Y)) / 10
	return survey.Spot{
		Azimuth:  survey.ChosenAngle{Value: quantity.Angle(degrees) * quantity.Degree},
		Distance: survey.ChosenLength{Value: quantity.Length(distance)},
	}
}

// waitingStep is between the bearings that are tried, waitingRoom what is left
// between waiting people and the ground that is kept clear, m (house).
const (
	waitingStep                 = 15 * quantity.Degree
	waitingRoom quantity.Length = 1
)

// clearOf goes out from the hang point on a bearing until the area lies behind.
func (r *rig) clearOf(area space.Polygon, bearing quantity.Angle, room quantity.Length) quantity.Vec3 {
	heading, hang := quantity.Heading(bearing, 0), flatten(r.hangPoint())
	at := hang
	for out := 0.5; area.Distance(at) < room; out += 0.5 {
		at = hang.Add(heading.Scale(out))
	}
	return at
}

func flatten(v quantity.Vec3) quantity.Vec3 { return quantity.Vec3{X: v.X, Y: v.Y} }

// fromWayIn is the distance of a place from where the way in ends, or from the
// stem where none is stated.
func (r *rig) fromWayIn(at quantity.Vec3) float64 {
	var end quantity.Vec3
	if way, _ := r.wayIn(); len(way) > 0 {
		end = spotPosition(way[0].Azimuth.Value, way[0].Distance.Value)
	}
	return at.Sub(end).Norm()
}
