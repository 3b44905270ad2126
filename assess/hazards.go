package assess

import (
	"math"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// hazardReasons judges the hazards of the site by how near they are to people
// or to the limb in use. What is far off is left out.
func (r *rig) hazardReasons(people space.People) []Reason {
	var list []Reason
	for i := range r.survey.Hazards {
		h := &r.survey.Hazards[i]
		if row, ok := r.k.Hazard(h.Hazard); ok { // Problems has refused others
			if reason := r.hazardReason(h, row, people, element("hazards", i)); reason.Effect > signs.None {
				list = append(list, reason)
			}
		}
	}
	return list
}

func (r *rig) hazardReason(h *survey.Hazard, row signs.Hazard, people space.People, path string) Reason {
	reason := Reason{Code: HazardFound, Hazard: &row, HazardID: row.ID, Path: path, Text: h.Note, Refs: row.Refs, Remark: true}
	if h.Cleared != nil && !h.Cleared.On.After(r.survey.Day) {
		reason.Why, reason.Effect = signs.WhyCleared, signs.Remark
		return reason
	}
	at, astray, place := r.hazardPlace(h)
	if place == placeUnknown { // on another tree whose place nobody has taken
		reason.Code, reason.Effect = HazardNotPlaced, signs.Remark
		if row.Near >= signs.CloserLook {
			reason.Effect, reason.Outcome, reason.Remark, reason.Change = signs.CloserLook, Unfinished, false, Change{Code: ChangeMeasure}
		}
		return reason
	}
	distance := max(0, r.distanceTo(at, people)-quantity.Length(quantity.Tail)*astray)
	reason.Effect = row.At(distance, place == placeKnown)
	reason.Outcome, reason.Remark = outcomeOf(reason.Effect)
	reason.Change = hazardChange(reason.Effect)
	if place == placeKnown {
		reason.Terms = []Term{{Symbol: "d", Name: "distance to people or to the limb in use, at least", Value: float64(distance), Unit: "m", Path: path},
			{Symbol: "d_0", Name: "distance within which it counts as near", Value: float64(row.Reach), Unit: "m", Refs: row.Refs}}
	}
	return reason
}

// How well the place of a hazard is known.
const (
	placeEverywhere = iota // no place is named: it counts for every hang
	placeKnown
	placeUnknown
)

// hazardPlace returns where a hazard is in the frame of this tree, with the
// standard deviation of its place.
func (r *rig) hazardPlace(h *survey.Hazard) (at quantity.Vec3, astray quantity.Length, place int) {
	here, placed := placeOf(r.s)
	switch {
	case h.East != nil && h.North != nil:
		if !placed {
			return at, 0, placeUnknown
		}
		east, north := resolve(r.k, *h.East), resolve(r.k, *h.North)
		at = quantity.Vec3{X: float64(east.Value), Y: float64(north.Value)}.Sub(here)
		return at, quantity.Length(math.Hypot(float64(east.Sd), float64(north.Sd))), placeKnown
	case h.Tree == "":
		return at, 0, placeEverywhere
	case h.Side == nil || h.Distance == nil:
		if h.Tree == r.s.ID {
			return at, 0, placeEverywhere
		}
		return at, 0, placeUnknown
	default:
		side, distance := resolve(r.k, *h.Side), resolve(r.k, *h.Distance)
		at = quantity.Heading(side.Value, 0).Scale(float64(distance.Value))
		astray = quantity.Length(math.Hypot(float64(distance.Sd), math.Min(math.Pi, float64(side.Sd))*float64(distance.Value)))
	}
	if h.Tree == r.s.ID {
		return at, astray, placeKnown
	}
	for _, other := range r.site {
		if there, ok := placeOf(other.s); other.s.ID == h.Tree && ok && placed {
			return at.Add(there).Sub(here), astray, placeKnown
		}
	}
	return at, 0, placeUnknown
}

// distanceTo is the distance in plan from a spot to people or to the limbs in
// use, whichever is less.
func (r *rig) distanceTo(at quantity.Vec3, people space.People) quantity.Length {
	least := people.Distance(at)
	for _, part := range r.limbs {
		for along := 0.0; along <= part.on.length(); along += spotDoubt / 2 {
			p := part.on.position(along)
			least = min(least, quantity.Length(math.Hypot(p.X-at.X, p.Y-at.Y)))
		}
	}
	return least
}

func hazardChange(e signs.Effect) Change {
	switch {
	case e >= signs.BarsUntilCleared:
		return Change{Code: ChangeMoveAway}
	case e == signs.Arborist:
		return Change{Code: ChangeAsk}
	case e == signs.CloserLook:
		return Change{Code: ChangeLook}
	case e == signs.Limit:
		return Change{Code: ChangeClear}
	}
	return Change{}
}
