package knowledge

import (
	"slices"

	"boughline/source"
)

// PartLength is the length of a part of a chain whose length is not stated, by
// its kind.
type PartLength struct {
	Kind   string
	Length source.Fact // m
}

func loadPartLengths(l *loader) []PartLength {
	var all []PartLength
	for _, r := range l.read("part_lengths") {
		p := PartLength{r.text("kind"), r.factOf(r.number("length_m"), r.number("low"), r.number("high"), "m")}
		p.Length.Note = p.Length.Ref.Where
		all = append(all, p)
	}
	return all
}

// PartLength finds the length of a kind of part, with its range.
func (b *Base) PartLength(kind string) (source.Fact, bool) {
	i := slices.IndexFunc(b.partLengths, func(p PartLength) bool { return sameText(p.Kind, kind) })
	if i < 0 {
		return source.Fact{}, false
	}
	return b.partLengths[i].Length, true
}
