package knowledge

import (
	"cmp"
	"slices"

	"boughline/source"
)

// greenWeight is the density of the living stem of one species.
type greenWeight struct {
	species           string
	wood, woodAndBark source.Fact
}

func loadGreenWeights(l *loader) []greenWeight {
	var all []greenWeight
	for _, r := range l.read("green_weight") {
		all = append(all, greenWeight{
			species:     r.text("species"),
			wood:        r.fact("wood_kg_m3", "kg/m3"),
			woodAndBark: r.fact("wood_and_bark_kg_m3", "kg/m3"),
		})
	}
	return all
}

// densities lists the green densities the tables hold for the species.
func (b *Base) densities(s Species) []source.Fact {
	var found []source.Fact
	for _, w := range b.woodRows(s) {
		if w.GreenDensity != nil {
			found = append(found, *w.GreenDensity)
		}
	}
	names := append(append([]string{s.Scientific}, s.Names...), s.WoodSpecies...)
	for _, g := range b.greenWeights {
		if slices.Contains(names, g.species) {
			found = append(found, g.wood, g.woodAndBark)
		}
	}
	return found
}

// greenDensity returns the heaviest density the sources give the species,
// with the lightest as Low for where weight helps. Where none is known it is
// the heaviest of the group, and says so.
func (b *Base) greenDensity(s Species) source.Fact {
	if found := b.densities(s); len(found) > 0 {
		return heaviest(found)
	}
	var group []source.Fact
	for _, other := range b.species {
		if s.Group.covers(other.Group) {
			group = append(group, b.densities(other)...)
		}
	}
	f := heaviest(group)
	f.Note = "no green density for this species: the heaviest of its group"
	return f
}

func heaviest(found []source.Fact) source.Fact {
	byValue := func(a, b source.Fact) int { return cmp.Compare(a.Value, b.Value) }
	f := slices.MaxFunc(found, byValue)
	f.Low = slices.MinFunc(found, byValue).Value
	f.High = f.Value
	return f
}
