package knowledge

import "boughline/source"

// Adult is the body mass of grown people of one sex.
type Adult struct {
	Sex       Sex
	Mean, P95 source.Fact // kg
}

func loadAdults(l *loader) []Adult {
	var all []Adult
	for _, r := range l.read("adults") {
		a := Adult{Sex: r.sex(), Mean: r.fact("mean_kg", "kg"), P95: r.fact("p95_kg", "kg")}
		a.P95.Note = r.text("note")
		if a.Mean.Value > a.P95.Value {
			r.problem("the mean is above the 95 %% fractile")
		}
		all = append(all, a)
	}
	return all
}

// Adult returns the body mass of grown people; false for an unknown sex.
func (b *Base) Adult(sex Sex) (Adult, bool) {
	for _, a := range b.adults {
		if a.Sex == sex {
			return a, true
		}
	}
	return Adult{}, false
}
