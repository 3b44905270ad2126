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

// Creep says whether an anchor that only lies on the limb slides along it.
type Creep struct {
	Inclination quantity.Angle `json:"inclination_rad"`
	Most        quantity.Angle `json:"slides_above_rad"` // by the low friction
	// Rest and Swing are the friction needed to stay, at rest and at the worst of a
	// swing, launches off the swing line among them.
	Rest     float64 `json:"friction_at_rest"`
	Swing    float64 `json:"friction_in_swing"`
	Friction float64 `json:"friction"`
	High     float64 `json:"friction_high"`
	// Grips says that the anchor chokes the limb, which holds it all round.
	Grips bool          `json:"grips"`
	Terms []assess.Term `json:"terms"`
}

// SlidesAtRest and SlidesInSwing say whether friction alone would not hold it.
func (c Creep) SlidesAtRest() bool { return c.Rest > c.Friction }

// SlidesInSwing is SlidesAtRest at the worst of a swing.
func (c Creep) SlidesInSwing() bool { return c.Swing > c.Friction }

func (r rigger) creep() Creep {
	f, mu := r.figure, r.k.Parameter(knowledge.AnchorFriction)
	most, _ := gear.CreepAngle(mu.Low) // the table holds no friction below 0
	c := Creep{
		Inclination: quantity.Angle(math.Asin(f.Axis.Z)), Most: most, Friction: mu.Low, High: mu.High,
		Rest: gear.FrictionToStay(f.Axis, quantity.Vec3{Z: -1}),
	}
	for _, off := range []quantity.Angle{-f.Launch, 0, f.Launch} {
		c.Swing = max(c.Swing, gear.FrictionInSwing(f.Axis, quantity.Heading(f.Azimuth+off, 0), f.Amplitude))
	}
	if p := r.holding(); p != nil {
		c.Grips = p.Part.Hitch == "choker" || p.Part.Hitch == "girth"
	}
	c.Terms = []assess.Term{
		{Symbol: "i", Name: "inclination of the limb at the hang point", Value: float64(c.Inclination), Unit: "rad"},
		r.term("mu", "friction of a line or sling on bark", knowledge.AnchorFriction),
		{Symbol: "a", Name: "amplitude declared", Value: float64(f.Amplitude), Unit: "rad"},
		r.term("psi", "by how much a launch may leave the swing line", knowledge.SidewaysLaunch),
	}
	return c
}

// Freeing is how the anchor comes down, with the other ways beside it.
type Freeing struct {
	Anchor    string     `json:"anchor"`
	InUse     bool       `json:"in_use"`
	Job       string     `json:"job"`
	FromBelow string     `json:"from_below"`
	Pull      string     `json:"pull"`
	Remains   string     `json:"remains"`
	Ref       source.Ref `json:"ref"`
}

func (r rigger) freeing() []Freeing {
	used := ""
	if p := r.holding(); p != nil {
		used = anchorName(p.Part)
	}
	var list []Freeing
	for _, f := range r.k.FreeingList() {
		list = append(list, Freeing{f.Anchor, f.Anchor == used, f.Job, f.FromBelow, f.Pull, f.Remains, f.Ref})
	}
	return list
}

// anchorName is the row of the table that an anchor has.
func anchorName(p *survey.Part) string {
	switch {
	case p.Kind == "rope" && p.Hitch == "choker":
		return "running bowline"
	case p.Hitch == "girth" || p.Hitch == "" && p.Kind == "sling": // not stated: as the checks take it
		return "girth hitch"
	}
	return p.Hitch
}
