package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/quantity"
	"boughline/source"
)

// Working is one check as a calculation by hand: what goes in, and step by step
// what follows, down to its margin.
type Working struct {
	Check Check
	Steps []Step
}

// Step is one line of a working: an input where Formula is empty, else what
// follows from the lines above it. Formulae are written with + - * / ^,
// brackets and the functions sqrt, abs, min, max, exp, ln, sin, cos and Phi, the
// standard normal distribution. Values are in SI units, but angles in degrees,
// as a pocket calculator takes them.
type Step struct {
	Term
	Formula string
}

// Workings works every check of a hang out by hand, the least margin first, at
// the unfavourable 5 % values and the use that the checks are judged at. What
// a frame of finite elements, an integration or a search has found goes in as
// an input and says so.
func (h HangFigure) Workings() []Working {
	r := h.rig
	battery := r.battery()
	var list []Working
	for _, c := range battery.all() {
		u := r.askedOf(c)
		check := c.result(u, r.alone)
		list = append(list, Working{check, r.workedSteps(&check, u)})
	}
	slices.SortStableFunc(list, func(a, b Working) int { return cmp.Compare(a.Check.Margin, b.Check.Margin) })
	return list
}

// workedSteps picks the calculation of a check.
func (r *rig) workedSteps(c *Check, u trial) []Step {
	w := &workbook{}
	switch c.Code {
	case LimbBending, LimbInWind:
		r.workBending(w, c, u)
	case UnionBending, UnionInWind:
		r.workUnion(w, c, u)
	case LimbShear:
		r.workShear(w, c, u)
	case LimbRepeated:
		r.workRepeated(w, c, u)
	case LimbAcrossGrain:
		r.workAcrossGrain(w, c, u)
	case LimbJerk:
		r.workJerk(w, c, u)
	case StemBending:
		r.workStem(w, c, u)
	case RootPlate:
		r.workRootPlate(w, c, u)
	case GearLink:
		r.workGear(w, c, u)
	case LoadTested:
		r.workLoadTest(w, c, u)
	case LimbChance, UnionChance:
		r.workChance(w, c, u)
	default:
		r.workSpace(w, c, u)
	}
	w.margin(c)
	return w.steps
}

// workbook gathers the steps of one check. A symbol stands for one value.
type workbook struct{ steps []Step }

// given adds an input.
func (w *workbook) given(list ...Term) {
	for _, t := range list {
		if !w.has(t.Symbol) {
			w.steps = append(w.steps, Step{Term: t})
		}
	}
}

func (w *workbook) has(symbol string) bool {
	for _, s := range w.steps {
		if s.Symbol == symbol {
			return true
		}
	}
	return false
}

// input adds an input by its parts.
func (w *workbook) input(symbol, name string, value float64, unit string, refs ...source.Ref) {
	w.given(Term{Symbol: symbol, Name: name, Value: value, Unit: unit, Refs: refs})
}

// follows adds a result with its formula. The value is that of the check.
func (w *workbook) follows(symbol, name, formula string, value float64, unit string) {
	if !w.has(symbol) {
		w.steps = append(w.steps, Step{Term{Symbol: symbol, Name: name, Value: value, Unit: unit}, formula})
	}
}

// asked and borne close a calculation with what the check compares.
func (w *workbook) asked(c *Check, formula string) {
	w.follows("asked", "what is asked", formula, c.Demand, c.Unit)
}

func (w *workbook) borne(c *Check, formula string) {
	w.follows("borne", "what is borne", formula, c.Capacity, c.Unit)
}

// margin is the last line of every check.
func (w *workbook) margin(c *Check) {
	switch {
	case c.Margin <= 0:
		w.follows("margin", "nothing is in hand", "max(0, borne)/asked", 0, "1")
	case c.Margin >= greatestMargin:
		w.input("margin", "margin: more than can be told", c.Margin, "1")
	default:
		w.follows("margin", "margin", "borne/asked", c.Margin, "1")
	}
}

// uncertain adds a measured value with its standard deviation as a symbol of
// its own: s_ and the symbol.
func (w *workbook) uncertain(t Term) {
	sd := t.Sd
	t.Sd = 0
	w.given(t)
	w.input("s_"+t.Symbol, "standard deviation of it", sd, t.Unit)
}

// measuredTerm makes a term of a measured length.
func measuredTerm(symbol, name string, m quantity.Measured[quantity.Length], path string) Term {
	return Term{Symbol: symbol, Name: name, Value: float64(m.Value), Unit: "m", Sd: float64(m.Sd), How: m.How, Path: path}
}

// tidy takes what is nothing but rounding beside a scale for 0.
func tidy(x, scale float64) float64 {
	const rounding = 1e-10
	if math.Abs(x) <= rounding*math.Abs(scale) {
		return 0
	}
	return x
}
