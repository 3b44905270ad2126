package rigging

import (
	"math"

	"boughline/assess"
	"boughline/engine/gear"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// Line is the length of line to cut. Bands hold nine cases in ten.
type Line struct {
	// Seat is the height wanted of the seat at rest under its riders, Wished that it
	// was asked for; otherwise it is the one that the line of the hang gives.
	Seat   quantity.Length `json:"seat_m"`
	Wished bool            `json:"seat_asked_for"`
	// Whole is the length from limb to seat without load, Finished that of the line
	// in it, from eye to eye.
	Whole        quantity.Length `json:"limb_to_seat_m"`
	Finished     quantity.Length `json:"finished_m"`
	FinishedLow  quantity.Length `json:"finished_low_m"`
	FinishedHigh quantity.Length `json:"finished_high_m"`
	// Knots is the line that lies in knots and round the limb, Tails what is left
	// beyond them.
	Knots quantity.Length `json:"knots_m"`
	Tails quantity.Length `json:"tails_m"`
	// Cut is the length to cut, up to whole centimetres; Adjust what the adjustable end must
	// be able to take up of it.
	Cut     quantity.Length `json:"cut_m"`
	Adjust  quantity.Length `json:"adjustable_m"`
	Sag     quantity.Length `json:"limb_sag_m"`
	Stretch quantity.Length `json:"line_stretch_m"`
	Assumed []string        `json:"assumed,omitempty"` // parts and ends counted by the house's lengths
	Fault   string          `json:"fault,omitempty"`   // why there is none
	Terms   []assess.Term   `json:"terms,omitempty"`
}

// span is a value with the band that holds nine cases in ten.
type span struct{ value, low, high float64 }

func measuredSpan(m quantity.Measured[quantity.Length]) span {
	return span{float64(m.Value), float64(m.Low()), float64(m.High())}
}

// lineInputs are all that the length of the line comes from.
type lineInputs struct {
	height, sag, axial, others span
	resting, seat              float64
}

// whole is the length from limb to seat without load: the seat hangs at
// H - w - L (1 + W/EA), the line taken to stretch as one with the rope, as the
// checks do.
func (in lineInputs) whole(height, sag, axial float64) float64 {
	return (height - in.seat - sag) / (1 + in.resting/axial)
}

// finished is the line alone, with the band over all that is in doubt, each by
// itself and added as independent errors add.
func (in lineInputs) finished() span {
	at := func(height, sag, axial, others float64) float64 { return in.whole(height, sag, axial) - others }
	h, w, e, o := in.height, in.sag, in.axial, in.others
	middle := at(h.value, w.value, e.value, o.value)
	longer := math.Sqrt(squares(at(h.high, w.value, e.value, o.value)-middle, at(h.value, w.low, e.value, o.value)-middle,
		at(h.value, w.value, e.high, o.value)-middle, at(h.value, w.value, e.value, o.low)-middle))
	shorter := math.Sqrt(squares(at(h.low, w.value, e.value, o.value)-middle, at(h.value, w.high, e.value, o.value)-middle,
		at(h.value, w.value, e.low, o.value)-middle, at(h.value, w.value, e.value, o.high)-middle))
	return span{middle, middle - shorter, middle + longer}
}

func squares(list ...float64) float64 {
	sum := 0.0
	for _, x := range list {
		sum += x * x
	}
	return sum
}

func (r rigger) line() Line {
	rope := r.rope()
	if rope == nil {
		return Line{Fault: "the chain has no rope to cut"}
	}
	var l Line
	in := r.lineInputs(&l, rope)
	if l.Fault != "" {
		return l
	}
	l.Seat = quantity.Length(in.seat)
	l.Wished = r.o.Seat != nil
	l.Whole = quantity.Length(in.whole(in.height.value, in.sag.value, in.axial.value))
	l.Sag, l.Stretch = quantity.Length(in.sag.value), l.Whole*quantity.Length(in.resting/in.axial.value)
	f := in.finished()
	l.Finished, l.FinishedLow, l.FinishedHigh = quantity.Length(f.value), quantity.Length(f.low), quantity.Length(f.high)
	if !(f.low > 0) {
		l.Fault = "no line is left between the limb and the seat, the other parts of the chain taken off"
		return l
	}
	r.cut(&l, rope)
	r.lineTerms(&l, in)
	return l
}

func (r rigger) lineInputs(l *Line, rope *assess.PartFigure) lineInputs {
	f := r.figure
	in := lineInputs{
		height: measuredSpan(f.Height), sag: span{float64(f.Sag), float64(f.SagLow), float64(f.SagHigh)},
		axial:   span{math.Sqrt(float64(f.StiffnessLow * f.StiffnessHigh)), float64(f.StiffnessLow), float64(f.StiffnessHigh)},
		resting: float64(f.Resting),
	}
	var down, up float64
	for i := range f.Parts {
		if p := &f.Parts[i]; p.Part != rope.Part {
			s := r.lengthOf(l, p)
			in.others.value += s.value
			down, up = down+(s.value-s.low)*(s.value-s.low), up+(s.high-s.value)*(s.high-s.value)
		}
	}
	in.others.low, in.others.high = in.others.value-math.Sqrt(down), in.others.value+math.Sqrt(up)
	if r.o.Seat != nil {
		in.seat = float64(*r.o.Seat)
	} else {
		asked := float64(r.hang.Survey().Line.Value)
		in.seat = in.height.value - in.sag.value - asked*(1+in.resting/in.axial.value)
	}
	return in
}

// lengthOf is how much of the way from limb to seat a part takes.
func (r rigger) lengthOf(l *Line, p *assess.PartFigure) span {
	if p.Length == nil {
		fact, _ := r.k.PartLength(p.Part.Kind)
		l.Assumed = append(l.Assumed, p.Part.Name)
		return span{fact.Value, fact.Low, fact.High}
	}
	if holding := r.holding(); holding == nil || holding.Part != p.Part {
		return measuredSpan(*p.Length)
	}
	radius := r.radius()
	drop := func(length, radius quantity.Length) float64 {
		of := gear.ChokedDrop
		if p.Part.Hitch == "basket" {
			of = gear.BasketDrop
		}
		below, err := of(length, radius)
		if err != nil {
			l.Fault = p.Part.Name + " is too short to go round the limb"
		}
		return float64(below)
	}
	middle := drop(p.Length.Value, radius.Value)
	byLength, byLimb := drop(p.Length.High(), radius.Value)-middle, middle-drop(p.Length.Value, radius.High())
	half := math.Hypot(byLength, byLimb)
	return span{middle, middle - half, middle + half}
}

// cut adds knots, tails and what lies round the limb.
func (r rigger) cut(l *Line, rope *assess.PartFigure) {
	d := r.thickness(l, rope)
	var eats span
	var tails float64
	for _, j := range r.endKnots(l, rope.Part) {
		eats.value, eats.low, eats.high = eats.value+j.Eats.Value*d.value, eats.low+j.Eats.Low*d.low, eats.high+j.Eats.High*d.high
		tails += j.Tail.Value * d.high
	}
	if holding := r.holding(); holding != nil && holding.Part == rope.Part {
		radius := r.radius()
		eats.value += float64(gear.WayRound(radius.Value))
		eats.low += float64(gear.WayRound(radius.Low()))
		eats.high += float64(gear.WayRound(radius.High()))
	}
	l.Knots, l.Tails = quantity.Length(eats.value), quantity.Length(tails)
	cut := math.Ceil(100*(float64(l.FinishedHigh)+eats.high+tails)-1e-9) / 100
	l.Cut = quantity.Length(cut)
	l.Adjust = quantity.Length(math.Ceil(100*(cut-tails-float64(l.FinishedLow)-eats.low)-1e-9) / 100)
}

func (r rigger) thickness(l *Line, rope *assess.PartFigure) span {
	if rope.Thickness != nil {
		return measuredSpan(*rope.Thickness)
	}
	fact := r.k.Parameter(knowledge.RopeThickness)
	l.Assumed = append(l.Assumed, "thickness of "+rope.Part.Name)
	return span{fact.Value, fact.Low, fact.High}
}

// unstatedEnd is the eye that an end counts as which nobody has stated: of the
// usual ones it takes most line.
const unstatedEnd = "figure-eight end knot"

// endKnots are the knots at the two ends of the line.
func (r rigger) endKnots(l *Line, rope *survey.Part) []knowledge.KnotJob {
	var list []knowledge.KnotJob
	for _, end := range rope.Ends {
		if j, ok := r.k.KnotJob(end); ok {
			list = append(list, j)
			continue
		}
		list = append(list, r.unstated(l, end))
	}
	for len(list) < 2 {
		list = append(list, r.unstated(l, "an end of "+rope.Name))
	}
	return list
}

func (r rigger) unstated(l *Line, what string) knowledge.KnotJob {
	l.Assumed = append(l.Assumed, what)
	j, _ := r.k.KnotJob(unstatedEnd)
	return j
}

func (r rigger) lineTerms(l *Line, in lineInputs) {
	f := r.figure
	line := func(symbol, name string, value quantity.Length, of ...source.Ref) assess.Term {
		return assess.Term{Symbol: symbol, Name: name, Value: float64(value), Unit: "m", Refs: of}
	}
	stiffness := assess.Term{Symbol: "EA", Name: "pull that would stretch the line by its own length", Value: in.axial.value, Unit: "N"}
	if !f.StiffnessStated {
		stiffness.Refs, stiffness.Note = refs(f.StiffnessRef), "not stated: between both ends of the standard's range"
	}
	knots, _ := r.k.KnotJob(unstatedEnd)
	parts, _ := r.k.PartLength("sling")
	l.Terms = []assess.Term{
		{Symbol: "H", Name: "limb's underside above the ground", Value: in.height.value, Unit: "m", Sd: float64(f.Height.Sd), How: f.Height.How},
		line("s", "seat above the ground, at rest under its riders", l.Seat),
		{Symbol: "W", Name: "weight of riders, seat and line", Value: in.resting, Unit: "N"},
		stiffness,
		line("w", "sag of limb and stem under W", l.Sag),
		line("c", "the other parts of the chain, limb to line and line to seat", quantity.Length(in.others.value), parts.Ref),
		line("e", "line in knots and round the limb", l.Knots, knots.Eats.Ref),
		line("t", "tails to tie off", l.Tails, knots.Tail.Ref),
	}
}
