package knowledge

import (
	"math"
	"slices"

	"boughline/engine/fungi"
	"boughline/quantity"
	"boughline/source"
)

// Lookalike is something that people take for a fungus of living trees: no
// fungus at all, or a harmless one.
type Lookalike struct {
	fungi.Candidate
	Meaning          string
	FromMemory       bool
	PartlyFromMemory bool
	Refs             []source.Ref
}

func loadLookalikes(l *loader) []Lookalike {
	var all []Lookalike
	for _, r := range l.read("fungus_lookalikes") {
		advice, ok := fungi.ParseAdvice(r.text("advice"))
		if !ok {
			r.problem("the advice %q is not known", r.text("advice"))
		}
		k := Lookalike{Meaning: r.text("meaning"), Refs: r.refs, Candidate: fungi.Candidate{
			Name: r.text("name"), Kind: fungi.Kind(r.text("kind")), Commonness: r.commonness(), Advice: advice,
			Hosts: r.list("hosts"), Wider: widerGroup(r.text("wider_hosts")), Positions: r.list("position"), Months: r.months(),
			Forms: r.list("form"), Undersides: r.list("underside_type"), Marks: r.list("marks"), Lacks: r.list("lacks"),
			Colours: map[fungi.Field][]string{
				fungi.Upper: r.list("colours"), fungi.Underside: r.list("underside_colours"),
				fungi.Flesh: r.list("flesh_colours"), fungi.Spores: r.list("spore_colours"),
			},
			Smallest: r.centimetres("size_low_cm"), Largest: r.centimetres("size_high_cm"),
		}}
		if k.Kind != fungi.Harmless && k.Kind != fungi.NoFungus {
			r.problem("the kind %q is not known", k.Kind)
		}
		k.FromMemory, k.PartlyFromMemory = r.memory()
		all = append(all, k)
	}
	return all
}

// commonness turns the steps from 1, rare, to 5, very common, into a weight:
// each step doubles it (house).
func (r row) commonness() float64 {
	step := r.whole("commonness")
	if step < 1 || step > 5 {
		r.problem("commonness is %d; expected 1 to 5", step)
	}
	return math.Exp2(float64(step - 3))
}

func (r row) centimetres(column string) quantity.Length {
	return quantity.Length(r.number(column) / 100)
}

// Lookalikes lists what is taken for a fungus of living trees.
func (b *Base) Lookalikes() []Lookalike { return slices.Clone(b.fungusKey.lookalikes) }

func (b *Base) lookalike(name string) (Lookalike, bool) {
	i := slices.IndexFunc(b.fungusKey.lookalikes, func(k Lookalike) bool { return k.Name == name })
	if i < 0 {
		return Lookalike{}, false
	}
	return b.fungusKey.lookalikes[i], true
}

// candidates joins the fungi and the look-alikes.
func candidates(rows []Fungus, lookalikes []Lookalike) []fungi.Candidate {
	var all []fungi.Candidate
	for _, f := range rows {
		all = append(all, f.candidate())
	}
	for _, k := range lookalikes {
		all = append(all, k.Candidate)
	}
	return all
}

func (f Fungus) candidate() fungi.Candidate {
	return fungi.Candidate{
		Name: f.Name, Kind: fungi.Decay, Commonness: f.Commonness, Hosts: f.Hosts, RareHosts: f.RareHosts, Wider: widerGroup(f.WiderHosts),
		Positions: f.Positions, Months: f.Months, Persistent: f.Hiding() < fungi.PartYear, Forms: f.Forms, Undersides: f.Undersides,
		Colours: map[fungi.Field][]string{
			fungi.Upper: append(slices.Clone(f.YoungColours), f.OldColours...), fungi.Underside: f.UndersideColours,
			fungi.Flesh: f.FleshColours, fungi.Spores: f.SporeColours,
		},
		Marks: f.Marks, Lacks: f.Lacks, Smallest: f.SizeLow, Largest: f.SizeHigh,
		Weakens: f.PartsLosingStrength, Hiding: f.Hiding(), Advice: f.Advice(),
	}
}

// Advice is what the fungus means for people (house judgement on the part of
// the tree that it weakens): nobody on the tree where the row says so, a
// measurement first where it weakens stem, foot or roots, and otherwise nobody
// on the part that bears it.
func (f Fungus) Advice() fungi.Advice {
	switch {
	case f.NoPeople:
		return fungi.NoPeople
	case slices.ContainsFunc(f.PartsLosingStrength, func(p string) bool { return p != "limb" && p != "wound" }):
		return fungi.MeasureFirst
	}
	return fungi.NotThisPart
}

// Hiding says how much of the year it can be seen. Brackets and crusts of one
// season leave remains; fleshy fruit bodies do not.
func (f Fungus) Hiding() fungi.Hiding {
	if len(f.Months) == 12 {
		return fungi.AllYear
	}
	for _, form := range f.Forms {
		if form == "bracket" || form == "hoof" || form == "crust" {
			return fungi.LeavesOld
		}
	}
	return fungi.PartYear
}

// widerGroup is the group of hosts that the tables name in the plural.
func widerGroup(text string) string {
	switch text {
	case "broadleaves":
		return string(Broadleaf)
	case "conifers":
		return string(Conifer)
	}
	return text
}
