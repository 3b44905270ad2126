package knowledge

import (
	"slices"

	"boughline/source"
)

// WoodRow holds what one source says of the green wood of one species. Stresses
// are in Pa, densities in kg/m3; a figure the source does not give is nil.
type WoodRow struct {
	ID      string
	Name    string
	Species []string // scientific names
	Group   Group
	// Derived marks a row worked out from dry wood or from beams, not a test
	// of small green pieces.
	Derived                                  bool
	MOR, MOE, ProportionalLimit, Compression *source.Fact
	Shear, CompressionAcross, TensionAcross  *source.Fact
	GreenDensity                             *source.Fact
	BasicGravity, StrengthDeviation          *source.Fact
	Refs                                     []source.Ref
	Note                                     string
}

func loadWood(l *loader) []WoodRow {
	var rows []WoodRow
	for _, r := range l.read("wood") {
		w := WoodRow{
			ID: r.text("id"), Name: r.text("name"), Species: r.list("species"), Group: r.group(),
			Derived: r.text("basis") == "derived", Note: r.text("note"), Refs: r.refs,
			MOR: r.strength(), MOE: r.maybeFact("moe_mpa", "MPa"),
			ProportionalLimit: r.maybeFact("proportional_limit_mpa", "MPa"),
			Compression:       r.maybeFact("compression_mpa", "MPa"),
			Shear:             r.maybeFact("shear_mpa", "MPa"),
			CompressionAcross: r.maybeFact("compression_across_mpa", "MPa"),
			TensionAcross:     r.maybeFact("tension_across_mpa", "MPa"),
			BasicGravity:      r.maybeFact("basic_gravity", "1"),
			GreenDensity:      r.maybeFact("green_density_kg_m3", "kg/m3"),
			StrengthDeviation: r.maybeFact("mor_sd_mpa", "MPa"),
		}
		rows = append(rows, w)
	}
	return rows
}

// WoodRows lists what every source says of every wood.
func (b *Base) WoodRows() []WoodRow { return slices.Clone(b.wood) }

// strength reads the bending strength, with the low value of derived rows.
func (r row) strength() *source.Fact {
	value, ok := r.maybe("mor_mpa")
	if !ok {
		return nil
	}
	low, ok := r.maybe("mor_low_mpa")
	if !ok {
		low = value
	}
	f := r.factOf(value, low, value, "MPa")
	return &f
}
