package assess

import (
	"math"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// placementOf works out where a finding stands, seen from this hang. What is
// not known of its place counts as unfavourable.
func (r *rig) placementOf(f *survey.Finding, sign signs.Sign, people space.People) signs.Placement {
	if s, ok := r.shapes[f.Member]; ok {
		return signs.Placement{OnLoadPath: r.memberOnPath(f, s), AbovePeople: r.memberAbove(f, s, people)}
	}
	switch sign.Zone {
	case signs.Base, signs.RootPlate, signs.Ground:
		return signs.Placement{OnLoadPath: true}
	case signs.Stem:
		return signs.Placement{OnLoadPath: f.Height == nil || r.onStem(resolve(r.k, *f.Height))}
	case signs.Surroundings:
		return signs.Placement{AbovePeople: r.spotAbove(f, people)}
	}
	onPath := sign.Zone == signs.Union || r.spotOnPath(f)
	return signs.Placement{OnLoadPath: onPath, AbovePeople: r.spotAbove(f, people)}
}

// spotOnPath reports whether a thing in the crown, told by its side, distance
// and height, may be on a limb of the load path. Without a side or a distance
// it may be.
func (r *rig) spotOnPath(f *survey.Finding) bool {
	if f.Side == nil || f.Distance == nil {
		return true
	}
	distance, side := resolve(r.k, *f.Distance), resolve(r.k, *f.Side)
	spot := quantity.Heading(side.Value, 0).Scale(float64(distance.Value))
	doubt := spotDoubt + quantity.Tail*float64(distance.Sd) + math.Min(math.Pi, quantity.Tail*float64(side.Sd))*float64(distance.Value)
	if f.Height != nil {
		height := resolve(r.k, *f.Height)
		spot.Z = float64(height.Value)
		doubt += quantity.Tail * float64(height.Sd)
	}
	for _, part := range r.limbs {
		for at := 0.0; at <= part.until+float64(r.beyond()); at += spotDoubt / 2 {
			apart := part.on.position(at).Sub(spot)
			if f.Height == nil {
				apart.Z = 0
			}
			if apart.Norm() <= doubt {
				return true
			}
		}
	}
	return false
}

// spotDoubt is how far from a limb a thing told by side and distance may be
// and still be on it, m (house).
const spotDoubt = 1.0

// memberOnPath reports whether a finding on a member lies between the hang
// point and the ground.
func (r *rig) memberOnPath(f *survey.Finding, s *shape) bool {
	if f.At == nil {
		return r.carriesHang(s)
	}
	at := resolve(r.k, *f.At)
	switch {
	case s == r.on:
		return at.Low() <= r.arm.High()+r.beyond()
	case s.parent == nil:
		return r.onStem(at)
	}
	for _, part := range r.limbs {
		if part.on == s {
			return at.Low() <= quantity.Length(part.until)+r.beyond()
		}
	}
	return false
}

func (r *rig) carriesHang(s *shape) bool {
	for _, m := range chain(r.on) {
		if m == s {
			return true
		}
	}
	return false
}

// onStem reports whether a height on the stem lies below the limb in use.
func (r *rig) onStem(height quantity.Measured[quantity.Length]) bool {
	return height.Low() <= quantity.Length(r.top())+r.beyond()
}

func (r *rig) beyond() quantity.Length { return quantity.Length(r.rules.loadPathBeyond.Value) }

// memberAbove reports whether the part of a member from a finding to its tip,
// with all that it carries, could fall where people are.
func (r *rig) memberAbove(f *survey.Finding, s *shape, people space.People) bool {
	from := findingFrom(r.k, f)
	if s.parent == nil && !r.topAbove(s, from) {
		return false
	}
	return r.overhangs(s, from, people)
}

// findingFrom is the arc length from which on a member a finding may stand.
func findingFrom(k *knowledge.Base, f *survey.Finding) float64 {
	if f.At == nil {
		return 0
	}
	return float64(resolve(k, *f.At).Low())
}

// topAbove reports whether a stem could break at a height and fall on people:
// what stands above the limb in use can, what stands below is the load path.
func (r *rig) topAbove(stem *shape, from float64) bool {
	return from > r.top()+float64(r.beyond())
}

// overhangs reports whether any point of a member from an arc length on, or of
// the members that grow there, is near enough to people to fall on them.
func (t *tree) overhangs(s *shape, from float64, people space.People) bool {
	reach := t.rules.fallingReach.Value
	if s.parent == nil { // a top that breaks out may fall to any side
		reach = math.Max(reach, s.length()-from)
	}
	const spacing = 0.5
	for at := from; ; at += spacing {
		if people.Near(s.position(math.Min(at, s.length())), quantity.Length(reach)) {
			return true
		}
		if at >= s.length() {
			break
		}
	}
	for _, child := range t.order {
		if child.parent == s && child.rises >= from && t.overhangs(child, 0, people) {
			return true
		}
	}
	return false
}

// spotAbove reports whether a thing in a zone, told by its side and distance
// from the stem, could fall where people are. Without a distance it could be
// anywhere; without a side it could be on any side.
func (t *tree) spotAbove(f *survey.Finding, people space.People) bool {
	if f.Side == nil || f.Distance == nil {
		return true
	}
	distance, side := resolve(t.k, *f.Distance), resolve(t.k, *f.Side)
	at := quantity.Heading(side.Value, 0).Scale(float64(distance.Value))
	astray := math.Min(math.Pi, quantity.Tail*float64(side.Sd)) * float64(distance.Value)
	reach := quantity.Length(t.rules.fallingReach.Value + quantity.Tail*float64(distance.Sd) + astray)
	return people.Near(at, reach)
}

// limbsAbove lists the limbs other than those of the load path that reach
// above the people; each must have been looked at.
func (r *rig) limbsAbove(people space.People) []*shape {
	var list []*shape
	for _, s := range r.order {
		if s.parent != nil && !r.carriesHang(s) && r.overhangs(s, 0, people) {
			list = append(list, s)
		}
	}
	return list
}
