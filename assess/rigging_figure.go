package assess

import (
	"slices"

	"boughline/engine/bark"
	"boughline/engine/space"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// RiggingFigure is what the checks know of a hang that whoever rigs it needs:
// read only, at the use asked for.
type RiggingFigure struct {
	// Height is that of the limb's underside above the ground at the plumb line;
	// HeightMeasured is false where it was worked out over level ground.
	Height         quantity.Measured[quantity.Length]
	HeightMeasured bool
	// Upright and Across are the diameters of the limb over bark at the hang point,
	// Axis its direction there and Point the place on its axis.
	Upright, Across quantity.Measured[quantity.Length]
	Axis, Point     quantity.Vec3
	Azimuth         quantity.Angle // of the swing
	Amplitude       quantity.Angle // declared
	// Launch is by how much a launch may leave the swing line.
	Launch quantity.Angle
	// Resting is the weight of riders, seat and line; Pull is the greatest.
	Resting, Pull quantity.Force
	// Sag is how far the hang point goes down under Resting, with the band that
	// holds nine sound limbs in ten.
	Sag, SagLow, SagHigh quantity.Length
	// Stiffness is the pull that would stretch the line by its own length, the low
	// and the high end where it is not stated.
	StiffnessLow, StiffnessHigh quantity.Force
	StiffnessRef                source.Ref
	StiffnessStated             bool
	Parts                       []PartFigure
	// Contact is the anchor on the bark at the greatest pull; its leg is 0 where the
	// thickness of the limb is not known.
	Contact bark.Contact
	// Period is that of a swing to and fro at the declared amplitude.
	Period   quantity.Time
	Ground   space.Ground // on the swing line, level where it was not surveyed
	Surveyed bool         // whether the ground was
	Conifer  bool
	// Month is that of the same season north of the equator, 0 where no day is set.
	Month int
}

// PartFigure is a part of the chain with its sizes as measured; nil where they
// are not stated.
type PartFigure struct {
	Part                     *survey.Part
	Length, Thickness, Width *quantity.Measured[quantity.Length]
}

// Rigging hands out what the checks know of a hang. Errors say which figure of
// limb or line is out of range.
func (h HangFigure) Rigging() (RiggingFigure, error) {
	r := h.rig
	mass := r.asked.mass + r.riders.seat
	height, measured := r.hangHeight()
	d := r.on.diameter(float64(r.arm.Value))
	f := RiggingFigure{
		Height: height, HeightMeasured: measured, Upright: d.upright, Across: d.across,
		Axis: r.on.direction(float64(r.arm.Value)), Point: r.hangPoint(), Azimuth: r.azimuth, Amplitude: r.asked.amplitude,
		Launch: angle(r.rules.sidewaysLaunch), Resting: mass.Weight(), Pull: swing.PeakPull(mass, angle(r.rules.designAmplitude)),
		Ground: r.groundsOr(0)[0], Surveyed: r.lie != nil, Conifer: r.species.Group == knowledge.Conifer,
	}
	if !r.survey.Day.IsZero() {
		f.Month = r.northernMonth(r.survey.Day)
	}
	sag, err := r.sagBefore()
	if err != nil {
		return f, err
	}
	f.Sag, f.SagLow, f.SagHigh = sag.under(f.Resting)
	f.StiffnessLow = quantity.Force(r.lineStiffness(1, softest))
	f.StiffnessHigh = quantity.Force(r.lineStiffness(1, stiffest))
	f.StiffnessRef, f.StiffnessStated = r.k.Parameter(knowledge.RopeAxialStiffness).Ref, f.StiffnessLow == f.StiffnessHigh
	for i := range r.gear.Parts {
		f.Parts = append(f.Parts, r.partFigure(&r.gear.Parts[i]))
	}
	if anchor := r.holdingPart(); anchor != nil {
		f.Contact, _ = r.contact(anchor)
	}
	f.Period, err = swing.Period(r.asked.line, r.asked.amplitude)
	return f, err
}

func (r *rig) partFigure(p *survey.Part) PartFigure {
	known := func(m *survey.MeasuredLength) *quantity.Measured[quantity.Length] {
		if m == nil {
			return nil
		}
		v := resolve(r.k, *m)
		return &v
	}
	return PartFigure{Part: p, Length: known(p.Length), Thickness: known(p.Thickness), Width: known(p.Width)}
}

// holdingPart is the part that goes round the limb.
func (r *rig) holdingPart() *survey.Part {
	for i := range r.gear.Parts {
		if p := &r.gear.Parts[i]; p.Hitch != "straight" && (p.Hitch != "" || p.Kind == "sling") {
			return p
		}
	}
	return nil
}

// Moved judges the same hang at another place along its limb. Ground, height
// and people are taken as they are at the hang point: for places close by. A load
// test of the hang point says nothing of it. The error says what cannot be computed there.
func (h HangFigure) Moved(along quantity.Length) (Hang, error) {
	t, s := *h.rig.tree, *h.rig.s
	s.Hangs = slices.Clone(s.Hangs)
	t.s = &s // t.hangs still are those that load tests speak of
	t.site = slices.Clone(t.site)
	t.site[slices.Index(t.site, h.rig.tree)] = &t
	i := slices.IndexFunc(s.Hangs, func(other survey.Hang) bool { return other.ID == h.rig.h.ID })
	moved := &s.Hangs[i]
	moved.ID += " moved"
	moved.At.Value = along
	r, err := t.rigOf(moved, h.rig.at)
	if err != nil {
		return Hang{}, err
	}
	return r.assess(), nil
}

// Judged returns what follows for the hang where it is.
func (h HangFigure) Judged() Hang { return h.rig.assess() }
