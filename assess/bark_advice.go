package assess

import (
	"math"

	"boughline/engine/bark"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// barkReasons tells what the anchor does to the bark. The figures advise, they
// do not bar: thick bark with a sleeve for one day is accepted practice.
func (r *rig) barkReasons() []Reason {
	anchor := r.wrapped()
	if anchor == nil {
		return nil
	}
	contact, ok := r.contact(anchor)
	width := resolve(r.k, *anchor.Width).Value
	pressure, err := contact.Pressure(width)
	if !ok || err != nil {
		return nil
	}
	shear, err := contact.Shear(width)
	if err != nil {
		return nil
	}
	code := BarkPressed
	if r.h.Sleeve == "" || r.h.Sleeve == "none" {
		code = BarkUncovered
	}
	return []Reason{{Code: code, Remark: true, Path: r.at + ".sleeve", Text: anchor.Name, Terms: []Term{
		{Symbol: "p", Name: "pressure on the bark at the greatest pull", Value: float64(pressure), Unit: "Pa"},
		{Symbol: "tau", Name: "pull along the bark at the greatest pull", Value: float64(shear), Unit: "Pa"},
		factTerm("f_b", "bond of bark to wood in the growing season, the weaker of two broadleaves", r.k.Parameter(r.byGroup(knowledge.BarkBondOakGrowing, knowledge.BarkBondSpruceGrowing))),
	}}}
}

// wrapped is the part that holds the limb, where its width is known.
func (r *rig) wrapped() *survey.Part {
	if r.anchor != nil && r.anchor.part != nil {
		if p := r.anchor.part; p.Width != nil {
			return p
		}
		return nil
	}
	for i := range r.gear.Parts {
		if p := &r.gear.Parts[i]; p.Width != nil && (p.Hitch != "" || p.Kind == "sling") {
			return p
		}
	}
	return nil
}

// contact is the anchor on the limb at the greatest pull straight down: a
// sling round the limb touches half of it, and an inclined limb is pulled along.
func (r *rig) contact(p *survey.Part) (bark.Contact, bool) {
	pull, slope := swing.PeakPull(r.asked.mass+r.riders.seat, angle(r.rules.designAmplitude)), r.inclination()
	if r.anchor != nil {
		pull, slope = r.anchor.greatest(r.asked.mass+r.riders.seat), r.pullAlong()
	}
	d := r.on.diameter(float64(r.arm.Value))
	leg := pull
	if p.Hitch == "basket" {
		leg = pull * quantity.Force(math.Min(1, basketPull(p)))
	}
	return bark.Contact{
		Leg: leg, Along: pull * quantity.Force(slope.Sin()),
		Radius: (d.upright.Value + d.across.Value) / 4, Wrap: math.Pi,
	}, d.upright.Value > 0
}
