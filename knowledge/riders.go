package knowledge

import "boughline/source"

// Sex parts the tables of body mass.
type Sex string

// The sexes of the tables.
const (
	Male   Sex = "male"
	Female Sex = "female"
)

// rider holds masses and statures of one age and sex.
type rider struct {
	age           int
	sex           Sex
	p5, p50, p95  source.Fact // kg
	tall, tallest source.Fact // m, median and 95 % fractile
}

func loadRiders(l *loader) []rider {
	var all []rider
	for _, r := range l.read("riders") {
		m := rider{
			age: r.whole("age"), sex: r.sex(),
			p5: r.fact("p5_kg", "kg"), p50: r.fact("p50_kg", "kg"), p95: r.fact("p95_kg", "kg"),
			tall: r.fact("stature_p50_cm", "cm"), tallest: r.fact("stature_p95_cm", "cm"),
		}
		if m.p5.Value > m.p50.Value || m.p50.Value > m.p95.Value || m.tall.Value > m.tallest.Value {
			r.problem("the fractiles are not in order")
		}
		all = append(all, m)
	}
	return all
}

func (r row) sex() Sex {
	s := Sex(r.text("sex"))
	if s != Male && s != Female {
		r.problem("the sex %q is not known", s)
	}
	return s
}

// atAge finds the row of the age; an age between two rows takes the older.
func (b *Base) atAge(age int, sex Sex) (best rider, ok bool) {
	youngest := age + 1
	for _, r := range b.riders {
		if r.sex != sex {
			continue
		}
		youngest = min(youngest, r.age)
		if r.age >= age && (!ok || r.age < best.age) {
			best, ok = r, true
		}
	}
	return best, ok && age >= youngest
}

// MassByAge returns the 5, 50 and 95 % fractiles of body mass in kg at an age
// in whole years. ok is false for an age the table does not reach (3 to 20).
// The surveys are old: the model adds an allowance (MassAllowance).
// Source: CDC growth charts 2000 (Kuczmarski et al. 2002).
func (b *Base) MassByAge(age int, sex Sex) (p5, p50, p95 source.Fact, ok bool) {
	r, ok := b.atAge(age, sex)
	return r.p5, r.p50, r.p95, ok
}

// StatureByAge returns the median and the 95 % fractile of stature in m, in
// the same way as MassByAge.
func (b *Base) StatureByAge(age int, sex Sex) (p50, p95 source.Fact, ok bool) {
	r, ok := b.atAge(age, sex)
	return r.tall, r.tallest, ok
}
