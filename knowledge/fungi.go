package knowledge

import (
	"slices"
	"strconv"

	"boughline/quantity"
	"boughline/source"
)

// Fungus is a fungus of living trees: where it grows, what it looks like and
// what it means for people. Hosts are genera. An independent mycologist has
// not checked what is from memory.
type Fungus struct {
	Name, Common          string
	Synonyms, Regions     []string
	Hosts, RareHosts      []string
	WiderHosts            string // any, broadleaves, or empty for the hosts alone
	Positions             []string
	Months                []int
	Persistence           string
	Forms, Undersides     []string
	UpperYoung, UpperOld  string
	Underside, Flesh      string
	SporePrint            string
	Commonness            float64  // weight against other fungi, house
	YoungColours          []string // of the upper side, as the key takes them
	OldColours            []string
	UndersideColours      []string
	FleshColours          []string
	SporeColours          []string
	Marks, Lacks          []string // what it shows, what it never shows
	SizeLow, SizeHigh     quantity.Length
	OtherSigns            []string
	Decays                []string
	PartsLosingStrength   []string
	TypicalFailure, Speed string
	Hidden                string
	ConfusedWith          []string
	MeaningForPeople      string
	NoPeople              bool   // no people on this tree or part, whatever is measured; a house judgement
	Note                  string // where sources disagree
	FromMemory            bool
	PartlyFromMemory      bool
	Refs                  []source.Ref
}

func loadFungi(l *loader) []Fungus {
	var all []Fungus
	for _, r := range l.read("fungi") {
		f := Fungus{
			Name: r.text("name"), Common: r.text("common"), Synonyms: r.list("synonyms"), Regions: r.list("region"),
			Hosts: r.list("hosts"), RareHosts: r.list("rare_hosts"), WiderHosts: r.text("wider_hosts"),
			Positions: r.list("position"), Months: r.months(), Persistence: r.text("persistence"),
			Forms: r.list("form"), Undersides: r.list("underside_type"), UpperYoung: r.text("upper_young"),
			UpperOld: r.text("upper_old"), Underside: r.text("underside"), Flesh: r.text("flesh"),
			SporePrint: r.text("spore_print"), OtherSigns: r.list("other_signs"), Decays: r.list("decay_code"),
			PartsLosingStrength: r.list("part_loses_strength"), TypicalFailure: r.text("typical_failure"),
			Speed: r.text("speed"), Hidden: r.text("hidden"), ConfusedWith: r.list("confused_with"),
			MeaningForPeople: r.text("meaning_for_people"), Note: r.text("note"), Refs: r.refs, NoPeople: r.yes("no_people"),
			SizeLow: r.centimetres("size_low_cm"), SizeHigh: r.centimetres("size_high_cm"), Commonness: r.commonness(),
			YoungColours: r.list("young_colours"), OldColours: r.list("old_colours"), UndersideColours: r.list("underside_colours"),
			FleshColours: r.list("flesh_colours"), SporeColours: r.list("spore_colours"), Marks: r.list("marks"), Lacks: r.list("lacks"),
		}
		if f.SizeLow > f.SizeHigh {
			r.problem("the least size is above the greatest")
		}
		f.FromMemory, f.PartlyFromMemory = r.memory()
		all = append(all, f)
	}
	return all
}

// yes reads a cell that says yes or no.
func (r row) yes(column string) bool {
	text := r.text(column)
	if text != "yes" && text != "no" {
		r.problem("%s is %q; expected yes or no", column, text)
	}
	return text == "yes"
}

func (r row) months() []int {
	var months []int
	for _, text := range r.list("months") {
		m, err := strconv.Atoi(text)
		if err != nil || m < 1 || m > 12 {
			r.problem("%q is no month", text)
		}
		months = append(months, m)
	}
	return months
}

// Fungi lists the fungi of the table.
func (b *Base) Fungi() []Fungus { return slices.Clone(b.fungi) }

// Fungus finds a fungus by its name or a synonym, whatever the case.
func (b *Base) Fungus(name string) (Fungus, bool) {
	key := plainName(name)
	for _, f := range b.fungi {
		names := append([]string{f.Name}, f.Synonyms...)
		if slices.ContainsFunc(names, func(n string) bool { return plainName(n) == key }) {
			return f, true
		}
	}
	return Fungus{}, false
}
