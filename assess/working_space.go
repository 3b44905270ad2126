package assess

import (
	"math"

	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/quantity"
)

func (r *rig) workSpace(w *workbook, c *Check, u trial) {
	switch c.Code {
	case SeatClearance:
		r.workClearance(w, c, u, 0, func(n space.Clearance) space.Nearest { return n.Seat })
		w.given(factTerm("c_min", "clearance under a seat on one line", r.rules.seatClearance))
		w.asked(c, "c_min")
	case FootClearance:
		r.workClearance(w, c, u, r.riders.reach, func(n space.Clearance) space.Nearest { return n.Foot })
		w.given(factTerm("c_f", "clearance under the feet", r.rules.footClearance))
		w.asked(c, "c_f")
	case FallHeight:
		r.workFall(w, c, u)
	case StemClearance:
		r.workStemRoom(w, c, u)
	default:
		r.workRoom(w, c, u)
	}
}

// workHeight adds the height of the hang and the line.
func (r *rig) workHeight(w *workbook, u trial) {
	terms := r.spaceTerms(u)
	w.uncertain(terms[0])
	w.given(terms[1])
	w.input("a", "amplitude that space is checked at", u.amplitude.Degrees(), "deg", r.rules.spaceAmplitude.Ref, r.rules.allowance.Ref)
}

// workClearance works out the room under the seat, or below it by the reach of
// the feet, at the angle and over the ground where it is least.
func (r *rig) workClearance(w *workbook, c *Check, u trial, reach quantity.Length, of func(space.Clearance) space.Nearest) {
	r.workHeight(w, u)
	r.workMass(w, u)
	amplitude := min(u.amplitude, angle(r.rules.designAmplitude))
	pull, line := swing.PeakPull(u.mass+r.riders.seat, amplitude), r.lineStiffness(u.line, softest)
	w.follows("T", "greatest pull at that amplitude", "m*9.80665*(3 - 2*cos(a))", float64(pull), "N")
	w.input("k_limb", "stiffness of the limb at the hang point, by its space frame", float64(r.springs.vertical), "N/m")
	w.input("k_line", "stiffness of the line, the softest", float64(line), "N/m")
	lowered := r.swingAt(u, r.lowHeight(unfavourable), true)
	w.follows("h", "height of the hang, low value, limb under load", "max(0, H - 1.645*s_H) - T/k_limb", float64(lowered.HangHeight), "m")
	w.follows("L_1", "line under load", "L + T/k_line", float64(lowered.Line), "m")
	bottom := "L_1"
	if reach > 0 {
		w.input("f", "feet below the seat in the riding posture", float64(reach), "m")
		bottom = "(L_1 + f)"
	}
	least, ground := space.Nearest{Clearance: quantity.Length(math.Inf(1))}, space.Ground{}
	for _, g := range r.lie.grounds(worst(unfavourable)) {
		if found, err := space.Clearances(g, lowered); err == nil && of(found).Clearance < least.Clearance {
			least, ground = of(found), g
		}
	}
	w.input("q", "angle of the line at which the room is least, by a search over the swing", tidy(least.Angle.Degrees(), 1), "deg")
	w.follows("x", "place along the swing line", bottom+"*sin(q)", tidy(float64(least.Along), 1), "m")
	w.input("z_0", "ground at the plumb line, high value", float64(ground.At(0)), "m")
	w.input("z_x", "ground there, high value, from the profile", float64(ground.At(least.Along)), "m")
	w.borne(c, "z_0 + h - "+bottom+"*cos(q) - z_x")
}

func (r *rig) workFall(w *workbook, c *Check, u trial) {
	r.workHeight(w, u)
	high := r.swingAt(u, r.highHeight(unfavourable), false)
	w.follows("h", "height of the hang, high value", "H + 1.645*s_H", float64(high.HangHeight), "m")
	var seat space.Highest
	ground := space.Ground{}
	for _, g := range r.lie.grounds(-worst(unfavourable)) {
		if found, err := space.Fall(g, high); err == nil && found.Height > seat.Height {
			seat, ground = found, g
		}
	}
	w.input("q", "angle of the line at which the seat is highest over the ground, by a search over the swing", seat.Angle.Degrees(), "deg")
	w.follows("x", "place along the swing line", "L*sin(q)", float64(seat.Along), "m")
	w.input("z_0", "ground at the plumb line, low value", float64(ground.At(0)), "m")
	w.input("z_x", "ground there, low value, from the profile", float64(ground.At(seat.Along)), "m")
	w.follows("h_s", "height of the seat over the ground there", "z_0 + h - L*cos(q) - z_x", float64(seat.Height), "m")
	w.input("h_f", "greatest height over the ground of a rider who lets go, by a search over all flights; no less than the seat", c.Demand, "m")
	w.asked(c, "max(h_s, h_f)")
	w.given(factTerm("h_max", "greatest height of fall", r.rules.fallLimit))
	w.borne(c, "h_max")
}

func (r *rig) workStemRoom(w *workbook, c *Check, u trial) {
	w.input("L", "line from the limb to the seat", float64(u.line), "m")
	w.given(factTerm("k", "room to the stem for each metre of line", r.rules.sideShare), factTerm("c_0", "and a constant", r.rules.sideConstant),
		factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline))
	stem := r.on.stem()
	line, launched := r.stemDistance(r.seatLine(u, unfavourable), u), r.stemDistance(r.seatReach(u, unfavourable), u)
	top := r.seatLine(u, unfavourable).Hang.Z - float64(u.line)
	w.input("r_s", "radius of the stem at the height of the seat", radius(stem, math.Min(math.Max(0, top), stem.length())), "m")
	w.input("D_1", "distance in plan from the swing line to the middle of the stem", line+w.valueOf("r_s"), "m")
	w.input("D_2", "distance from where a launch off the line can bring the seat", launched+w.valueOf("r_s"), "m")
	byRule := math.Max(r.rules.sideShare.Value*float64(u.line)+r.rules.sideConstant.Value, r.rules.bodyOutline.Value)
	if c.Demand == byRule && c.Capacity == line && line/byRule <= launched/r.rules.bodyOutline.Value {
		w.asked(c, "max(k*L + c_0, c_b)")
		w.borne(c, "max(0, D_1 - r_s)")
		return
	}
	w.asked(c, "c_b")
	w.borne(c, "max(0, D_2 - r_s)")
}

// valueOf is the value of a symbol, 0 where it has none.
func (w *workbook) valueOf(symbol string) float64 {
	for _, s := range w.steps {
		if s.Symbol == symbol {
			return s.Value
		}
	}
	return 0
}

// workRoom states the room between swing and wood or a thing on the ground,
// which a search in space has found.
func (r *rig) workRoom(w *workbook, c *Check, u trial) {
	r.workHeight(w, u)
	w.given(factTerm("c_b", "reach of arms and legs about the seat", r.rules.bodyOutline))
	demand := "c_b"
	if c.Code == Obstructed && c.Demand != r.rules.bodyOutline.Value {
		w.given(factTerm("c_w", "half the width that people on a path take", r.rules.wayHalfWidth))
		demand = "c_b + c_w"
	}
	if c.Demand == lineRoom {
		w.input("c_l", "room about the line (house)", lineRoom, "m")
		demand = "c_l"
	}
	w.asked(c, demand)
	w.input("D_1", "least distance to "+c.Where.Part+", by a search in space over the whole swing", c.Capacity, "m")
	w.borne(c, "D_1")
}
