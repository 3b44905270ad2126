package assess

import (
	"math"

	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// group is a group of riders as the checks take it.
type group struct {
	s     *survey.Riders
	path  string
	count int
	// design is the mass of all riders that checks take, mean and cov describe
	// its scatter for the chance.
	design, mean quantity.Mass
	cov          float64
	seat         quantity.Mass   // seat, line and connectors
	reach        quantity.Length // of the feet below the seat
	terms        []Term
}

// groupOf works out what a group weighs: weighed, by EN 1176-1, or by age.
func groupOf(k *knowledge.Base, r *survey.Riders, path string) group {
	g := group{s: r, path: path, count: r.Count}
	switch {
	case r.Each != nil:
		g.weighed(resolve(k, *r.Each))
	case r.Standard:
		g.standard(k)
		if r.Ages != nil { // older riders than the standard's weigh what they weigh
			byAge := g
			byAge.byAge(k)
			if byAge.design > g.design {
				g = byAge
			}
		}
	default:
		g.byAge(k)
	}
	g.seat = quantity.Mass(k.Parameter(knowledge.SeatMass).Value)
	if r.Seat != nil {
		g.seat = resolve(k, *r.Seat).High()
	}
	g.reach = footReach(k, r)
	return g
}

func (g *group) weighed(each quantity.Measured[quantity.Mass]) {
	n := quantity.Mass(g.count)
	g.design, g.mean = n*each.High(), n*each.Value
	g.cov = each.RelativeSd()
	g.terms = []Term{{Symbol: "m_1", Name: "heaviest rider", Value: float64(each.Value), Unit: "kg", Sd: float64(each.Sd), How: each.How, Path: g.path + ".each"}}
}

// standard takes n m + 1.64 s sqrt(n) of EN 1176-1 Annex A.
func (g *group) standard(k *knowledge.Base) {
	m, s := k.Parameter(knowledge.ChildMass), k.Parameter(knowledge.ChildMassDeviation)
	g.design = swing.Users{Mean: quantity.Mass(m.Value), Sd: quantity.Mass(s.Value)}.DesignMass(g.count)
	g.mean = quantity.Mass(float64(g.count) * m.Value)
	g.cov = s.Value / m.Value / math.Sqrt(float64(g.count))
	g.terms = []Term{
		factTerm("m_1", "mean mass of one user", m),
		factTerm("s", "standard deviation of it", s),
	}
}

// byAge takes the heavier sex at the oldest age, with the house factor for
// charts that are a generation old. Riders over the oldest age of the charts,
// and those of whom nothing is known, count as adults.
func (g *group) byAge(k *knowledge.Base) {
	oldest := oldestCharted + 1
	if g.s.Ages != nil {
		oldest = g.s.Ages.To
	}
	median, high := massAt(k, oldest)
	factor := k.Parameter(knowledge.MassAllowance)
	n := float64(g.count)
	g.design = quantity.Mass(n * high.Value * factor.Value)
	g.mean = quantity.Mass(n * median.Value * factor.Value)
	g.cov = (high.Value/median.Value - 1) / quantity.Tail / math.Sqrt(n)
	g.terms = []Term{
		factTerm("P95", "mass at the oldest age, exceeded by one in twenty", high),
		factTerm("k", "factor for charts from old surveys", factor),
	}
}

// known reports whether anything says what the riders weigh.
func (g *group) known() bool { return g.s.Each != nil || g.s.Ages != nil || g.s.Standard }

// footReach is how far the feet hang below the seat in the riding posture.
func footReach(k *knowledge.Base, r *survey.Riders) quantity.Length {
	age := oldestCharted
	if r.Ages != nil {
		age = min(age, r.Ages.To)
	}
	_, boys, _ := k.StatureByAge(age, knowledge.Male)
	_, girls, _ := k.StatureByAge(age, knowledge.Female)
	share := k.Parameter(knowledge.LegDropHanging) // also where no posture is stated
	switch r.Posture {
	case survey.Standing:
		return 0
	case survey.Seated:
		share = k.Parameter(knowledge.LegDropSeated)
	}
	return quantity.Length(math.Max(boys.Value, girls.Value) * share.Value)
}

// oldestCharted is the oldest age of the growth charts; older riders weigh
// what adults weigh.
const oldestCharted = 20

// massAt returns the median and the 95 % mass at an age, of the heavier sex.
func massAt(k *knowledge.Base, age int) (median, high source.Fact) {
	for _, sex := range []knowledge.Sex{knowledge.Male, knowledge.Female} {
		middle, top := massOf(k, age, sex)
		if top.Value > high.Value {
			median, high = middle, top
		}
	}
	return median, high
}

func massOf(k *knowledge.Base, age int, sex knowledge.Sex) (median, high source.Fact) {
	if age <= oldestCharted {
		_, median, high, _ = k.MassByAge(age, sex)
		return median, high
	}
	adult, _ := k.Adult(sex)
	return adult.Mean, adult.P95
}

// factTerm makes a term of a number of the model.
func factTerm(symbol, name string, f source.Fact) Term {
	return Term{Symbol: symbol, Name: name, Value: f.Value, Unit: f.Unit, Refs: []source.Ref{f.Ref}, Note: f.Note}
}
