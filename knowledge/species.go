package knowledge

import (
	"strings"
	"unicode"

	"boughline/source"
)

// Species is a kind of tree. Names, shedding and reputation advise; wood
// strength alone does not say which limbs break.
type Species struct {
	Scientific           string
	Common               string
	Names                []string // every other name it is found by
	Group                Group
	Known                bool     // it stands in the tables
	WoodSpecies          []string // scientific names under which its wood is tabled
	BarkSpecies          string   // name under which its bark is tabled, empty for none
	LimbReputation       string
	Shedding             string
	Bark                 string
	Durability           string // of the heartwood against fungi, classes of EN 350
	Compartmentalisation string
	Diseases             []string
	Note                 string
	FromMemory           bool
	PartlyFromMemory     bool
	Refs                 []source.Ref
}

func loadSpecies(l *loader) []Species {
	var all []Species
	for _, r := range l.read("species") {
		common := r.list("common")
		if len(common) == 0 {
			r.problem("there is no common name")
			continue
		}
		s := Species{
			Scientific: r.text("scientific"), Common: common[0], Names: append(common[1:], r.list("synonyms")...),
			Group: r.group(), Known: true, WoodSpecies: r.list("wood_species"), BarkSpecies: r.text("bark_species"),
			LimbReputation: r.text("limb_reputation"), Shedding: r.text("shedding"), Bark: r.text("bark"),
			Durability: r.text("durability"), Compartmentalisation: r.text("compartmentalisation"),
			Diseases: r.list("diseases"), Note: r.text("note"), Refs: r.refs,
		}
		s.FromMemory, s.PartlyFromMemory = r.memory()
		all = append(all, s)
	}
	return all
}

// indexSpecies maps every name to its species and refuses a name of two.
func indexSpecies(l *loader, all []Species) map[string]int {
	index := map[string]int{}
	for i, s := range all {
		for _, name := range append([]string{s.Scientific, s.Common}, s.Names...) {
			key := plainName(name)
			if j, ok := index[key]; ok && j != i {
				l.report("species.csv: %q names both %s and %s", name, all[j].Scientific, s.Scientific)
			}
			index[key] = i
		}
	}
	return index
}

// plainName is name in lower case without punctuation and hybrid signs.
func plainName(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(c rune) bool { return !unicode.IsLetter(c) })
	kept := words[:0]
	for _, w := range words {
		if w != "x" {
			kept = append(kept, w)
		}
	}
	return strings.Join(kept, " ")
}

// Species finds a species by its scientific or common name or a synonym,
// whatever the case and punctuation. For a name the tables don't hold it
// returns false; Wood and Bark then take a Species with the Group alone.
func (b *Base) Species(name string) (Species, bool) {
	i, ok := b.speciesByName[plainName(name)]
	if !ok {
		return Species{}, false
	}
	return b.species[i], true
}

// SpeciesList lists the species of the tables.
func (b *Base) SpeciesList() []Species { return append([]Species(nil), b.species...) }
