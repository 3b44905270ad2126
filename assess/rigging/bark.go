package rigging

import (
	"boughline/assess"
	"boughline/engine/bark"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// Bark compares ways of protecting the bark. The figures advise, they bar
// nothing.
type Bark struct {
	Growing bool            `json:"growing_season"`
	Season  bool            `json:"season_known"` // otherwise the growing one counts
	Bond    quantity.Stress `json:"bond_pa"`
	BondRef source.Ref      `json:"bond_ref"`
	Hours   float64         `json:"hours"`
	PerHour quantity.Length `json:"rubbing_in_an_hour_m"` // of a line that rubs
	Covers  []Cover         `json:"covers"`               // the gentlest first
	Fault   string          `json:"fault,omitempty"`
	Terms   []assess.Term   `json:"terms,omitempty"`
}

// Cover is what one way of bearing on the bark does to it, at the greatest pull.
type Cover struct {
	Name      string          `json:"name"`
	InUse     bool            `json:"in_use"`
	Width     quantity.Length `json:"width_m"`
	Stated    bool            `json:"width_stated"` // by the chain, not by the table
	Pressure  quantity.Stress `json:"pressure_pa"`
	Shear     quantity.Stress `json:"shear_pa"`
	BondShare float64         `json:"share_of_bond"`
	Rubbing   quantity.Length `json:"rubbing_in_the_day_m"` // 0 where it does not rub
	Needs     string          `json:"needs"`
	Ref       source.Ref      `json:"ref"`
}

func (r rigger) bark() (Bark, error) {
	f := r.figure
	var b Bark
	r.season(&b)
	if !(f.Contact.Leg > 0) || !(f.Contact.Radius > 0) {
		b.Fault = "no part of the chain goes round the limb, or the limb's thickness is not known"
		return b, nil
	}
	b.Hours = r.value(knowledge.HoursOfUse) / 60
	if r.o.Hours != nil {
		b.Hours = *r.o.Hours
	}
	var err error
	if b.PerHour, err = bark.RubbingPath(f.Contact.Radius, f.Amplitude, f.Period, 3600); err != nil {
		return b, err
	}
	covers := r.covers()
	var plain []bark.Cover
	for _, c := range covers {
		plain = append(plain, bark.Cover{Name: c.Name, Width: c.Width, Rubs: c.rubs})
	}
	advice, err := bark.Compare(f.Contact, plain, b.Bond, b.PerHour*quantity.Length(b.Hours))
	if err != nil {
		return b, err
	}
	for _, a := range advice {
		for _, c := range covers {
			if c.Name == a.Cover.Name {
				c.Pressure, c.Shear, c.BondShare, c.Rubbing = a.Pressure, a.Shear, a.BondShare, a.Rubbing
				b.Covers = append(b.Covers, c.Cover)
			}
		}
	}
	b.Terms = r.barkTerms(b)
	return b, nil
}

// season picks the bond of bark to wood: of two broadleaves the weaker.
func (r rigger) season(b *Bark) {
	month := r.figure.Month
	b.Season = month > 0
	b.Growing = !b.Season || month >= int(r.value(knowledge.BarkGrowingFrom)) && month <= int(r.value(knowledge.BarkGrowingTo))
	var list []string
	switch {
	case r.figure.Conifer && b.Growing:
		list = []string{knowledge.BarkBondSpruceGrowing}
	case r.figure.Conifer:
		list = []string{knowledge.BarkBondSpruceDormant}
	case b.Growing:
		list = []string{knowledge.BarkBondOakGrowing, knowledge.BarkBondBeechGrowing}
	default:
		list = []string{knowledge.BarkBondOakDormant, knowledge.BarkBondBeechDormant}
	}
	for _, key := range list {
		if fact := r.k.Parameter(key); b.Bond == 0 || quantity.Stress(fact.Value) < b.Bond {
			b.Bond, b.BondRef = quantity.Stress(fact.Value), fact.Ref
		}
	}
}

type coverRow struct {
	Cover
	rubs bool
}

func (r rigger) covers() []coverRow {
	used := r.coverInUse()
	var list []coverRow
	for _, row := range r.k.BarkCovers() {
		c := coverRow{Cover{Name: row.Name, InUse: row.Kind == used, Width: quantity.Length(row.Width.Value), Needs: row.Needs, Ref: row.Width.Ref}, row.Rubs}
		if m := r.statedWidth(row.Kind); m != nil {
			c.Width, c.Stated = m.Value, true
		}
		list = append(list, c)
	}
	return list
}

// statedWidth is the width of the line or the strap where the chain says it.
func (r rigger) statedWidth(kind string) *quantity.Measured[quantity.Length] {
	switch p := r.holding(); {
	case kind == "line" && r.rope() != nil:
		return r.rope().Thickness
	case kind == "strap" && p != nil && p.Part.Kind == "sling":
		return p.Width
	}
	return nil
}

// coverInUse is the sleeve that the hang states, or else a strap where a sling
// holds the limb, or the bare line.
func (r rigger) coverInUse() string {
	if sleeve := r.hang.Survey().Sleeve; sleeve != "" && sleeve != "none" {
		return sleeve
	}
	if p := r.holding(); p != nil && p.Part.Kind == "sling" {
		return "strap"
	}
	return "line"
}

func (r rigger) barkTerms(b Bark) []assess.Term {
	f := r.figure
	return []assess.Term{
		{Symbol: "T", Name: "pull in one leg of the anchor, at the greatest pull", Value: float64(f.Contact.Leg), Unit: "N"},
		{Symbol: "R", Name: "radius of the limb over bark", Value: float64(f.Contact.Radius), Unit: "m", How: f.Upright.How},
		{Symbol: "F", Name: "pull along the limb, at the greatest pull", Value: float64(f.Contact.Along), Unit: "N"},
		{Symbol: "f_b", Name: "bond of bark to wood", Value: float64(b.Bond), Unit: "Pa", Refs: refs(b.BondRef)},
		{Symbol: "a", Name: "amplitude declared", Value: float64(f.Amplitude), Unit: "rad"},
		{Symbol: "t", Name: "time of a swing to and fro", Value: float64(f.Period), Unit: "s"},
		{Symbol: "h", Name: "hours of riding", Value: b.Hours, Unit: "h", Refs: refs(r.k.Parameter(knowledge.HoursOfUse).Ref)},
	}
}
