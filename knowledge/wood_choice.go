package knowledge

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boughline/source"
)

// Wood is the green wood to reckon a tree with. Stresses are in Pa, the
// density in kg/m3.
type Wood struct {
	MOR               source.Fact // mean bending strength of clear pieces; Low is set for derived rows
	CoV               source.Fact // variation of that strength from tree to tree
	MOE               source.Fact
	ProportionalLimit source.Fact // in bending
	Compression       source.Fact // along the grain
	Shear             source.Fact // along the grain
	GreenDensity      source.Fact // the heaviest of the sources; Low is the lightest
	Fallback          bool        // the species has no strength of its own in the tables
	Note              string
	Row               WoodRow   // the row taken
	Others            []WoodRow // what other sources say of the species
}

// Wood chooses the green wood of a species: where sources disagree, the row
// with the lowest bending strength, the others listed beside it. Figures that
// row does not give follow from its strength by the ratios of the group. A
// species without any row takes the lowest of its group and says so; give an
// unknown species as Species{Common: name, Group: group}, without a group where
// that is not known either.
func (b *Base) Wood(s Species) Wood {
	rows := b.woodRows(s)
	fallback := len(rows) == 0
	if fallback {
		rows = b.groupRows(s.Group)
	}
	row := slices.MinFunc(rows, func(a, b WoodRow) int {
		return cmp.Compare(a.MOR.Value, b.MOR.Value)
	})
	w := Wood{
		Row: row, MOR: *row.MOR, CoV: b.variation(row, rows), Fallback: fallback, Note: row.Note,
		MOE:               b.orRatio(row, row.MOE, StiffnessPerStrengthBroadleaf, StiffnessPerStrengthConifer),
		ProportionalLimit: b.orRatio(row, row.ProportionalLimit, LimitPerStrengthBroadleaf, LimitPerStrengthConifer),
		Compression:       b.orRatio(row, row.Compression, CompressionPerStrengthBroadleaf, CompressionPerStrengthConifer),
		Shear:             b.orRatio(row, row.Shear, ShearPerStrengthBroadleaf, ShearPerStrengthConifer),
		GreenDensity:      b.greenDensity(s),
	}
	if fallback {
		w.Note = "no strength is known for this species: the lowest of its group, " + row.Name
		return w
	}
	for _, other := range rows {
		if other.ID != row.ID {
			w.Others = append(w.Others, other)
		}
	}
	return w
}

// woodRows lists the rows with a bending strength for the species.
func (b *Base) woodRows(s Species) []WoodRow {
	var rows []WoodRow
	for _, w := range b.wood {
		named := slices.ContainsFunc(w.Species, func(name string) bool { return slices.Contains(s.WoodSpecies, name) })
		if named && w.MOR != nil {
			rows = append(rows, w)
		}
	}
	return rows
}

func (b *Base) groupRows(g Group) []WoodRow {
	var rows []WoodRow
	for _, w := range b.wood {
		if w.MOR != nil && g.covers(w.Group) {
			rows = append(rows, w)
		}
	}
	return rows
}

// orRatio returns the figure of the row, or what the ratio of the group makes
// of its bending strength.
func (b *Base) orRatio(w WoodRow, given *source.Fact, broadleaf, conifer string) source.Fact {
	if given != nil {
		return *given
	}
	key := broadleaf
	if w.Group == Conifer {
		key = conifer
	}
	ratio := b.Parameter(key)
	mor := w.MOR.Value
	return source.Fact{
		Value: ratio.Value * mor, Low: ratio.Low * mor, High: ratio.High * mor, Unit: "Pa", Ref: ratio.Ref,
		Note: "from the bending strength by the ratio of the group",
	}
}

// variation is that of the row taken. A row from memory is no green test: where
// the species has a derived row as well, the wider of the two counts.
func (b *Base) variation(row WoodRow, rows []WoodRow) source.Fact {
	cov := b.strengthVariation(row)
	if row.MOR.Ref.Source.Kind != source.Memory {
		return cov
	}
	for _, other := range rows {
		if v := b.strengthVariation(other); other.Derived && v.Value > cov.Value {
			cov = v
		}
	}
	return cov
}

// strengthVariation is the variation of the bending strength: the row's own
// where a test gives it, else that of clear wood at large. A derived row adds
// the scatter of its derivation as an independent part.
func (b *Base) strengthVariation(w WoodRow) source.Fact {
	clear := b.Parameter(ClearWoodVariation)
	if w.StrengthDeviation == nil {
		return clear
	}
	own := w.StrengthDeviation.Value / w.MOR.Value
	if !w.Derived {
		return source.Fact{Value: own, Low: own, High: own, Unit: "1", Ref: w.StrengthDeviation.Ref}
	}
	both := math.Hypot(own, clear.Value)
	return source.Fact{
		Value: both, Low: both, High: both, Unit: "1", Ref: w.StrengthDeviation.Ref,
		Note: fmt.Sprintf("%.3f of the derivation and %.2f of clear wood, independent", own, clear.Value),
	}
}
