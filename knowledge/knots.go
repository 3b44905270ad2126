package knowledge

import (
	"slices"
	"strings"

	"boughline/source"
)

// Knot is the share of rope strength kept by a knot or splice. Single numbers
// mislead: the model uses the least of it and KnotShare unless tested.
type Knot struct {
	Name  string
	Share source.Fact
}

func loadKnots(l *loader) []Knot {
	var all []Knot
	for _, r := range l.read("knots") {
		all = append(all, Knot{r.text("name"), r.shareInRange()})
	}
	return all
}

// shareInRange reads a share with its low and high.
func (r row) shareInRange() source.Fact {
	return r.factOf(r.number("share"), r.number("low"), r.number("high"), "1")
}

// Knot finds a knot by its name.
func (b *Base) Knot(name string) (Knot, bool) {
	i := slices.IndexFunc(b.knots, func(k Knot) bool { return sameText(k.Name, name) })
	if i < 0 {
		return Knot{}, false
	}
	return b.knots[i], true
}

// Knots lists the knots and splices of the table.
func (b *Base) Knots() []Knot { return slices.Clone(b.knots) }

// sameText compares without regard to case and spaces at the ends.
func sameText(a, b string) bool { return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b)) }
