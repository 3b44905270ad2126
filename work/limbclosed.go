package work

import (
	"math"

	"boughline/engine/frame"
)

// addClosedForms gives the textbook values of the two limbs that have them: a
// straight round limb, evenly tapering, with one load across its tip, and the
// first frequencies of a uniform one that carries nothing.
func (l *limb) addClosedForms(out map[string]any) {
	stations := l.model.Members[0].Stations
	if !l.straight() || len(stations) != 2 || len(l.model.Members[0].Hollows) > 0 || len(l.model.Masses) > 0 {
		return
	}
	base, tip := stations[0].Outer, stations[1].Outer
	if base.Upright != base.Across || tip.Upright != tip.Across {
		return
	}
	if deflection, ok := l.tipDeflection(base, tip); ok {
		out["closed_form"] = map[string]float64{"tip_deflection_m": deflection}
	}
	if base == tip && l.model.Material.Density > 0 {
		out["closed_form_Hz"] = l.uniformFrequencies(base)
	}
}

// tipDeflection is 64 P L^3/(3 pi E db^3 dt), from integrating P x^2/(E I) over
// the linear taper; P L^3/(3 E I) where it is uniform.
func (l *limb) tipDeflection(base, tip frame.Ellipse) (float64, bool) {
	if l.loads.SelfWeight || len(l.loads.Points) != 1 || l.loads.Points[0].At.Along < l.frame.Length(0) {
		return 0, false
	}
	force, x := l.loads.Points[0].Force, l.frame.Axes(frame.Place{}, frame.TipSide).X
	if math.Abs(force.Dot(x)) > 1e-9*force.Norm() {
		return 0, false
	}
	db, dt, length := float64(base.Upright), float64(tip.Upright), float64(l.frame.Length(0))
	return 64 * force.Norm() * math.Pow(length, 3) / (3 * math.Pi * float64(l.model.Material.Young) * math.Pow(db, 3) * dt), true
}

// uniformFrequencies are those of the Euler-Bernoulli cantilever,
// (beta L)^2/(2 pi L^2) sqrt(E I/(rho A)) with cos(beta L) cosh(beta L) = -1
// (Blevins, Formulas for Natural Frequency and Mode Shape 1979, table 8-1,
// from memory).
func (l *limb) uniformFrequencies(section frame.Ellipse) []float64 {
	roots := [...]float64{1.8751040687119611, 4.694091132974174, 7.854757438237613}
	i, _ := section.SecondMoments()
	length := float64(l.frame.Length(0))
	speed := math.Sqrt(float64(l.model.Material.Young) * i / (float64(l.model.Material.Density) * float64(section.Area())))
	out := make([]float64, len(roots))
	for k, root := range roots {
		out[k] = root * root / (2 * math.Pi * length * length) * speed
	}
	return out
}
