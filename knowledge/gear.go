package knowledge

import (
	"slices"

	"boughline/source"
)

// Material parts gear by the factor it is used with.
type Material string

// The materials.
const (
	Textile Material = "textile"
	Metal   Material = "metal"
)

// Gear is the least strength a standard asks of a piece of gear.
type Gear struct {
	Standard string
	Item     string
	Material Material
	Least    source.Fact // N
}

func loadGear(l *loader) []Gear {
	var all []Gear
	for _, r := range l.read("gear") {
		g := Gear{Standard: r.text("standard"), Item: r.text("item"), Material: Material(r.text("material")), Least: r.fact("least_kn", "kN")}
		g.Least.Note = r.text("note")
		if g.Material != Textile && g.Material != Metal {
			r.problem("the material %q is not known", g.Material)
		}
		all = append(all, g)
	}
	return all
}

// Gear finds the least strength by the standard, for example "EN 1891 A".
func (b *Base) Gear(standard string) (Gear, bool) {
	i := slices.IndexFunc(b.gear, func(g Gear) bool { return sameText(g.Standard, standard) })
	if i < 0 {
		return Gear{}, false
	}
	return b.gear[i], true
}

// GearList lists the gear of the table.
func (b *Base) GearList() []Gear { return slices.Clone(b.gear) }
