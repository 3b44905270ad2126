package assess

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// workMass works out what hangs on the line.
func (r *rig) workMass(w *workbook, u trial) {
	n := float64(r.riders.count)
	w.input("n", "riders", n, "1")
	switch formula := "n*P95*k"; {
	case u.mass != r.riders.design:
		w.input("m_R", "all riders", float64(u.mass), "kg")
	case r.riders.s.Each != nil:
		w.uncertain(r.riders.terms[0])
		w.follows("m_R", "all riders, each at the high 5 % value", "n*(m_1 + 1.645*s_m_1)", float64(u.mass), "kg")
	default:
		w.given(r.riders.terms...)
		if w.has("s") {
			formula = "n*m_1 + 1.64*s*sqrt(n)"
		}
		w.follows("m_R", "all riders", formula, float64(u.mass), "kg")
	}
	w.input("m_S", "seat, line and connectors, high value", float64(r.riders.seat), "kg")
	w.follows("m", "riders, seat and line", "m_R + m_S", float64(u.mass+r.riders.seat), "kg")
}

// workPull works out the factored pull with the line at an angle, from the
// amplitude given: level along the swing and straight down.
func (r *rig) workPull(w *workbook, u trial, amplitude, at quantity.Angle, loads quantity.Vec3, factors string) {
	r.workMass(w, u)
	w.input("a", "amplitude", amplitude.Degrees(), "deg", r.rules.designAmplitude.Ref)
	w.input("q", "angle of the line at which this check is worst, by a search over the swing", tidy(at.Degrees(), 1), "deg")
	level := tidy(loads.Dot(r.heading), loads.Norm())
	w.follows("H", "level part of the factored pull, along the swing direction", factors+"m*9.80665*(3*cos(q) - 2*cos(a))*sin(q)", level, "N")
	w.follows("V", "downward part of it", factors+"m*9.80665*(3*cos(q) - 2*cos(a))*cos(q)", -loads.Z, "N")
}

// workPeak works out the greatest pull without a factor.
func (r *rig) workPeak(w *workbook, u trial, pull quantity.Force) {
	r.workMass(w, u)
	w.input("a", "amplitude that strength is checked at", angle(r.rules.designAmplitude).Degrees(), "deg", r.rules.designAmplitude.Ref)
	w.follows("T", "greatest pull", "m*9.80665*(3 - 2*cos(a))", float64(pull), "N")
}

// unitPart is one of the section forces that the space frame of the limb gives:
// under own weight, for 1 N level along the swing, for 1 N down, and for 1 N of
// wind on the limb.
type unitPart struct {
	symbol, name, unit, perNewton string
	self, level, down, wind       float64
}

// workForces adds the section forces that a check asks for, as sums of the unit
// cases of the frame.
func (w *workbook) workForces(parts []unitPart, l loads, level float64) {
	level = tidy(level, l.pull.Norm())
	scale := map[string]float64{}
	for _, p := range parts {
		scale[p.unit] += math.Abs(p.self) + math.Abs(p.level*level) + math.Abs(p.down*l.pull.Z) + math.Abs(p.wind*l.wind)
	}
	for _, p := range parts {
		total := tidy(p.self+p.level*level+p.down*-l.pull.Z+p.wind*l.wind, scale[p.unit])
		const byFrame = ", by the space frame of the limb"
		formula := fmt.Sprintf("%s_0", p.symbol)
		w.input(p.symbol+"_0", p.name+" under own weight"+byFrame, tidy(p.self, scale[p.unit]), p.unit)
		for _, one := range []struct {
			mark, of, force    string
			coefficient, value float64
		}{
			{"h", "1 N level along the swing", "H", p.level, level},
			{"v", "1 N straight down", "V", p.down, -l.pull.Z},
			{"w", "1 N of wind on the limb", "F_w", p.wind, l.wind},
		} {
			if tidy(one.coefficient*one.value, scale[p.unit]) == 0 {
				continue
			}
			symbol := p.symbol + "_" + one.mark
			w.input(symbol, p.name+" for "+one.of+byFrame, one.coefficient, p.perNewton)
			formula += fmt.Sprintf(" + %s*%s", symbol, one.force)
		}
		w.follows(p.symbol, p.name, formula, total, p.unit)
	}
}
