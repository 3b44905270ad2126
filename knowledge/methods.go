package knowledge

import (
	"math"
	"slices"

	"boughline/quantity"
	"boughline/source"
)

// method is the standard deviation of one way of measuring one quantity.
type method struct {
	how      quantity.How
	quantity string // name of the quantity, or "any"
	relative bool
	sd       source.Fact
}

const anyQuantity = "any"

func loadMethods(l *loader) []method {
	var all []method
	for _, r := range l.read("methods") {
		m := method{
			how: quantity.How(r.text("how")), quantity: r.text("quantity"),
			relative: r.text("spread") == "relative", sd: r.fact("value", r.text("unit")),
		}
		if !slices.Contains(quantity.Hows(), m.how) {
			r.problem("%q is no way of measuring", m.how)
		}
		all = append(all, m)
	}
	return all
}

// Method returns the standard deviation of a value got this way, where the
// survey states none: relative to the value, or absolute in the SI unit of the
// quantity. quantityName is the Name of the quantity, for example "angle". A
// value whose method is not stated or not known is judged like one by eye.
func (b *Base) Method(how quantity.How, quantityName string) (sd source.Fact, relative bool) {
	if !slices.Contains(quantity.Hows(), how) {
		how = quantity.ByEye
	}
	for _, name := range []string{quantityName, anyQuantity} {
		for _, m := range b.methods {
			if m.how == how && m.quantity == name {
				return m.sd, m.relative
			}
		}
	}
	panic("knowledge: methods.csv has no row for " + string(how))
}

// StandardDeviation returns the standard deviation of a value got this way, in
// SI units, where none was stated: Method applied to the value.
func (b *Base) StandardDeviation(how quantity.How, quantityName string, value float64) float64 {
	sd, relative := b.Method(how, quantityName)
	if relative {
		return sd.Value * math.Abs(value)
	}
	return sd.Value
}
