package knowledge

import (
	"math"

	"boughline/quantity"
	"boughline/source"
)

// Part says which part of a tree a bark thickness is for.
type Part string

// The parts. Limbs take the figures of the upper stem, whose bark is the
// nearest that was measured; limb bark is thinner still.
const (
	LimbPart Part = "limb"
	StemPart Part = "stem"
)

func (p Part) section() string {
	if p == LimbPart {
		return "top"
	}
	return "butt"
}

// barkRow is the double bark thickness in mm, a + b D + c D^2 with the
// diameter over bark D in cm.
type barkRow struct {
	species, section string
	group            Group
	a, b, c          float64
	ref              source.Ref
}

func loadBark(l *loader) []barkRow {
	var all []barkRow
	for _, r := range l.read("bark") {
		all = append(all, barkRow{
			species: r.text("species"), section: r.text("section"), group: r.group(),
			a: r.number("a_mm"), b: r.number("b_mm_per_cm"), c: r.number("c_mm_per_cm2"), ref: r.ref(),
		})
	}
	return all
}

// leastBarkDiameter is the least diameter in cm at which the regressions are
// trusted; below it the share of bark is held, where that gives the more.
const leastBarkDiameter = 15.0

// eachSide returns the thickness on one side in m for a diameter in cm. A
// parabola that turns down is held at its top.
func (r barkRow) eachSide(d float64) float64 {
	at := func(d float64) float64 {
		if r.c < 0 {
			d = math.Min(d, -r.b/(2*r.c))
		}
		return r.a + r.b*d + r.c*d*d
	}
	double := at(d)
	if d < leastBarkDiameter {
		double = math.Max(double, at(leastBarkDiameter)*d/leastBarkDiameter)
	}
	return double / 2 / 1000
}

// Bark returns the thickness of bark on each side, in m, of a limb or stem of
// the diameter over bark. Where the tables hold several kinds of the species
// it is the thickest; a species they don't hold takes the thickest of its
// group and says so. Thick bark is the unfavourable side: less wood inside.
// Source: Altherr et al. 1974-1979, double bark thickness by stem section.
func (b *Base) Bark(s Species, part Part, diameter quantity.Length) source.Fact {
	cm := float64(diameter) * 100
	best, found := thickest(b.bark, cm, func(r barkRow) bool {
		return s.BarkSpecies != "" && r.species == s.BarkSpecies && r.section == part.section()
	})
	note := ""
	if !found {
		best, _ = thickest(b.bark, cm, func(r barkRow) bool { return s.Group.covers(r.group) && r.section == part.section() })
		note = "no bark thickness for this species: the thickest of its group, " + best.species
	}
	t := best.eachSide(cm)
	return source.Fact{Value: t, Low: t, High: t, Unit: "m", Ref: best.ref, Note: note}
}

func thickest(rows []barkRow, cm float64, fits func(barkRow) bool) (best barkRow, found bool) {
	for _, r := range rows {
		if fits(r) && (!found || r.eachSide(cm) > best.eachSide(cm)) {
			best, found = r, true
		}
	}
	return best, found
}
